using System.Collections.Frozen;
using System.Globalization;
using System.Text;

namespace ShopClass.Core.Measure;

/// <summary>Typed text in one spelling: plain quotes and hyphens, single spaces, <c>1/2</c> for <c>½</c>, small letters.</summary>
internal static class LengthText
{
    private static readonly FrozenDictionary<char, string> Plain = new Dictionary<char, string>
    {
        ['¼'] = " 1/4",
        ['½'] = " 1/2",
        ['¾'] = " 3/4",
        ['⅐'] = " 1/7",
        ['⅑'] = " 1/9",
        ['⅒'] = " 1/10",
        ['⅓'] = " 1/3",
        ['⅔'] = " 2/3",
        ['⅕'] = " 1/5",
        ['⅖'] = " 2/5",
        ['⅗'] = " 3/5",
        ['⅘'] = " 4/5",
        ['⅙'] = " 1/6",
        ['⅚'] = " 5/6",
        ['⅛'] = " 1/8",
        ['⅜'] = " 3/8",
        ['⅝'] = " 5/8",
        ['⅞'] = " 7/8",
        ['\u2044'] = "/", // fraction slash
        ['\u2215'] = "/", // division slash
        ['\u2032'] = "'", // prime
        ['\u2018'] = "'",
        ['\u2019'] = "'",
        ['\u02B9'] = "'",
        ['\u00B4'] = "'",
        ['`'] = "'",
        ['\u2033'] = "\"", // double prime
        ['\u201C'] = "\"",
        ['\u201D'] = "\"",
        ['\u02BA'] = "\"",
        ['\u2010'] = "-",
        ['\u2011'] = "-",
        ['\u2012'] = "-",
        ['\u2013'] = "-",
        ['\u2014'] = "-",
        ['\u2212'] = "-", // minus sign
    }.ToFrozenDictionary();

    /// <summary>The text in one spelling, without spaces at its ends.</summary>
    public static string InOneSpelling(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            if (Plain.TryGetValue(c, out var spelling))
                plain.Append(spelling);
            else
                plain.Append(char.IsWhiteSpace(c) ? ' ' : char.ToLowerInvariant(c));
        }

        var words = plain.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return string.Join(' ', words).Replace("''", "\"", StringComparison.Ordinal);
    }

    /// <summary>What was typed, fit to be shown again: nothing that does not print.</summary>
    public static string Shown(string text) =>
        string.Concat(text.Trim().Select(c => Prints(c) ? c : ' '));

    private static bool Prints(char c) =>
        char.GetUnicodeCategory(c)
            is not (
                UnicodeCategory.Control
                or UnicodeCategory.Format
                or UnicodeCategory.Surrogate
                or UnicodeCategory.PrivateUse
                or UnicodeCategory.OtherNotAssigned
                or UnicodeCategory.LineSeparator
                or UnicodeCategory.ParagraphSeparator
            );
}
