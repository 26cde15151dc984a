using PdfSharp.Drawing;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Lettering;

/// <summary>Sets words on a page: fractions as fractions, letters no face has as question marks.</summary>
internal sealed class Setting(XGraphics page, Unprintable unprintable, PageCopy? copy = null)
{
    // The figures under a fraction slash are set small on the line: the face's own lowered figures hang below it.
    private const double BelowTheSlash = 0.62;

    /// <summary>The text as it will be printed.</summary>
    public string Prepared(string text, Face face) => unprintable.Printable(text, face);

    /// <summary>How wide a prepared text is.</summary>
    public double WidthOf(string prepared, Face face, double size) =>
        Runs(prepared).Sum(run => WidthOfRun(run, face, size));

    /// <summary>Draws a prepared text, its first letter at a point of the line it stands on.</summary>
    public void Draw(string prepared, Face face, double size, XBrush ink, double x, double y)
    {
        foreach (var run in Runs(prepared))
        {
            var (text, font) = (Plain(run), FontFor(run, face, size));
            var width = WidthOfRun(run, face, size);
            page.DrawString(text, font, ink, x, y);
            copy?.Words(text, IsLowered(run[0]) ? Face.Strong : face, font.Size, x, y, width);
            x += width;
        }
    }

    private double WidthOfRun(string run, Face face, double size) =>
        IsLowered(run[0])
            ? LetterWidths.Of(Plain(run), Face.Strong, size * BelowTheSlash, page)
            : LetterWidths.Of(run, face, size, page);

    private static XFont FontFor(string run, Face face, double size) =>
        IsLowered(run[0])
            ? ShopFonts.At(Face.Strong, size * BelowTheSlash)
            : ShopFonts.At(face, size);

    private static IEnumerable<string> Runs(string text)
    {
        var from = 0;
        for (var i = 1; i <= text.Length && text.Length > 0; i++)
        {
            if (i < text.Length && IsLowered(text[i]) == IsLowered(text[i - 1]))
                continue;
            yield return text[from..i];
            from = i;
        }
    }

    private static bool IsLowered(char letter) => letter is >= '₀' and <= '₉';

    private static string Plain(string run) =>
        IsLowered(run[0]) ? string.Concat(run.Select(c => (char)('0' + (c - '₀')))) : run;
}
