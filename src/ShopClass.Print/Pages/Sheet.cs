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

    private readonly PdfDocument document;
    private readonly PageFrame frame;
    private readonly Unprintable unprintable;
    private readonly Tags tags;
    private readonly int pagesExpected;
    private readonly List<PageCopy>? copies;
    private XGraphics page;
    private double y;

    private Sheet(
        PdfDocument document,
        Tags tags,
        PageFrame frame,
        Unprintable unprintable,
        int pagesExpected,
        List<PageCopy>? copies = null
    )
    {
        (this.document, this.tags, this.frame) = (document, tags, frame);
        (this.unprintable, this.pagesExpected, this.copies) = (unprintable, pagesExpected, copies);
        page = NextPage();
    }

    private Setting Letters => new(page, unprintable, copies?[^1]);

    /// <summary>Pages so far.</summary>
    public int Pages { get; private set; }

    /// <summary>Width between the margins, points.</summary>
    public double Width => frame.BodyWidth;

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
        using var document = new PdfDocument();
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
            using var trial = new PdfDocument();
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
            using var trial = new PdfDocument();
            missing.Watch(trial);
            using var sheet = new Sheet(trial, new Tags(), manuscript.Frame, missing, 0);
            manuscript.WriteOn(sheet);
            if (missing.Count == letters)
                return (sheet.Pages, missing);
        }
    }

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
    public void Place(Drawing drawing, double left, double top) =>
        tags.AsFigure(
            drawing.TextTwin,
            new XRect(left, top, drawing.Width, drawing.Height),
            () =>
            {
                new PdfPen(page, new(page, unprintable)).Draw(drawing, left, top);
                copies?[^1].Figure(drawing, left, top);
            }
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

        string Cut(int letters) => letters == whole.Length ? whole : whole[..letters] + "…";
    }

    private void StrokeLine(XPen pen, double x1, double y1, double x2, double y2)
    {
        page.DrawLine(pen, x1, y1, x2, y2);
        copies?[^1].Line(pen, x1, y1, x2, y2);
    }

    private void StrokeBox(XPen pen, double x, double top, double width, double height)
    {
        page.DrawRectangle(pen, x, top, width, height);
        copies?[^1].Box(pen, x, top, width, height);
    }
}
