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

    private readonly PdfDocument document;
    private readonly PageFrame frame;
    private readonly Unprintable unprintable;
    private readonly Tags tags;
    private readonly int pagesExpected;
    private readonly List<PageCopy>? copies;

    // A trial only finds out how many pages there are and which letters are missing: nothing is drawn.
    private readonly bool isTrial;
    private XGraphics page;
    private double y;

    /// <summary>A sheet at its first page, in a document that may hold others.</summary>
    public Sheet(
        PdfDocument document,
        Tags tags,
        PageFrame frame,
        Unprintable unprintable,
        int pagesExpected,
        List<PageCopy>? copies = null,
        bool isTrial = false
    )
    {
        (this.document, this.tags, this.frame) = (document, tags, frame);
        (this.unprintable, this.pagesExpected, this.copies) = (unprintable, pagesExpected, copies);
        this.isTrial = isTrial;
        page = NextPage();
    }

    private Setting Letters => new(page, unprintable, tags, copies?[^1], isTrial);

    /// <summary>Pages so far.</summary>
    public int Pages { get; private set; }

    /// <summary>Width between the margins, points.</summary>
    public double Width => frame.BodyWidth;

    /// <inheritdoc/>
    public void Dispose() => page.Dispose();

    /// <summary>A drawing, whole on one page, with its words for those who cannot see it.</summary>
    public void Figure(Drawing drawing)
    {
        Keep(drawing.Height);
        Place(drawing, PageFrame.Margin, y);
        y += drawing.Height + 4;
    }

    /// <summary>A drawing with its top left corner at a place on the paper, wherever the text is.</summary>
    public void Place(Drawing drawing, double left, double top)
    {
        if (isTrial)
        {
            new PdfPen(page, Letters).Try(drawing);
            return;
        }

        tags.AsFigure(
            drawing.TextTwin,
            new XRect(left, top, drawing.Width, drawing.Height),
            () =>
            {
                new PdfPen(page, new(page, unprintable)).Draw(drawing, left, top);
                copies?[^1].Figure(drawing, left, top);
            }
        );
    }

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
        Pages++;
        copies?.Add(new(frame.Width, frame.Height, frame.Title, Pages));
        y = PageFrame.Margin;
        if (!frame.IsBare)
            tags.AsArtifact(DrawEdges);
        return page;
    }

    private void DrawEdges()
    {
        const double small = 9;
        var right = PageFrame.Margin + frame.BodyWidth;
        var number = $"Page {Pages} of {Math.Max(pagesExpected, Pages)}";
        var foot = frame.Height - PageFrame.Margin - 2;
        var ink = PdfInks.WordsIn(Ink.Quiet);
        var numberWidth = Letters.WidthOf(number, Face.Text, small);
        StrokeLine(
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
        if (Pages == 1)
            return;
        var head = Shortened(frame.RunningHead, small, frame.BodyWidth);
        Letters.Draw(head, Face.Text, small, ink, PageFrame.Margin, y + 9);
        StrokeLine(PdfInks.Stroke(PdfInks.Soft, 0.5), PageFrame.Margin, y + 13, right, y + 13);
        y += 22;
    }

    private string Shortened(string text, double size, double room)
    {
        var whole = Letters.Prepared(text, Face.Text);
        var length = whole.Length;
        while (length > 0 && Letters.WidthOf(Cut(length), Face.Text, size) > room)
            length--;
        return Cut(length);

        string Cut(int letters) =>
            letters == whole.Length ? whole
            : letters == 0 ? "…"
            : WholeLetters.Start(whole, letters) + "…";
    }

    private void StrokeLine(XPen pen, double x1, double y1, double x2, double y2)
    {
        if (isTrial)
            return;
        page.DrawLine(pen, x1, y1, x2, y2);
        copies?[^1].Line(pen, x1, y1, x2, y2);
    }

    private void StrokeBox(XPen pen, double x, double top, double width, double height)
    {
        if (isTrial)
            return;
        page.DrawRectangle(pen, x, top, width, height);
        copies?[^1].Box(pen, x, top, width, height);
    }
}
