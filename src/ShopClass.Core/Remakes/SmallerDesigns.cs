using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Remakes;

/// <summary>A project made a little smaller, and everything that changed.</summary>
internal sealed record SmallerDesign(Project Project, IReadOnlyList<SizeChange> Changes)
{
    /// <summary>The changes as a list in words.</summary>
    public string InWords(Precision precision) =>
        string.Join(
            ", ",
            Changes.Select(c =>
                $"{c.What} {LengthWriter.WriteWithUnit(c.To, precision)} instead of {LengthWriter.WriteWithUnit(c.From, precision)}"
            )
        );
}

/// <summary>
/// Finds the smallest change of a part's length or width with which it can still be had, carried through every sum of sizes
/// that must agree.
/// </summary>
internal static class SmallerDesigns
{
    /// <summary>A fifth of the part at most: beyond that it is another design.</summary>
    private const int LargestShare = 5;

    /// <summary>The least change in the course's precision that works, length before width; null when none does.</summary>
    public static SmallerDesign? Least(
        PlanningRequest request,
        string letter,
        Func<Project, bool> works
    ) =>
        Least(request, new SizeName(letter, PartDimension.Length), works)
        ?? Least(request, new SizeName(letter, PartDimension.Width), works);

    private static SmallerDesign? Least(
        PlanningRequest request,
        SizeName size,
        Func<Project, bool> works
    )
    {
        var step = request.Rules.Precision.Step();
        var whole = SizeSums.ValueOf(request.Project, size);
        var most = whole.Ticks / LargestShare / step.Ticks;
        SmallerDesign? Smaller(long steps) =>
            SizeSums.Shrink(request.Project, size, step * steps) is { } changed
            && works(changed.Project)
                ? changed
                : null;

        // A part that can be had at some size can be had at any smaller one, so the least change is found by halving.
        if (most < 1 || Smaller(most) is not { } best)
            return null;
        long low = 0;
        var high = most;
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (Smaller(middle) is { } found)
                (high, best) = (middle, found);
            else
                low = middle;
        }

        return best;
    }
}
