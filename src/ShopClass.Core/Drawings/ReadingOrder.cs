using System.Text;

namespace ShopClass.Core.Drawings;

/// <summary>
/// Which way words are read. The app's own words run from left to right; a name may run from right to left. Each stretch of
/// such a name is set for itself, so that it never draws the words, figures and brackets about it to its own side (what
/// Unicode's bidirectional algorithm, UAX #9, calls isolating).
/// </summary>
public static class ReadingOrder
{
    private const char Isolate = '\u2068';
    private const char EndOfIsolate = '\u2069';

    /// <summary>The text in stretches of one direction, in the order in which they stand from left to right.</summary>
    public static IReadOnlyList<ReadingRun> Of(string text)
    {
        if (!HasRightToLeft(text))
            return [new(Bare(text), false)];
        var runs = new List<ReadingRun>();
        for (var from = 0; from < text.Length; )
        {
            var start = text.IndexOf(Isolate, from);
            var end = start < 0 ? -1 : text.IndexOf(EndOfIsolate, start);
            if (start < 0)
                start = text.Length;
            if (end < 0)
                end = text.Length;
            runs.AddRange(Stretches(Bare(text[from..start])));
            if (start < text.Length)
                runs.AddRange(Within(Bare(text[start..end])));
            from = Math.Max(start, end);
        }

        return runs;
    }

    // A name that was set apart runs as its first letter does; stretches of the other way stand in its order.
    private static IEnumerable<ReadingRun> Within(string name)
    {
        var first = name.EnumerateRunes().FirstOrDefault(Rune.IsLetter);
        if (!IsRightToLeft(first))
            return Stretches(name);
        return name.EnumerateRunes().Any(r => Rune.IsLetter(r) && !IsRightToLeft(r))
            ? Stretches(name).AsEnumerable().Reverse()
            : [new(name, true)];
    }

    private static List<ReadingRun> Stretches(string text)
    {
        var runs = new List<ReadingRun>();
        var from = 0;
        for (var at = 0; at < text.Length; )
        {
            if (!IsRightToLeft(RuneAt(text, at)))
            {
                at += RuneAt(text, at).Utf16SequenceLength;
                continue;
            }

            if (at > from)
                runs.Add(new(text[from..at], false));
            var end = EndOfStretch(text, at);
            runs.Add(new(text[at..end], true));
            from = at = end;
        }

        if (from < text.Length)
            runs.Add(new(text[from..], false));
        return runs;
    }

    /// <summary>
    /// A name with invisible signs about it (U+2068, U+2069) where any of it runs from right to left, so that it can stand in
    /// any sentence, on any screen; the name itself where nothing does.
    /// </summary>
    public static string Apart(string name) =>
        HasRightToLeft(name) ? $"{Isolate}{name}{EndOfIsolate}" : name;

    /// <summary>The text without such signs.</summary>
    public static string Bare(string text) =>
        text.AsSpan().IndexOfAny(Isolate, EndOfIsolate) < 0
            ? text
            : text.Replace($"{Isolate}", "", StringComparison.Ordinal)
                .Replace($"{EndOfIsolate}", "", StringComparison.Ordinal);

    /// <summary>
    /// The text with invisible signs (U+2068, U+2069) about what runs from right to left, for a screen that knows them; the
    /// text itself where nothing does.
    /// </summary>
    public static string Isolated(string text) =>
        HasRightToLeft(text) && !text.Contains(Isolate, StringComparison.Ordinal)
            ? string.Concat(
                Of(text).Select(r => r.IsRightToLeft ? $"{Isolate}{r.Text}{EndOfIsolate}" : r.Text)
            )
            : text;

    /// <summary>Whether any letter of it runs from right to left.</summary>
    public static bool HasRightToLeft(string text)
    {
        foreach (var letter in text)
            // Nothing before Hebrew does: the usual text is seen through at once.
            if (letter >= '\u0590')
                return text.EnumerateRunes().Any(IsRightToLeft);
        return false;
    }

    /// <summary>
    /// Whether a letter, or a sign of its script, runs from right to left: the blocks whose letters do by default
    /// (DerivedBidiClass.txt, from memory).
    /// </summary>
    public static bool IsRightToLeft(Rune letter) =>
        letter.Value
            is (>= 0x0590 and <= 0x08FF)
                or (>= 0xFB1D and <= 0xFDFF)
                or (>= 0xFE70 and <= 0xFEFC)
                or (>= 0x10800 and <= 0x10FFF)
                or (>= 0x1E800 and <= 0x1EFFF)
        && !IsFigure(letter);

    /// <summary>Whether it is a figure of any script: those run from left to right within a name that does not.</summary>
    public static bool IsFigure(Rune letter) => Rune.IsDigit(letter);

    // A stretch reaches to its script's last letter; spaces, quotes, hyphens and figures within belong to it. Where no
    // letter of ours follows in the text and none came before, it is all one.
    private static int EndOfStretch(string text, int start)
    {
        if (start == 0 && !text.EnumerateRunes().Any(r => Rune.IsLetter(r) && !IsRightToLeft(r)))
            return text.TrimEnd(' ').Length;
        var end = start;
        for (var at = start; at < text.Length; )
        {
            var letter = RuneAt(text, at);
            at += letter.Utf16SequenceLength;
            if (IsRightToLeft(letter))
                end = at;
            else if (!BelongsBetween(letter))
                break;
        }

        return end < text.Length && text[end] is '\'' or '’' && !LetterFollows(text, end + 1)
            ? end + 1
            : end;
    }

    private static bool LetterFollows(string text, int at) =>
        at < text.Length && Rune.IsLetter(RuneAt(text, at));

    private static bool BelongsBetween(Rune letter) =>
        IsFigure(letter) || letter.Value is ' ' or 0xA0 or '-' or '\'' or '’' or '"' or '.';

    private static Rune RuneAt(string text, int at) =>
        Rune.TryGetRuneAt(text, at, out var rune) ? rune : Rune.ReplacementChar;
}

/// <summary>A stretch of text that is read in one direction.</summary>
/// <param name="Text">It, in the order it is spoken.</param>
/// <param name="IsRightToLeft">Whether it is read from right to left.</param>
public readonly record struct ReadingRun(string Text, bool IsRightToLeft);
