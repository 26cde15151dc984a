using System.Text;

namespace ShopClass.Print.Lettering;

/// <summary>Characters that no font of ours has a letter for. They are printed as a question mark, and the sheet says so.</summary>
internal sealed class Unprintable
{
    private readonly SortedSet<int> found = [];

    /// <summary>How many have been met.</summary>
    public int Count => found.Count;

    /// <summary>What the sheet says about them; null when there are none.</summary>
    public string? Note =>
        found.Count == 0
            ? null
            : "Some letters on this sheet are not in its typefaces. Each is printed as a question mark; please write "
                + $"them in by hand. In Unicode they are {string.Join(", ", found.Select(c => $"U+{c:X4}"))}.";

    /// <summary>The text as it can be printed in this face, with fractions set.</summary>
    public string Printable(string text, Face face)
    {
        var set = Pens.Fractions.Set(text);
        if (FontFiles.HasAll(face, set))
            return set;
        var printed = new StringBuilder();
        foreach (var rune in set.EnumerateRunes())
        {
            if (FontFiles.IsDirection(rune))
                continue;
            printed.Append(Printable(rune, face));
        }

        return printed.ToString();
    }

    private string Printable(Rune rune, Face face)
    {
        if (Rune.IsControl(rune))
            return " ";
        if (FontFiles.For(face, rune) is not null)
            return rune.ToString();
        // These say how letters stand and are never drawn.
        if (FontFiles.IsJoiner(rune) || FontFiles.SetsApart(rune))
            return rune.ToString();
        found.Add(rune.Value);
        return "?";
    }
}
