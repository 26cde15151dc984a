using PdfSharp.Pdf;
using PdfSharp.Pdf.IO;

namespace ShopClass.Print.Sheets;

/// <summary>Several sheets as one file, to be printed in one go.</summary>
public static class PrintSet
{
    /// <summary>The sheets one after another; each keeps its own page numbers.</summary>
    /// <param name="title">What the set is called.</param>
    /// <param name="sheets">The sheets, each a PDF made here.</param>
    public static byte[] Join(string title, IReadOnlyList<byte[]> sheets)
    {
        using var all = new PdfDocument();
        all.Info.Title = title;
        all.ViewerPreferences.DisplayDocTitle = true;
        foreach (var sheet in sheets)
        {
            using var bytes = new MemoryStream(sheet);
            using var one = PdfReader.Open(bytes, PdfDocumentOpenMode.Import);
            foreach (var page in one.Pages)
                all.AddPage(page);
        }

        using var joined = new MemoryStream();
        all.Save(joined, closeStream: false);
        return joined.ToArray();
    }
}
