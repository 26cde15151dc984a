using ShopClass.Core.Courses;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Projects;

/// <summary>
/// What is wrong with a part, field by field. Field names: Letter, Name, Thickness, Width, Length, Quantity, JointNotes,
/// Open.Thickness, Open.Width, Open.Length.
/// </summary>
public static class PartChecks
{
    /// <summary>Most rows in a parts list.</summary>
    public const int MostParts = 60;

    /// <summary>Most pieces of one part.</summary>
    public const int MostOfOne = 50;

    /// <summary>The longest length accepted anywhere: 20 ft boards are the longest commonly sold.</summary>
    public static Length Longest { get; } = Length.FromInches(240);

    /// <summary>The thickest part or board taken: 4 in, above which it is a timber and no board (common practice).</summary>
    public static Length Thickest { get; } = Length.FromInches(4);

    /// <summary>The widest part or board taken, glued up or not: 48 in.</summary>
    public static Length Widest { get; } = Length.FromInches(48);

    /// <summary>The smallest size taken in any direction: 1/32 in, about a kerf.</summary>
    public static Length Smallest { get; } = Length.FromInches(0, 1, 32);

    /// <summary>Most characters in the event that an open dimension waits for.</summary>
    public const int LongestEvent = 120;

    /// <summary>Problems as field and sentence; empty when the part is right. <paramref name="others"/> are the other rows, for letters used twice.</summary>
    public static IReadOnlyList<(string Field, string Sentence)> ProblemsIn(
        Part part,
        IReadOnlyList<Part> others,
        CourseRules rules
    ) =>
        [
            .. LetterProblems(part, others),
            .. Found("Name", TypedText.NameProblem(part.Name)),
            .. SizeProblems(part, rules.Unit),
            .. Found("Quantity", QuantityProblem(part.Quantity)),
            .. Found("JointNotes", TypedText.NotesProblem(part.JointNotes)),
            .. OpenProblems(part, rules.Unit),
        ];

    private static IEnumerable<(string, string)> LetterProblems(
        Part part,
        IReadOnlyList<Part> others
    )
    {
        if (!IsLetter(part.Letter))
            yield return ("Letter", "Mark the part with one or two capital letters, A to Z.");
        else if (others.FirstOrDefault(o => o.Letter == part.Letter) is { } twin)
            yield return (
                "Letter",
                $"{part.Letter} already marks “{twin.Name}”. Choose another letter."
            );
        if (others.Count >= MostParts)
            yield return (
                "Letter",
                $"A parts list holds at most {MostParts} parts. This would be number {others.Count + 1}."
            );
    }

    private static bool IsLetter(string letter) =>
        letter is { Length: 1 or 2 } && letter.All(char.IsAsciiLetterUpper);

    private static IEnumerable<(string, string)> SizeProblems(Part part, UnitSystem unit) =>
        [
            .. Found(
                "Thickness",
                SizeSentences.Problem("thickness", part.Finished.Thickness, Thickest, unit)
            ),
            .. Found("Width", SizeSentences.Problem("width", part.Finished.Width, Widest, unit)),
            .. Found(
                "Length",
                SizeSentences.Problem("length", part.Finished.Length, Longest, unit)
            ),
        ];

    private static string? QuantityProblem(int quantity) =>
        quantity is >= 1 and <= MostOfOne
            ? null
            : $"The quantity is {quantity}. Make at least 1 and at most {MostOfOne} of a part.";

    private static IEnumerable<(string, string)> OpenProblems(Part part, UnitSystem unit) =>
        part.Open.SelectMany(
            (open, i) =>
                Found(
                    $"Open.{open.Dimension}",
                    part.Open.Take(i).Any(o => o.Dimension == open.Dimension)
                        ? $"The {Word(open.Dimension)} is left open twice. Keep one of the two."
                        : OpenProblem(open, unit)
                )
        );

    private static string? OpenProblem(OpenDimension open, UnitSystem unit)
    {
        var most =
            open.Dimension is PartDimension.Thickness
                ? Length.FromInches(1)
                : Length.FromInches(12);
        if (open.Extra <= Length.Zero)
            return $"The {Word(open.Dimension)} is left open by {Said.Exactly(open.Extra, unit)}. Write how much over its finished size it stays, more than zero.";
        if (open.Extra > most)
            return $"The {Word(open.Dimension)} is left open by {Said.Exactly(open.Extra, unit)}. The most is {Said.AtMost(most, unit)}.";
        if (string.IsNullOrWhiteSpace(open.Until))
            return $"Say until when the {Word(open.Dimension)} stays open, such as “the ends dry-fit”.";
        return open.Until.Length > LongestEvent || open.Until.Any(char.IsControl)
            ? $"Say until when the {Word(open.Dimension)} stays open on one line of at most {LongestEvent} characters."
            : null;
    }

    private static string Word(PartDimension dimension) =>
        dimension switch
        {
            PartDimension.Thickness => "thickness",
            PartDimension.Width => "width",
            _ => "length",
        };

    private static IEnumerable<(string, string)> Found(string field, string? sentence) =>
        sentence is null ? [] : [(field, sentence)];
}
