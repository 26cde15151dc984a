using System.Text.RegularExpressions;

namespace ShopClass.Print.Pens;

/// <summary>
/// Sets fractions as fractions: <c>3/8</c> becomes one letter where Unicode has it, else small figures about a fraction
/// slash. Text taken from the sheet stays readable: Unicode's compatibility form (NFKC) of it is plain figures.
/// </summary>
public static partial class Fractions
{
    private const string Raised = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private const string Lowered = "₀₁₂₃₄₅₆₇₈₉";

    /// <summary>The text with its fractions set; only those a rule is divided in, so no date is mistaken for one.</summary>
    public static string Set(string text) =>
        OnARule().Replace(text, m => Whole(m.Value) ?? Built(m.Groups[1].Value, m.Groups[2].Value));

    /// <summary>The text in parts: fractions on a rule, and what stands between them.</summary>
    internal static IEnumerable<(string Text, bool IsFraction)> Split(string text)
    {
        var from = 0;
        foreach (Match match in OnARule().Matches(text))
        {
            if (match.Index > from)
                yield return (text[from..match.Index], false);
            yield return (match.Value, true);
            from = match.Index + match.Length;
        }

        if (from < text.Length)
            yield return (text[from..], false);
    }

    [GeneratedRegex(@"(?<![\d/])(\d{1,2})/(2|4|8|16|32|64)(?![\d/])")]
    private static partial Regex OnARule();

    private static string? Whole(string fraction) =>
        fraction switch
        {
            "1/2" => "½",
            "1/4" => "¼",
            "3/4" => "¾",
            "1/8" => "⅛",
            "3/8" => "⅜",
            "5/8" => "⅝",
            "7/8" => "⅞",
            _ => null,
        };

    private static string Built(string above, string below) =>
        string.Concat(above.Select(d => Raised[d - '0']))
        + '⁄'
        + string.Concat(below.Select(d => Lowered[d - '0']));
}
