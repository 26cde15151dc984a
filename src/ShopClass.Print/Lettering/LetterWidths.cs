using System.Collections.Concurrent;
using System.Text;
using PdfSharp.Drawing;

namespace ShopClass.Print.Lettering;

/// <summary>
/// How wide letters are. A text is as wide as its letters together, because nothing here kerns; so each letter of a font is
/// measured once and not each text.
/// </summary>
internal static class LetterWidths
{
    // Large, so that rounding to a thousandth of the size does not show.
    private const double MeasuredAt = 1000;

    private static readonly ConcurrentDictionary<string, ConcurrentDictionary<int, double>> Known =
        new();

    /// <summary>Width of a text in a font at a size, points.</summary>
    public static double Of(string text, string file, double size, XGraphics page)
    {
        // The font is looked up once for a text: its name takes longer to look up than a letter.
        var known = Known.GetOrAdd(file, _ => new());
        var width = 0.0;
        foreach (var letter in text.EnumerateRunes())
        {
            if (!known.TryGetValue(letter.Value, out var one))
                known[letter.Value] = one = Measured(letter, file, page);
            width += one;
        }

        return width * size;
    }

    // Between two other letters, so that a space is not taken for nothing.
    private static double Measured(Rune letter, string file, XGraphics page)
    {
        var font = ShopFonts.At(file, MeasuredAt);
        return (
                page.MeasureString($"n{letter}n", font).Width - page.MeasureString("nn", font).Width
            ) / MeasuredAt;
    }
}
