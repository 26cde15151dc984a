using System.Globalization;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Projects;

/// <summary>A size that must agree, worked out on a parts list.</summary>
/// <param name="Agrees">Whether the part's size is the sum, to the tick.</param>
/// <param name="Size">The size of the part; zero where the part is not there.</param>
/// <param name="Sum">What the terms add up to; zero where one of them names a part that is not there.</param>
/// <param name="Sentence">Both with their figures: "The length of B is 20 in, but 20 in clear + 2 × 1/4 in dado = 20 1/2 in."</param>
public sealed record SizeSum(bool Agrees, Length Size, Length Sum, string Sentence)
{
    /// <summary>Most sums in a project.</summary>
    public const int MostChecks = 40;

    /// <summary>Most terms in one sum.</summary>
    public const int MostTerms = 8;

    /// <summary>Most times a term may count.</summary>
    public const int MostTimes = 50;

    /// <summary>Most characters in what a term is.</summary>
    public const int LongestMeaning = 40;

    /// <summary>Works a sum out. Figures are exact, in the unit.</summary>
    public static SizeSum Of(SizeCheck check, IReadOnlyList<Part> parts, UnitSystem unit)
    {
        var missing = Letters(check).FirstOrDefault(l => parts.All(p => p.Letter != l));
        if (missing is not null)
            return new(false, default, default, JointChecks.NotThere(missing, parts));
        var size = SizeOf(check.Part, check.Dimension, parts);
        var sum = check.Terms.Aggregate(Length.Zero, (s, t) => s + ValueOf(t, parts) * t.Times);
        var written = Written(check.Terms, parts, unit);
        var what = $"{check.Dimension.Words()} of {check.Part}";
        return size == sum
            ? new(true, size, sum, $"The {what} is {Said.Exactly(size, unit)} = {written}.")
            : new(
                false,
                size,
                sum,
                $"The {what} is {Said.Exactly(size, unit)}, but {written} = {Said.Exactly(sum, unit)}."
            );
    }

    /// <summary>
    /// What is wrong with a sum as it is written, field by field: Part, Terms (empty or too many), and "1.Times", "1.Part",
    /// "1.Fixed", "1.Meaning" for its terms from 1. A sum that does not come out is not wrong in this sense.
    /// </summary>
    public static IReadOnlyList<(string Field, string Sentence)> ProblemsIn(
        SizeCheck check,
        IReadOnlyList<Part> parts,
        UnitSystem unit
    ) =>
        [
            .. Found("Part", LetterProblem(check.Part, parts)),
            .. Found("Terms", TermsProblem(check)),
            .. check
                .Terms.Take(MostTerms)
                .SelectMany((t, i) => InTerm(t, $"{i + 1}.", parts, unit)),
        ];

    private static string? TermsProblem(SizeCheck check)
    {
        if (check.Terms.Count == 0)
            return "Write what the size must equal.";
        if (check.Terms.Count > MostTerms)
            return $"Here are {check.Terms.Count} terms; {MostTerms} is the most.";
        return check.Terms.Any(t => t.Part == check.Part && t.Dimension == check.Dimension)
            ? "A size cannot be checked against itself. Choose another part or size."
            : null;
    }

    private static IEnumerable<(string, string)> InTerm(
        SizeTerm term,
        string at,
        IReadOnlyList<Part> parts,
        UnitSystem unit
    ) =>
        [
            .. Found(at + "Times", TimesProblem(term.Times)),
            .. Found(at + "Part", term.Part is null ? null : LetterProblem(term.Part, parts)),
            .. Found(at + "Fixed", FixedProblem(term, unit)),
            .. Found(at + "Meaning", MeaningProblem(term)),
        ];

    private static string? TimesProblem(int times) =>
        times is 0 || Math.Abs((long)times) > MostTimes
            ? $"It counts {times} times. Write a whole number from 1 to {MostTimes}, or from −{MostTimes} to −1 to take away."
            : null;

    private static string? FixedProblem(SizeTerm term, UnitSystem unit)
    {
        if (term.Part is not null)
            return term.Fixed == Length.Zero ? null : "Choose a part or write a size, not both.";
        return SizeSentences.Problem("size", term.Fixed, PartChecks.Longest, unit);
    }

    private static string? MeaningProblem(SizeTerm term)
    {
        if (term.Meaning.Length == 0)
            return term.Part is null ? "Say what this size is, such as “clear width”." : null;
        return TypedText.NameProblem(term.Meaning, LongestMeaning);
    }

    private static string? LetterProblem(string letter, IReadOnlyList<Part> parts) =>
        parts.Any(p => p.Letter == letter) ? null : JointChecks.NotThere(letter, parts);

    private static IEnumerable<string> Letters(SizeCheck check) =>
        [check.Part, .. check.Terms.Select(t => t.Part).OfType<string>()];

    private static Length ValueOf(SizeTerm term, IReadOnlyList<Part> parts) =>
        term.Part is { } letter ? SizeOf(letter, term.Dimension, parts) : term.Fixed;

    private static Length SizeOf(string letter, PartDimension size, IReadOnlyList<Part> parts)
    {
        var finished = parts.First(p => p.Letter == letter).Finished;
        return size switch
        {
            PartDimension.Thickness => finished.Thickness,
            PartDimension.Width => finished.Width,
            _ => finished.Length,
        };
    }

    /// <summary>"18 in length of B − 2 × 3/4 in thickness of A + 2 × 1/4 in dado".</summary>
    private static string Written(
        IReadOnlyList<SizeTerm> terms,
        IReadOnlyList<Part> parts,
        UnitSystem unit
    ) =>
        string.Concat(
            terms.Select(
                (t, i) =>
                    $"{Sign(t.Times < 0, i == 0)}{Times(Math.Abs(t.Times))}{Said.Exactly(ValueOf(t, parts), unit)} {What(t)}"
            )
        );

    private static string Sign(bool takesAway, bool isFirst) =>
        (takesAway, isFirst) switch
        {
            (true, true) => "−",
            (true, false) => " − ",
            (false, true) => "",
            _ => " + ",
        };

    private static string Times(int times) =>
        times == 1 ? "" : times.ToString(CultureInfo.InvariantCulture) + " × ";

    private static string What(SizeTerm term) =>
        term switch
        {
            { Part: { } letter, Meaning.Length: 0 } => $"{term.Dimension.Words()} of {letter}",
            { Part: { } letter } => $"{term.Meaning} ({term.Dimension.Words()} of {letter})",
            _ => term.Meaning,
        };

    private static IEnumerable<(string, string)> Found(string field, string? sentence) =>
        sentence is null ? [] : [(field, sentence)];
}
