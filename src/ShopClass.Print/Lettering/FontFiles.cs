using System.Collections.Concurrent;
using System.Text;
using ShopClass.Core.Drawings;

namespace ShopClass.Print.Lettering;

/// <summary>Which font file a letter is taken from: the face's own where it has it, else one that does.</summary>
internal static class FontFiles
{
    private static readonly string[] Scripts =
    [
        "Vazirmatn",
        "NotoSansHebrew",
        "NotoSansDevanagari",
        "NotoSansBengali",
        "NotoSansTamil",
        "NotoSansThai",
        "NotoSansArmenian",
        "NotoSansGeorgian",
    ];

    // For each face and sign: 0 not asked yet, 1 its file has it, 2 not. Two threads that ask at once find the same.
    private static readonly byte[][] Own =
    [
        .. Enum.GetValues<Face>().Select(_ => new byte[char.MaxValue + 1]),
    ];

    private static readonly ConcurrentDictionary<(Face Face, int Letter), string> Known = new();

    /// <summary>The face's own file.</summary>
    public static string Of(Face face) =>
        face switch
        {
            Face.Text => "SourceSans3_400Regular",
            Face.Strong => "SourceSans3_600SemiBold",
            Face.Italic => "SourceSans3_400Regular_Italic",
            Face.Heading => "ZillaSlab_600SemiBold",
            _ => throw new ArgumentOutOfRangeException(nameof(face), face, "Not a face."),
        };

    /// <summary>
    /// Whether a face has every letter of a text itself, as nearly all text is: then nothing is to be looked up letter by
    /// letter.
    /// </summary>
    public static bool HasAll(Face face, string text)
    {
        var own = Own[(int)face];
        foreach (var letter in text)
        {
            if (own[letter] == 0)
                own[letter] = Has(face, letter) ? (byte)1 : (byte)2;
            if (own[letter] == 2)
                return false;
        }

        return true;
    }

    private static bool Has(Face face, char letter) =>
        !char.IsSurrogate(letter) && !char.IsControl(letter) && Shaper.Of(Of(face)).Has(letter);

    /// <summary>The file a letter of a face is taken from; null where no font of ours has it.</summary>
    public static string? For(Face face, Rune letter)
    {
        var file = Known.GetOrAdd(
            (face, letter.Value),
            key => Chain(key.Face).FirstOrDefault(f => Shaper.Of(f).Has(key.Letter)) ?? ""
        );
        return file.Length == 0 ? null : file;
    }

    /// <summary>Whether a file is for a script whose letters join, move or stack.</summary>
    public static bool NeedsShaping(string file) =>
        Scripts.Any(s => file.StartsWith(s, StringComparison.Ordinal));

    /// <summary>The signs a name is set apart with; see <see cref="ReadingOrder.Apart"/>.</summary>
    public static bool SetsApart(Rune letter) => letter.Value is 0x2068 or 0x2069;

    /// <summary>
    /// Signs that are not drawn themselves but say how letters join (U+200C, U+200D) or vary; they go with the letter before.
    /// </summary>
    public static bool IsJoiner(Rune letter) =>
        letter.Value is 0x200C or 0x200D or (>= 0xFE00 and <= 0xFE0F);

    /// <summary>Signs that only say which way text runs and are not obeyed here; they are not set.</summary>
    public static bool IsDirection(Rune letter) =>
        letter.Value is 0x200E or 0x200F or 0x061C or (>= 0x202A and <= 0x202E) or 0x2066 or 0x2067;

    /// <summary>Text of one direction in parts of one file each, as they are spoken.</summary>
    public static IEnumerable<(string Text, string File)> Parts(ReadingRun run, Face face)
    {
        var part = new StringBuilder();
        string? file = null;
        foreach (var letter in run.Text.EnumerateRunes())
        {
            var next = FileAfter(file, letter, face);
            // Figures run from left to right also where the words do not, so they are parts of their own.
            if (part.Length > 0 && (next != file || run.IsRightToLeft && Turns(part, letter)))
            {
                yield return ($"{part}", file!);
                part.Clear();
            }

            file = next;
            part.Append(letter);
        }

        if (part.Length > 0)
            yield return ($"{part}", file!);
    }

    // What is not a letter of its own (spaces, points, marks) stays in the font of the letter before where that has it.
    private static string FileAfter(string? before, Rune letter, Face face) =>
        before is not null
        && NeedsShaping(before)
        && !Rune.IsLetter(letter)
        && (IsJoiner(letter) || Shaper.Of(before).Has(letter.Value))
            ? before
            : For(face, letter) ?? Of(face);

    private static bool Turns(StringBuilder part, Rune letter) =>
        char.IsDigit(part[^1]) != ReadingOrder.IsFigure(letter);

    private static IEnumerable<string> Chain(Face face)
    {
        yield return Of(face);
        if (face is Face.Heading)
            yield return Of(Face.Strong);
        if (face is Face.Italic)
            yield return Of(Face.Text);
        var weight = face is Face.Strong or Face.Heading ? "600SemiBold" : "400Regular";
        foreach (var script in Scripts)
            yield return $"{script}_{weight}";
    }
}
