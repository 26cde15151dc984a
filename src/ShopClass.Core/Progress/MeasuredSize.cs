using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Progress;

/// <summary>A size a step asks for.</summary>
/// <param name="Piece">Of which piece.</param>
/// <param name="Dimension">Which of its sizes.</param>
/// <param name="Planned">What the plan says it is after the step.</param>
/// <param name="Over">How much over is still good.</param>
/// <param name="Under">How much under is still good.</param>
public sealed record SizeAsked(
    string Piece,
    PartDimension Dimension,
    Length Planned,
    Length Over,
    Length Under
);

/// <summary>How a measured size compares with what was asked.</summary>
public enum SizeVerdict
{
    /// <summary>Within what the kind of cut allows.</summary>
    Good,

    /// <summary>Over; wood can still be taken off.</summary>
    Over,

    /// <summary>Under the plan, and the finished part still comes out of it.</summary>
    UnderStillFits,

    /// <summary>Too small for the finished part.</summary>
    TooSmall,
}

/// <summary>A measured size, judged.</summary>
/// <param name="Verdict">How it compares.</param>
/// <param name="Sentence">What it means and what to do now.</param>
public sealed record SizeJudged(SizeVerdict Verdict, string Sentence);

/// <summary>
/// Judges what a student measured. Tolerances by class of cut (common practice for the classes; the figures are our
/// proposal): third class may be a quarter inch over, second and planed sizes a sixty-fourth, first ten thousandths.
/// </summary>
public static class MeasuredSize
{
    private static readonly Length ThirdClass = Length.FromInches(0, 1, 4);
    private static readonly Length SecondClass = Length.FromInches(0, 1, 64);
    private static readonly Length FirstClass = Length.FromHundredthsOfMillimetre(25);

    /// <summary>The size this step asks for of a piece; null when it asks for none.</summary>
    public static SizeAsked? AskedOf(Step step, string piece)
    {
        if (DimensionOf(step.Kind) is not { } dimension)
            return null;
        if (
            step.Leaves.FirstOrDefault(l => l.Name == piece && l.Use is PieceUse.Work)
            is not { } left
        )
            return null;
        var planned = dimension switch
        {
            PartDimension.Length => left.Length,
            PartDimension.Width => left.Width,
            _ => left.Thickness,
        };
        var (over, under) = ToleranceOf(step.Class);
        return new(piece, dimension, planned, over, under);
    }

    /// <summary>All sizes this step asks for.</summary>
    public static IReadOnlyList<SizeAsked> AskedOf(Step step) =>
        [.. step.Leaves.Select(l => AskedOf(step, l.Name)).OfType<SizeAsked>()];

    /// <summary>A size that was surely read in the wrong unit or from the wrong piece, as a question; null when it may be right.</summary>
    public static string? ProblemWith(SizeAsked asked, Length measured)
    {
        if (measured <= Length.Zero)
            return "A size is more than nothing. Write what you measured.";
        var (small, large) = (
            Length.Min(asked.Planned, measured),
            Length.Max(asked.Planned, measured)
        );
        if (large.Ticks <= 3 * small.Ticks)
            return null;
        var expected =
            $"About {LengthWriter.WriteExactWithUnit(asked.Planned.RoundTo(Length.FromInches(0, 1, 16)), UnitSystem.Inch)} or "
            + $"{LengthWriter.WriteExactWithUnit(asked.Planned.RoundTo(Length.FromMillimetres(1)), UnitSystem.Metric)} is expected for the {Word(asked.Dimension)} of {asked.Piece}.";
        // Within a tenth of 25.4 to one: inches were read as millimetres, or the other way round.
        var ratio = 10 * large.Ticks / small.Ticks;
        return ratio is > 228 and < 280
            ? $"{expected} That looks like the right figure in the wrong unit. Write the unit with it: 235 mm, 9 1/4 in."
            : $"{expected} Look at the piece and the tape once more.";
    }

    /// <summary>What a measured size means and what to do now.</summary>
    /// <param name="asked">What was asked.</param>
    /// <param name="measured">What was measured.</param>
    /// <param name="finished">The finished part's size in that dimension; null when the piece is not yet one part.</param>
    /// <param name="precision">How sizes are written.</param>
    public static SizeJudged Judge(
        SizeAsked asked,
        Length measured,
        Length? finished,
        Precision precision
    )
    {
        var (word, piece) = (Word(asked.Dimension), asked.Piece);
        if (measured > asked.Planned + asked.Over)
            return new(
                SizeVerdict.Over,
                $"{piece} is {Say(measured - asked.Planned)} over in {word}. Nothing is lost: bring it down to {Say(asked.Planned)}, or go on if it is trimmed later."
            );
        // A tape is read to the nearest mark.
        var nearest = Length.FromTicks(precision.Step().Ticks / 2);
        if (measured >= asked.Planned - Length.Max(asked.Under, nearest))
            return new(SizeVerdict.Good, $"{piece} is good: {Say(measured)} in {word}.");
        var missing = Say(asked.Planned - measured);
        if (finished is not { } least)
            return new(
                SizeVerdict.UnderStillFits,
                $"{piece} is {missing} under in {word}. Show it to your instructor before the next cut."
            );
        return measured >= least
            ? new(
                SizeVerdict.UnderStillFits,
                $"{piece} is {missing} under the plan in {word}. The finished part needs {Say(least)}, so it still fits: go on, with {Say(measured - least)} left to clean up."
            )
            : new(
                SizeVerdict.TooSmall,
                $"{piece} is {Say(least - measured)} too small in {word}: the finished part needs {Say(least)}. Stop, keep the piece, and press “I spoiled it”. Do not cut other pieces to match."
            );

        string Say(Length length) =>
            length < precision.Step() && length > Length.Zero
                ? $"less than {LengthWriter.WriteWithUnit(precision.Step(), precision)}"
                : LengthWriter.WriteWithUnit(length, precision);
    }

    /// <summary>A dimension in a word.</summary>
    public static string Word(PartDimension dimension) => dimension.ToString().ToLowerInvariant();

    private static (Length Over, Length Under) ToleranceOf(CutClass? cut) =>
        cut switch
        {
            CutClass.Third => (ThirdClass, Length.Zero),
            CutClass.First => (FirstClass, FirstClass),
            _ => (SecondClass, Length.Zero),
        };

    private static PartDimension? DimensionOf(StepKind kind) =>
        kind switch
        {
            StepKind.Crosscut or StepKind.CutToLength => PartDimension.Length,
            StepKind.Rip or StepKind.BringToWidth => PartDimension.Width,
            StepKind.PlaneToThickness => PartDimension.Thickness,
            _ => null,
        };
}
