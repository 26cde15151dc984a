using ShopClass.Core.Drawings;

namespace ShopClass.Print.Pages;

/// <summary>Breaks text into lines between words, and within a word only when it is wider than a line.</summary>
internal static class TextLines
{
    /// <summary>The lines; none for empty text.</summary>
    public static List<string> Of(string text, double width, Func<string, double> widthOf)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        foreach (var part in Parts(word, width, widthOf))
        {
            var longer = line.Length == 0 ? part : $"{line} {part}";
            if (line.Length == 0 || widthOf(longer) <= width)
            {
                line = longer;
                continue;
            }

            lines.Add(line);
            line = part;
        }

        if (line.Length > 0)
            lines.Add(line);
        return lines;
    }

    private static IEnumerable<string> Parts(
        string word,
        double width,
        Func<string, double> widthOf
    )
    {
        while (widthOf(word) > width && word.Length > 1)
        {
            var part = WholeLetters.Start(word, word.Length - 1);
            while (part.Length > 1 && widthOf(part) > width)
            {
                var shorter = WholeLetters.Start(part, part.Length - 1);
                if (shorter.Length == part.Length)
                    break;
                part = shorter;
            }

            yield return part;
            word = word[part.Length..];
        }

        yield return word;
    }
}
