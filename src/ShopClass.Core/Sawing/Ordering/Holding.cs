using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Sawing.Ordering;

/// <summary>What holds a piece for a cut, and how to say it. The limits are the course's own judgement.</summary>
internal static class Holding
{
    /// <summary>What holds a piece for a crosscut.</summary>
    /// <param name="rules">The course's limits.</param>
    /// <param name="piece">How long the piece is before the cut.</param>
    /// <param name="held">How long its longer side is afterwards: the side that is held.</param>
    public static Support ForCrosscut(CourseRules rules, Length piece, Length held)
    {
        if (piece >= rules.SawBenchLimit)
            return Support.SawBench;
        return held >= rules.BenchHookLimit ? Support.BenchHook : Support.Vise;
    }

    /// <summary>What holds a piece for a rip.</summary>
    public static Support ForRip(CourseRules rules, Length piece) =>
        piece >= rules.SawBenchLimit ? Support.SawBench : Support.Vise;

    /// <summary>The note for a hold limit that bends the usual way; null when none does.</summary>
    public static string? Note(CutKind kind, Support support, CourseRules rules)
    {
        if (support is not Support.Vise)
            return null;
        return kind is CutKind.Rip
            ? $"shorter than {Says(rules.SawBenchLimit)}: rip it in the vise, from both ends"
            : $"less than {Says(rules.BenchHookLimit)} to hold at the bench hook: saw it in the vise";

        string Says(Length limit) => LengthWriter.WriteWithUnit(limit, rules.Precision);
    }

    /// <summary>How to hold and saw it.</summary>
    /// <param name="kind">What the cut does.</param>
    /// <param name="support">What holds the work.</param>
    /// <param name="held">The side that is held, in words.</param>
    /// <param name="falling">The side that comes off, in words.</param>
    public static string Words(CutKind kind, Support support, string held, string falling) =>
        (kind is CutKind.Rip, support) switch
        {
            (true, Support.SawBench) =>
                $"Kneel on {held} with the line just clear of the saw bench, shoulder and saw in line with it, and move "
                    + $"the work forward as you go. Support {falling} and finish with light strokes.",
            (true, _) =>
                $"Clamp {held} upright in the vise with the line just outside the jaws and stand in line with the cut. "
                    + $"Saw half way, turn it end for end and saw to meet; hold up {falling} and finish with light strokes.",
            (false, Support.SawBench) =>
                $"Kneel on {held} with the line just past the edge of the saw bench, shoulder and saw in line with the "
                    + $"cut. Support {falling} with the free hand and finish with light strokes.",
            (false, Support.BenchHook) =>
                $"Press {held} against the fence of the bench hook with the line just clear of it, shoulder and saw in "
                    + $"line with the cut. Support {falling} and finish with light strokes.",
            (false, _) =>
                $"Clamp {held} in the vise with the line close beside the jaws and stand in line with the cut. Support "
                    + $"{falling} and finish with light strokes.",
        };
}
