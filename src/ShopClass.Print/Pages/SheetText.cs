using PdfSharp.Drawing;
using PdfSharp.UniversalAccessibility;
using ShopClass.Core.Drawings;
using ShopClass.Print.Pens;
using ShopClass.Print.Type;

namespace ShopClass.Print.Pages;

/// <summary>Words on a sheet: title, headings, paragraphs, warnings and lists.</summary>
internal sealed partial class Sheet
{
    private const double Leading = 1.28;

    /// <summary>The sheet's title, with what it is for set large to its right; then what could not be printed.</summary>
    public void Title(string title, string whose)
    {
        var (large, name) = (ShopFonts.At(Face.Heading, 21), ShopFonts.At(Face.Strong, 15));
        var half = Width / 2 - 8;
        var (left, right) = (
            Lines(title, Face.Heading, large, half),
            Lines(whose, Face.Strong, name, half)
        );
        var height = Math.Max(left.Count * 24, right.Count * 24);
        tags.As(
            PdfBlockLevelElementTag.Heading1,
            () => DrawLines(left, large, PageFrame.Margin, 24, y, 20)
        );
        tags.As(
            PdfBlockLevelElementTag.Paragraph,
            () => DrawLines(right, name, PageFrame.Margin + Width / 2 + 8, 24, y, 20)
        );
        y += height + 4;
        if (unprintable.Note is { } note)
            Warning(note);
    }

    /// <summary>A heading; it stays with so much of what follows.</summary>
    public void Heading(string text, double keepWith = 60)
    {
        var font = ShopFonts.At(Face.Strong, 12.5);
        var lines = Lines(text, Face.Strong, font, Width);
        Keep(12 + lines.Count * 16 + keepWith);
        y += 12;
        tags.As(
            PdfBlockLevelElementTag.Heading2,
            () => DrawLines(lines, font, PageFrame.Margin, 16, y, 12)
        );
        y += lines.Count * 16 + 3;
    }

    /// <summary>A paragraph.</summary>
    public void Paragraph(string text, Face face = Face.Text) =>
        Indented(text, face, 0, mark: null);

    /// <summary>A paragraph in a heavy frame.</summary>
    public void Warning(string text)
    {
        var font = ShopFonts.At(Face.Strong, TextSize);
        var lines = Lines(text, Face.Strong, font, Width - 16);
        var height = lines.Count * TextSize * Leading + 9;
        Keep(height + 4);
        tags.AsArtifact(() =>
            page.DrawRectangle(
                PdfInks.Stroke(PdfInks.Black, 1.4),
                PageFrame.Margin,
                y,
                Width,
                height
            )
        );
        tags.As(
            PdfBlockLevelElementTag.Paragraph,
            () => DrawLines(lines, font, PageFrame.Margin + 8, TextSize * Leading, y + 4, TextSize)
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
        var font = ShopFonts.At(face, TextSize);
        var step = TextSize * Leading;
        var lines = Lines(text, face, font, Width - indent);
        Keep(Math.Min(3, lines.Count) * step);
        if (mark is not null)
            tags.AsArtifact(mark);
        while (lines.Count > 0)
        {
            Keep(step);
            var fit = Math.Clamp((int)((frame.BodyBottom - y) / step), 1, lines.Count);
            var now = lines.GetRange(0, fit);
            tags.As(
                PdfBlockLevelElementTag.Paragraph,
                () => DrawLines(now, font, PageFrame.Margin + indent, step, y, TextSize)
            );
            y += fit * step;
            lines = lines.GetRange(fit, lines.Count - fit);
        }

        y += 2.5;
    }

    private void DrawDash() =>
        page.DrawLine(
            PdfInks.Stroke(PdfInks.Black, 0.8),
            PageFrame.Margin + 2,
            y + 0.68 * TextSize,
            PageFrame.Margin + 7,
            y + 0.68 * TextSize
        );

    private void DrawTickBox(double x, double top) =>
        page.DrawRectangle(PdfInks.Stroke(PdfInks.Black, 0.8), x, top + 1.2, 9, 9);

    private void DrawLines(
        List<string> lines,
        XFont font,
        double x,
        double step,
        double top,
        double firstBaseline
    )
    {
        for (var i = 0; i < lines.Count; i++)
            page.DrawString(
                lines[i],
                font,
                PdfInks.WordsIn(Ink.Lettering),
                x,
                top + firstBaseline + i * step
            );
    }

    private List<string> Lines(string text, Face face, XFont font, double width) =>
        TextLines.Of(
            unprintable.Printable(text, face),
            width,
            part => page.MeasureString(part, font).Width
        );
}
