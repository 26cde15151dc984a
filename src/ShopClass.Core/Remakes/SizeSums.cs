using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Remakes;

/// <summary>
/// Names a size that may change: a dimension of a part, or a fixed size of the sums by its meaning and value, so that the
/// same clear width in two sums is one size.
/// </summary>
internal readonly record struct SizeName(
    string? Part,
    PartDimension Dimension,
    string Meaning = "",
    Length Fixed = default
)
{
    public static SizeName Of(SizeTerm term) =>
        term.Part is { } part
            ? new(part, term.Dimension)
            : new(null, default, term.Meaning, term.Fixed);
}

/// <summary>Carries a change of one size through every sum of sizes that must agree.</summary>
internal static class SizeSums
{
    /// <summary>A fixed size is only changed when it is this many times the change: a clear width, never a dado's depth.</summary>
    private const int FixedAtLeast = 4;

    /// <summary>More sizes than this never change together.</summary>
    private const int MostChanges = 8;

    /// <summary>The finished size.</summary>
    public static Length ValueOf(Project project, SizeName size)
    {
        if (size.Part is null)
            return size.Fixed;
        var finished = project.Parts.First(p => p.Letter == size.Part).Finished;
        return size.Dimension switch
        {
            PartDimension.Length => finished.Length,
            PartDimension.Width => finished.Width,
            _ => finished.Thickness,
        };
    }

    /// <summary>The project with this size smaller by <paramref name="by"/> and as few others as keep every sum; null when none do.</summary>
    public static SmallerDesign? Shrink(Project project, SizeName size, Length by)
    {
        var found = Settle(project, new() { [size] = Length.Zero - by });
        if (
            found is null
            || found.Any(c => ValueOf(project, c.Key) + c.Value <= PartChecks.Smallest)
        )
            return null;
        var changes = found
            .OrderBy(c => c.Key.Part is null)
            .ThenBy(c => c.Key.Part, StringComparer.Ordinal)
            .ThenBy(c => c.Key.Meaning, StringComparer.Ordinal)
            .Select(c => Change(project, c.Key, c.Value))
            .ToList();
        return JointsStillFit(project, found) ? new(Changed(project, found), changes) : null;
    }

    /// <summary>Adds changes until every sum agrees again; the fewest parts first.</summary>
    private static Dictionary<SizeName, Length>? Settle(
        Project project,
        Dictionary<SizeName, Length> changes
    )
    {
        var broken = project.SizeChecks.FirstOrDefault(c => Off(c, changes) != Length.Zero);
        if (broken is null)
            return changes;
        if (changes.Count >= MostChanges)
            return null;
        return Repairs(project, broken, changes)
            .Select(c => Settle(project, c))
            .OfType<Dictionary<SizeName, Length>>()
            .MinBy(c => (c.Keys.Count(k => k.Part is not null), c.Count));
    }

    private static IEnumerable<Dictionary<SizeName, Length>> Repairs(
        Project project,
        SizeCheck check,
        Dictionary<SizeName, Length> changes
    )
    {
        var off = Off(check, changes);
        foreach (var (size, times) in Sizes(check).Where(s => !changes.ContainsKey(s.Size)))
        {
            if (
                size is { Part: not null, Dimension: PartDimension.Thickness }
                || off.Ticks % times != 0
            )
                continue;
            var change = Length.FromTicks(-off.Ticks / times);
            var value = ValueOf(project, size);
            if (size.Part is null && value < Magnitude(change) * FixedAtLeast)
                continue;
            yield return new(changes) { [size] = change };
        }
    }

    /// <summary>By how much a sum is off once these changes are made: its dimension less its terms.</summary>
    private static Length Off(SizeCheck check, Dictionary<SizeName, Length> changes) =>
        Sizes(check)
            .Aggregate(
                Length.Zero,
                (sum, s) =>
                    sum + (changes.TryGetValue(s.Size, out var c) ? c * s.Times : Length.Zero)
            );

    /// <summary>Every size of a sum with how often it counts in dimension less terms; a size met twice is counted together.</summary>
    private static IEnumerable<(SizeName Size, int Times)> Sizes(SizeCheck check)
    {
        IEnumerable<(SizeName Size, int Times)> all =
        [
            (new SizeName(check.Part, check.Dimension), 1),
            .. check.Terms.Select(t => (SizeName.Of(t), -t.Times)),
        ];
        return all.GroupBy(s => s.Size)
            .Select(g => (Size: g.Key, Times: g.Sum(s => s.Times)))
            .Where(s => s.Times != 0);
    }

    private static Length Magnitude(Length length) =>
        length < Length.Zero ? Length.Zero - length : length;

    private static SizeChange Change(Project project, SizeName size, Length by)
    {
        var from = ValueOf(project, size);
        return size.Part is { } letter
            ? new(
                letter,
                $"{(size.Dimension is PartDimension.Width ? "width" : "length")} of {letter}",
                size.Dimension,
                from,
                from + by
            )
            : new(null, size.Meaning, null, from, from + by);
    }

    private static Project Changed(Project project, Dictionary<SizeName, Length> changes) =>
        project with
        {
            Parts = [.. project.Parts.Select(p => Changed(p, changes))],
            SizeChecks =
            [
                .. project.SizeChecks.Select(c =>
                    c with
                    {
                        Terms =
                        [
                            .. c.Terms.Select(t =>
                                t.Part is null && changes.TryGetValue(SizeName.Of(t), out var by)
                                    ? t with
                                    {
                                        Fixed = t.Fixed + by,
                                    }
                                    : t
                            ),
                        ],
                    }
                ),
            ],
        };

    private static Part Changed(Part part, Dictionary<SizeName, Length> changes)
    {
        Length By(PartDimension dimension) =>
            changes.GetValueOrDefault(new SizeName(part.Letter, dimension));
        return part with
        {
            Finished = part.Finished with
            {
                Width = part.Finished.Width + By(PartDimension.Width),
                Length = part.Finished.Length + By(PartDimension.Length),
            },
        };
    }

    /// <summary>Every joint must still lie on its part.</summary>
    private static bool JointsStillFit(Project project, Dictionary<SizeName, Length> changes) =>
        project.Joints.All(joint =>
        {
            var part = project.Parts.FirstOrDefault(p => p.Letter == joint.Part);
            if (part is null)
                return true;
            var changed = Changed(part, changes);
            var mate = project.Parts.FirstOrDefault(p => p.Letter == joint.Mate);
            var width = joint.Width ?? mate?.Finished.Thickness ?? Length.Zero;
            return joint.Positions.All(p => p + width <= changed.Finished.Length)
                && (joint.FromEdge is null || joint.LiesAcross(changed, mate));
        });
}
