using PdfSharp.Drawing;
using PdfSharp.Pdf;
using ShopClass.Core.Drawings;
using ShopClass.Print.Lettering;
using ShopClass.Print.Pens;

namespace ShopClass.Print.Pages;

/// <summary>A sheet being written from the top down; it turns to a new page when one is full.</summary>
internal sealed partial class Sheet : IDisposable
{
    /// <summary>Size of ordinary text, points: readable at arm's length.</summary>
    public const double TextSize = 9.5;

    // PDFsharp's fonts are shared by the whole process and not promised to be safe for several threads at once.
    private static readonly Lock OneAtATime = new();

    private readonly PdfDocument document = new();
    private readonly PageFrame frame;
    private readonly Unprintable unprintable;
    private readonly Tags tags;
    private readonly int pagesExpected;
    private XGraphics page;
    private double y;

    private Sheet(PageFrame frame, Unprintable unprintable, int pagesExpected)
    {
        (this.frame, this.unprintable, this.pagesExpected) = (frame, unprintable, pagesExpected);
        document.Info.Title = frame.Title;
        document.ViewerPreferences.DisplayDocTitle = true;
        tags = new(document);
        unprintable.Watch(document);
        page = NextPage();
    }

    private Setting Letters => new(page, unprintable);

    /// <summary>Pages so far.</summary>
    public int Pages => document.PageCount;

    /// <summary>Width between the margins, points.</summary>
    public double Width => frame.BodyWidth;

    /// <summary>
    /// Writes a sheet. It is laid out more than once: "Page x of y" and the note on letters that cannot be printed are
    /// known only after the first time.
    /// </summary>
    public static byte[] Make(PageFrame frame, Action<Sheet> write)
    {
        lock (OneAtATime)
        {
            var missing = new Unprintable();
            var (pages, letters) = (0, 0);
            while (true)
            {
                using var sheet = new Sheet(frame, missing, pages);
                write(sheet);
                if (sheet.document.PageCount == pages && missing.Count == letters)
                    return sheet.Saved();
                (pages, letters) = (sheet.document.PageCount, missing.Count);
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        page.Dispose();
        document.Dispose();
    }

    /// <summary>A drawing, whole on one page, with its words for those who cannot see it.</summary>
    public void Figure(Drawing drawing)
    {
        Keep(drawing.Height);
        tags.AsFigure(
            drawing.TextTwin,
            new XRect(PageFrame.Margin, y, drawing.Width, drawing.Height),
            () => new PdfPen(page, Letters).Draw(drawing, PageFrame.Margin, y)
        );
        y += drawing.Height + 4;
    }

    /// <summary>A drawing with its top left corner at a place on the paper, wherever the text is.</summary>
    public void Place(Drawing drawing, double left, double top) =>
        tags.AsFigure(
            drawing.TextTwin,
            new XRect(left, top, drawing.Width, drawing.Height),
            () => new PdfPen(page, Letters).Draw(drawing, left, top)
        );

    /// <summary>Turns to a new page.</summary>
    public void NewPage()
    {
        page.Dispose();
        page = NextPage();
    }

    /// <summary>Turns to a new page unless so much room is left.</summary>
    public void Keep(double height)
    {
        if (y + height <= frame.BodyBottom)
            return;
        NewPage();
    }

    private XGraphics NextPage()
    {
        var sheet = document.AddPage();
        sheet.Width = XUnit.FromPoint(frame.Width);
        sheet.Height = XUnit.FromPoint(frame.Height);
        page = XGraphics.FromPdfPage(sheet);
        y = PageFrame.Margin;
        if (!frame.IsBare)
            tags.AsArtifact(DrawEdges);
        return page;
    }

    private void DrawEdges()
    {
        const double small = 9;
        var right = PageFrame.Margin + frame.BodyWidth;
        var number = $"Page {document.PageCount} of {Math.Max(pagesExpected, document.PageCount)}";
        var foot = frame.Height - PageFrame.Margin - 2;
        var ink = PdfInks.WordsIn(Ink.Quiet);
        var numberWidth = Letters.WidthOf(number, Face.Text, small);
        page.DrawLine(
            PdfInks.Stroke(PdfInks.Soft, 0.5),
            PageFrame.Margin,
            foot - 11,
            right,
            foot - 11
        );
        Letters.Draw(
            Shortened(frame.Foot, small, frame.BodyWidth - numberWidth - 12),
            Face.Text,
            small,
            ink,
            PageFrame.Margin,
            foot
        );
        Letters.Draw(number, Face.Text, small, ink, right - numberWidth, foot);
        if (document.PageCount == 1)
            return;
        var head = Shortened(frame.RunningHead, small, frame.BodyWidth);
        Letters.Draw(head, Face.Text, small, ink, PageFrame.Margin, y + 9);
        page.DrawLine(PdfInks.Stroke(PdfInks.Soft, 0.5), PageFrame.Margin, y + 13, right, y + 13);
        y += 22;
    }

    private string Shortened(string text, double size, double room)
    {
        var whole = Letters.Prepared(text, Face.Text);
        var length = whole.Length;
        while (length > 0 && Letters.WidthOf(Cut(length), Face.Text, size) > room)
            length--;
        return Cut(length);

        string Cut(int letters) => letters == whole.Length ? whole : whole[..letters] + "…";
    }

    private byte[] Saved()
    {
        page.Dispose();
        using var bytes = new MemoryStream();
        document.Save(bytes, closeStream: false);
        return bytes.ToArray();
    }
}
