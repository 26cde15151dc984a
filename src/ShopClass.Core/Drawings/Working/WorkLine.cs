using ShopClass.Core.Measure;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Drawings.Working;

/// <summary>The line a piece is worked to in a step.</summary>
/// <param name="At">Where it is, from the left end or the near edge.</param>
/// <param name="IsAcross">Whether it runs across the piece.</param>
/// <param name="IsAlong">Whether it runs along it.</param>
/// <param name="TakesLength">Whether what lies beyond it comes off the length.</param>
/// <param name="TakesWidth">Whether what lies beyond it comes off the width.</param>
/// <param name="Figure">What is measured to it.</param>
internal readonly record struct WorkLine(
    Length At,
    bool IsAcross,
    bool IsAlong,
    bool TakesLength,
    bool TakesWidth,
    Length Figure
)
{
    /// <summary>The line of a step on a piece; all false where there is none.</summary>
    public static WorkLine On(WorkedPiece piece, Step step)
    {
        var (before, after) = (piece.Before, piece.After);
        if (step.Kind is StepKind.GangMark)
            return Across(LengthMarked(before, step), takes: false);
        if (after.Length < before.Length)
            return step.Kind is StepKind.SquareEnd
                ? Across(after.Length, takes: true) with
                {
                    Figure = before.Length - after.Length,
                }
                : Across(after.Length, takes: true);
        return after.Width < before.Width
            ? new(after.Width, false, true, false, true, after.Width)
            : default;
    }

    private static WorkLine Across(Length at, bool takes) =>
        at > Length.Zero ? new(at, true, false, takes, false, at) : default;

    /// <summary>The length a step's first mark begins with ("14 in from the squared ends"); zero where it begins with none.</summary>
    public static Length Marked(Step step)
    {
        var mark = step.Marks.Count > 0 ? step.Marks[0] : "";
        var end = mark.IndexOf(" from ", StringComparison.Ordinal);
        var unit = mark.Contains(" mm", StringComparison.Ordinal)
            ? UnitSystem.Metric
            : UnitSystem.Inch;
        var reading = end < 0 ? default : LengthReader.Read(mark[..end], unit);
        return reading.IsRead ? reading.Value : Length.Zero;
    }

    // Pieces marked together stay as they are, so the length is read from the mark.
    private static Length LengthMarked(PieceLeft before, Step step) =>
        Marked(step) is var marked && marked <= before.Length ? marked : Length.Zero;
}
