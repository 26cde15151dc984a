using System.Text;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace ShopClass.Print.Tests;

/// <summary>A sheet read back from its PDF, by a library that had no part in writing it.</summary>
internal sealed class PrintedSheet
{
    public PrintedSheet(byte[] pdf)
    {
        Bytes = pdf;
        using var document = PdfDocument.Open(pdf);
        Pages = [.. document.GetPages()];
        Words = [.. Pages.Select(p => (IReadOnlyList<Word>)[.. p.GetWords()])];
    }

    public byte[] Bytes { get; }

    public IReadOnlyList<Page> Pages { get; }

    public IReadOnlyList<IReadOnlyList<Word>> Words { get; }

    /// <summary>All words in reading order, fractions as plain figures.</summary>
    public string Text => string.Join(' ', Enumerable.Range(0, Pages.Count).Select(TextOf));

    // The library that reads starts a new word where letters change size, as they do below a fraction slash.
    public string TextOf(int page) =>
        Plain(string.Join(' ', Words[page].Select(w => w.Text)))
            .Replace("/ ", "/", StringComparison.Ordinal);

    /// <summary>
    /// Fractions back to plain figures: <c>14 ⅜</c> becomes <c>14 3/8</c>. These are Unicode's compatibility
    /// decompositions (UnicodeData.txt, from memory), written out because the tests run without ICU.
    /// </summary>
    public static string Plain(string text)
    {
        var plain = new StringBuilder();
        foreach (var letter in text)
            plain.Append(PlainOf(letter));
        return plain.ToString();
    }

    private static string PlainOf(char letter) =>
        letter switch
        {
            '½' => "1/2",
            '¼' => "1/4",
            '¾' => "3/4",
            '⅛' => "1/8",
            '⅜' => "3/8",
            '⅝' => "5/8",
            '⅞' => "7/8",
            '¹' => "1",
            '²' => "2",
            '³' => "3",
            '⁄' => "/",
            '⁰' or (>= '⁴' and <= '⁹') => $"{(char)('0' + (letter - '⁰'))}",
            >= '₀' and <= '₉' => $"{(char)('0' + (letter - '₀'))}",
            _ => $"{letter}",
        };
}
