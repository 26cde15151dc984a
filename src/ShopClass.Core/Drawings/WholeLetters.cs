using System.Globalization;

namespace ShopClass.Core.Drawings;

/// <summary>Shortens text between letters and never within one: marks and joined signs stay with the letter they belong to.</summary>
public static class WholeLetters
{
    /// <summary>The start of a text, of so many signs at most; its first letter at least.</summary>
    public static string Start(string text, int most)
    {
        if (most >= text.Length)
            return text;
        var end = 0;
        foreach (var start in StringInfo.ParseCombiningCharacters(text).Append(text.Length).Skip(1))
        {
            if (end > 0 && start > most)
                break;
            end = start;
        }

        return text[..end];
    }
}
