using System.Globalization;

namespace ShopClass.Core.Measure;

/// <summary>Checks on names and notes that people type.</summary>
public static class TypedText
{
    /// <summary>Most characters in a name.</summary>
    public const int LongestName = 60;

    /// <summary>Most characters in notes.</summary>
    public const int LongestNotes = 500;

    /// <summary>What is wrong with a name, as a sentence; null when nothing is.</summary>
    /// <param name="name">What was typed.</param>
    /// <param name="most">Most characters.</param>
    public static string? NameProblem(string? name, int most = LongestName)
    {
        if (string.IsNullOrWhiteSpace(name))
            return "A name is missing. Write a word or two.";
        if (name.Length > most)
            return $"The name has {name.Length} characters. Use at most {most}.";
        return name.Any(char.IsControl) || HasLooseSurrogate(name)
            ? "The name has characters that cannot be printed. Type it again on one line."
            : null;
    }

    /// <summary>What is wrong with notes, as a sentence; null when nothing is. Notes may be empty and have several lines.</summary>
    /// <param name="notes">What was typed.</param>
    /// <param name="most">Most characters.</param>
    public static string? NotesProblem(string? notes, int most = LongestNotes)
    {
        if (string.IsNullOrEmpty(notes))
            return null;
        if (notes.Length > most)
            return $"The notes have {notes.Length} characters. Use at most {most}.";
        return
            notes.Any(c => char.IsControl(c) && c is not ('\n' or '\r' or '\t'))
            || HasLooseSurrogate(notes)
            ? "The notes have characters that cannot be printed. Type them again."
            : null;
    }

    private static bool HasLooseSurrogate(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (i + 1 < text.Length && char.IsSurrogatePair(text[i], text[i + 1]))
                i++;
            else if (char.GetUnicodeCategory(text[i]) is UnicodeCategory.Surrogate)
                return true;
        }

        return false;
    }
}
