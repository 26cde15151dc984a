using PdfSharp.Pdf;
using ShopClass.Print.Lettering;

namespace ShopClass.Print.Pages;

/// <summary>Prints manuscripts: one, a set, or its pages to look at.</summary>
internal static class Printer
{
    // PDFsharp's fonts are shared by the whole process and not promised to be safe for several threads at once.
    private static readonly Lock OneAtATime = new();

    /// <summary>One sheet as a PDF.</summary>
    public static byte[] Print(Manuscript manuscript) =>
        Print(manuscript.Title, [manuscript], withOutline: false);

    /// <summary>Sheets one after another as one PDF; each keeps its own page numbers.</summary>
    /// <param name="title">What the document is called.</param>
    /// <param name="manuscripts">The sheets.</param>
    /// <param name="withOutline">Whether the sheets are listed beside the document.</param>
    /// <param name="onSheet">Told after each sheet how many are done.</param>
    /// <param name="cancel">Gives up.</param>
    public static byte[] Print(
        string title,
        IReadOnlyList<Manuscript> manuscripts,
        bool withOutline,
        Action<int>? onSheet = null,
        CancellationToken cancel = default
    )
    {
        using var document = NewDocument();
        document.Info.Title = title;
        document.ViewerPreferences.DisplayDocTitle = true;
        var tags = new Tags(document);
        for (var i = 0; i < manuscripts.Count; i++)
        {
            cancel.ThrowIfCancellationRequested();
            // Others may print between two sheets of a long set.
            lock (OneAtATime)
                Add(document, tags, manuscripts[i], withOutline);
            onSheet?.Invoke(i + 1);
        }

        lock (OneAtATime)
        {
            tags.Finish();
            using var bytes = new MemoryStream();
            document.Save(bytes, closeStream: false);
            return bytes.ToArray();
        }
    }

    /// <summary>The pages of a sheet as SVG.</summary>
    public static IReadOnlyList<PaperPage> Preview(Manuscript manuscript)
    {
        lock (OneAtATime)
        {
            var (pages, missing) = Tried(manuscript);
            var copies = new List<PageCopy>();
            using var trial = NewDocument();
            using var sheet = new Sheet(
                trial,
                new Tags(),
                manuscript.Frame,
                missing,
                pages,
                copies
            );
            manuscript.WriteOn(sheet);
            return [.. copies.Select(c => c.Page)];
        }
    }

    /// <summary>How many pages a sheet takes.</summary>
    public static int PagesOf(Manuscript manuscript)
    {
        lock (OneAtATime)
            return Tried(manuscript).Pages;
    }

    /// <summary>What is to be said of letters that a sheet's typeface lacks; null when it has them all.</summary>
    public static string? NoteOn(Manuscript manuscript)
    {
        lock (OneAtATime)
            return Tried(manuscript).Missing.Note;
    }

    private static PdfDocument NewDocument()
    {
        var document = new PdfDocument();
        ShapedText.Watch(document);
        return document;
    }

    private static void Add(
        PdfDocument document,
        Tags tags,
        Manuscript manuscript,
        bool withOutline
    )
    {
        var (pages, missing) = Tried(manuscript);
        var first = document.PageCount;
        tags.AsSheet(() =>
        {
            using var sheet = new Sheet(document, tags, manuscript.Frame, missing, pages);
            manuscript.WriteOn(sheet);
        });
        if (withOutline)
            document.Outlines.Add(manuscript.Title, document.Pages[first]);
    }

    // "Page x of y" and the note on letters that cannot be printed are known only after a sheet has been laid out.
    private static (int Pages, Unprintable Missing) Tried(Manuscript manuscript)
    {
        var missing = new Unprintable();
        while (true)
        {
            var letters = missing.Count;
            using var trial = NewDocument();
            using var sheet = new Sheet(
                trial,
                new Tags(),
                manuscript.Frame,
                missing,
                0,
                isTrial: true
            );
            manuscript.WriteOn(sheet);
            if (missing.Count == letters)
                return (sheet.Pages, missing);
        }
    }
}
