using System.Text;
using PdfSharp.Pdf;

namespace ShopClass.Print.Lettering;

/// <summary>Characters that a face has no letter for. They are printed as a question mark, and the sheet says so.</summary>
internal sealed class Unprintable
{
    private readonly SortedSet<(string Face, int CodePoint)> found = [];

    /// <summary>How many have been met.</summary>
    public int Count => found.Count;

    /// <summary>What the sheet says about them; null when there are none.</summary>
    public string? Note
    {
        get
        {
            var codes = found.Select(f => f.CodePoint).Distinct().Select(c => $"U+{c:X4}").ToList();
            return codes.Count == 0
                ? null
                : "Some letters on this sheet are not in its typeface. Each is printed as a question mark; please write "
                    + $"them in by hand. In Unicode they are {string.Join(", ", codes)}.";
        }
    }

    /// <summary>Watches what is drawn in a document.</summary>
    public void Watch(PdfDocument document) =>
        document.RenderEvents.RenderTextEvent += (_, text) =>
        {
            foreach (var pair in text.CodePointGlyphIndexPairs)
                if (pair.GlyphIndex == 0)
                    found.Add((text.Font.FontFamily.Name, pair.CodePoint));
        };

    /// <summary>The text as it can be printed in this face, with fractions set.</summary>
    public string Printable(string text, Face face)
    {
        var printed = new StringBuilder();
        foreach (var rune in Pens.Fractions.Set(text).EnumerateRunes())
            printed.Append(
                Rune.IsControl(rune) ? " "
                : found.Contains((face.ToString(), rune.Value)) ? "?"
                : rune.ToString()
            );
        return printed.ToString();
    }
}
