using PdfSharp.UniversalAccessibility;
using ShopClass.Core.Drawings;
using ShopClass.Print.Lettering;
using ShopClass.Print.Pens;

namespace ShopClass.Print.Pages;

/// <summary>Words on a sheet: title, headings, paragraphs, warnings and lists.</summary>
internal sealed partial class Sheet
{
    private double Size => frame.TextSize;

    private double Step => Size * 1.28;

    /// <summary>The sheet's title, with what it is for to its right; then what could not be printed.</summary>
    public void Title(string title, string whose)
    {
        var half = Width / 2 - 8;
        var left = Lines(title, Face.Heading, 21, half);
        var right = Lines(whose, Face.Strong, 15, half);
        tags.As(
            PdfBlockLevelElementTag.Heading1,
            () => DrawLines(left, Face.Heading, 21, PageFrame.Margin, 24, y + 20)
        );
        tags.As(
            PdfBlockLevelElementTag.Paragraph,
            () => DrawLines(right, Face.Strong, 15, PageFrame.Margin, 24, y + 20, fromRight: true)
        );
        y += Math.Max(left.Count, right.Count) * 24 + 5;
        tags.AsArtifact(() => DrawRule(1.2));
        y += 5;
        if (unprintable.Note is { } note)
            Warning(note);
    }

    /// <summary>A heading; it stays with so much of what follows.</summary>
    public void Heading(string text, double keepWith = 60)
    {
        var lines = Lines(text, Face.Strong, 12.5, Width);
        Keep(12 + lines.Count * 16 + keepWith);
        y += 12;
        tags.As(
            PdfBlockLevelElementTag.Heading2,
            () => DrawLines(lines, Face.Strong, 12.5, PageFrame.Margin, 16, y + 12)
        );
        y += lines.Count * 16 + 3;
    }

    /// <summary>A paragraph.</summary>
    public void Paragraph(string text, Face face = Face.Text) =>
        Indented(text, face, 0, mark: null);

    /// <summary>A paragraph in a heavy frame.</summary>
    public void Warning(string text)
    {
        var lines = Lines(text, Face.Strong, Size, Width - 16);
        var height = lines.Count * Step + 9;
        Keep(height + 4);
        tags.AsArtifact(() =>
            StrokeBox(PdfInks.Stroke(PdfInks.Black, 1.4), PageFrame.Margin, y, Width, height)
        );
        tags.As(
            PdfBlockLevelElementTag.Paragraph,
            () => DrawLines(lines, Face.Strong, Size, PageFrame.Margin + 8, Step, y + 4 + Size)
        );
        y += height + 6;
    }

    /// <summary>A list, each item behind a dash.</summary>
    public void List(IEnumerable<string> items)
    {
        foreach (var item in items)
            Indented(item, Face.Text, 12, DrawDash);
    }

    /// <summary>A list to tick off.</summary>
    public void TickList(IEnumerable<string> items)
    {
        foreach (var item in items)
            Indented(item, Face.Text, 18, () => DrawTickBox(PageFrame.Margin + 1, y));
    }

    private void Indented(string text, Face face, double indent, Action? mark)
    {
        var lines = Lines(text, face, Size, Width - indent);
        Keep(Math.Min(3, lines.Count) * Step);
        if (mark is not null)
            tags.AsArtifact(mark);
        while (lines.Count > 0)
        {
            Keep(Step);
            var fit = Math.Clamp((int)((frame.BodyBottom - y) / Step), 1, lines.Count);
            var now = lines.GetRange(0, fit);
            tags.As(
                PdfBlockLevelElementTag.Paragraph,
                () => DrawLines(now, face, Size, PageFrame.Margin + indent, Step, y + Size)
            );
            y += fit * Step;
            lines = lines.GetRange(fit, lines.Count - fit);
        }

        y += 2.5;
    }

    private void DrawRule(double weight) =>
        StrokeLine(
            PdfInks.Stroke(PdfInks.Soft, weight),
            PageFrame.Margin,
            y,
            PageFrame.Margin + Width,
            y
        );

    private void DrawDash() =>
        StrokeLine(
            PdfInks.Stroke(PdfInks.Black, 0.8),
            PageFrame.Margin + 2,
            y + 0.68 * Size,
            PageFrame.Margin + 7,
            y + 0.68 * Size
        );

    private void DrawTickBox(double x, double top) =>
        StrokeBox(PdfInks.Stroke(PdfInks.Black, 0.8), x, top + 1.2, 9, 9);

    // Each line but the last ends in a space, so that words do not run together for a screen reader.
    private void DrawLines(
        List<string> lines,
        Face face,
        double size,
        double x,
        double step,
        double baseline,
        bool fromRight = false
    )
    {
        var ink = PdfInks.WordsIn(Ink.Lettering);
        for (var i = 0; i < lines.Count; i++)
        {
            var text = i == lines.Count - 1 ? lines[i] : lines[i] + " ";
            var left = fromRight ? x + Width - Letters.WidthOf(lines[i], face, size) : x;
            Letters.Draw(text, face, size, ink, left, baseline + i * step);
        }
    }

    private List<string> Lines(string text, Face face, double size, double width) =>
        TextLines.Of(
            Letters.Prepared(text, face),
            width,
            part => Letters.WidthOf(part, face, size)
        );
}
