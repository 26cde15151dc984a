using System.Globalization;

namespace ShopClass.Core.Drawings;

/// <summary>How wide words are, so that labels can be kept apart. Both pens set them in the same face.</summary>
public static class LetterWidths
{
    // Advance widths in thousandths of the letter height, space to tilde, from the hmtx table of Source Sans 3 SemiBold.
    // csharpier-ignore
    private static readonly short[] Widths =
    [
        200, 315, 482, 513, 513, 841, 639, 275, 324, 324, 438, 513, 275, 322, 275, 344,
        513, 513, 513, 513, 513, 513, 513, 513, 513, 513, 275, 275, 513, 513, 513, 444,
        875, 558, 597, 576, 625, 538, 510, 628, 663, 282, 494, 597, 502, 745, 657, 674,
        582, 674, 592, 545, 546, 655, 536, 800, 541, 501, 540, 324, 344, 324, 513, 500,
        549, 516, 563, 462, 564, 507, 317, 520, 558, 262, 263, 522, 271, 843, 560, 549,
        564, 564, 373, 431, 361, 556, 495, 748, 481, 495, 443, 324, 255, 324, 513,
    ];

    // What a figure and a slash are narrower by in a fraction: set small, they take about 380 and 100 thousandths.
    private const int FigureSaves = 133;
    private const int SlashSaves = 244;

    /// <summary>The width of this text set at this size, in the unit of the size; fractions are set small.</summary>
    public static double Of(string text, double size)
    {
        var thousandths = 0;
        for (var i = 0; i < text.Length; i++)
        {
            thousandths += text[i] switch
            {
                >= ' ' and <= '~' => Widths[text[i] - ' '],
                // The signs a name is set apart with, and marks on the letter before.
                '\u2068' or '\u2069' => 0,
                var other when char.GetUnicodeCategory(other) is UnicodeCategory.NonSpacingMark =>
                    0,
                _ => 560,
            };
            if (text[i] == '/')
                thousandths -= SavedAbout(text, i);
        }

        return thousandths * size / 1000;
    }

    private static int SavedAbout(string text, int slash)
    {
        var (above, below) = (0, 0);
        while (slash - above > 0 && char.IsAsciiDigit(text[slash - above - 1]))
            above++;
        while (slash + below + 1 < text.Length && char.IsAsciiDigit(text[slash + below + 1]))
            below++;
        return above > 0 && below > 0 ? (above + below) * FigureSaves + SlashSaves : 0;
    }
}
