using System.Text;
using PdfSharp.Drawing;
using ShopClass.Core.Drawings;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Lettering;

/// <summary>
/// Sets words on a page: fractions as fractions, names of other scripts from a font that has them and in the direction they
/// are read, letters no font has as question marks.
/// </summary>
internal sealed class Setting(
    XGraphics page,
    Unprintable unprintable,
    Tags? tags = null,
    PageCopy? copy = null,
    bool isTrial = false
)
{
    // The figures under a fraction slash are set small on the line: the face's own lowered figures hang below it.
    private const double BelowTheSlash = 0.62;

    /// <summary>The text as it will be printed.</summary>
    public string Prepared(string text, Face face) => unprintable.Printable(text, face);

    /// <summary>How wide a prepared text is.</summary>
    public double WidthOf(string prepared, Face face, double size) =>
        Runs(prepared, face).Sum(run => run.Width(page) * size);

    /// <summary>Draws a prepared text, its first letter at a point of the line it stands on.</summary>
    public void Draw(string prepared, Face face, double size, XBrush ink, double x, double y)
    {
        if (isTrial)
            return;
        foreach (var run in Runs(prepared, face))
        {
            var (font, width) = (ShopFonts.At(run.File, size * run.Scale), run.Width(page) * size);
            if (run.Shaped is { } shaped)
                DrawShaped(run, shaped, font, ink, x, y);
            else
                page.DrawString(run.Text, font, ink, x, y);
            copy?.Words(run.Text, run.Face, font.Size, x, y, width, run.IsRightToLeft);
            x += width;
        }
    }

    private void DrawShaped(Run run, Shaped shaped, XFont font, XBrush ink, double x, double y)
    {
        if (tags is null)
            ShapedText.Draw(page, shaped, font, ink, x, y);
        else
            tags.AsWords(run.Text, () => ShapedText.Draw(page, shaped, font, ink, x, y));
    }

    // In the order in which they stand from left to right.
    private static IEnumerable<Run> Runs(string text, Face face)
    {
        if (FontFiles.HasAll(face, text))
        {
            foreach (var run in RunsOf(text, FontFiles.Of(face), face, isRightToLeft: false))
                yield return run;
            yield break;
        }

        foreach (var reading in ReadingOrder.Of(text))
        {
            var parts = FontFiles.Parts(reading, face);
            foreach (var part in reading.IsRightToLeft ? parts.Reverse() : parts)
            foreach (var run in RunsOf(part.Text, part.File, face, reading.IsRightToLeft))
                yield return run;
        }
    }

    private static IEnumerable<Run> RunsOf(string text, string file, Face face, bool isRightToLeft)
    {
        if (isRightToLeft || FontFiles.NeedsShaping(file))
        {
            var turned = isRightToLeft && !Rune.IsDigit(RuneAt(text));
            yield return new(text, FaceOf(file, face), file, 1, turned)
            {
                Shaped = Shaper.Of(file).Shape(text, turned),
            };
            yield break;
        }

        var from = 0;
        for (var i = 1; i <= text.Length && text.Length > 0; i++)
        {
            if (i < text.Length && IsLowered(text[i]) == IsLowered(text[i - 1]))
                continue;
            var part = text[from..i];
            yield return IsLowered(part[0])
                ? new(Plain(part), Face.Strong, FontFiles.Of(Face.Strong), BelowTheSlash, false)
                : new(part, FaceOf(file, face), file, 1, false);
            from = i;
        }
    }

    private static Face FaceOf(string file, Face face) =>
        file == FontFiles.Of(face) ? face
        : face is Face.Heading or Face.Strong ? Face.Strong
        : Face.Text;

    private static Rune RuneAt(string text) =>
        Rune.TryGetRuneAt(text, 0, out var rune) ? rune : Rune.ReplacementChar;

    private static bool IsLowered(char letter) => letter is >= '₀' and <= '₉';

    private static string Plain(string run) =>
        string.Concat(run.Select(c => (char)('0' + (c - '₀'))));

    // Text from one font, in one direction.
    private sealed record Run(string Text, Face Face, string File, double Scale, bool IsRightToLeft)
    {
        public Shaped? Shaped { get; init; }

        public double Width(XGraphics page) =>
            Scale * (Shaped?.Width ?? LetterWidths.Of(Text, File, 1, page));
    }
}
