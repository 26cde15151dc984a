namespace ShopClass.Core.Planning.Search.BadPlaces;

/// <summary>Boards together with one more, each of which yields something.</summary>
internal sealed class JointBound(
    Lattice lattice,
    Taste taste,
    SplitBound before,
    SplitBound last,
    Steps steps
) : SplitBound
{
    private readonly Dictionary<int, Split?> known = [];
    private readonly HashSet<int> settled = [];

    /// <param name="Cost">What both parts cost at the least.</param>
    /// <param name="Length">The length they use at the least.</param>
    /// <param name="Part">The blanks of the last board.</param>
    private sealed record Split(Cost Cost, long Length, int Part);

    /// <inheritdoc/>
    public override (Cost Cost, long Length)? Least(int code) =>
        Best(code) is { } split ? (split.Cost, split.Length) : null;

    /// <inheritdoc/>
    public override Depth DepthOf(int code)
    {
        if (settled.Contains(code) || Best(code) is not { } split)
            return Depth.Settled;
        var depth = DepthOf(code, split);
        // Only when it has been looked into again is it certain that no other split is better by now.
        return depth == Depth.Settled ? Depth.Roughly : depth;
    }

    private Depth DepthOf(int code, Split split) =>
        (Depth)Math.Min((int)last.DepthOf(split.Part), (int)before.DepthOf(code - split.Part));

    /// <inheritdoc/>
    public override void LookInto(int code)
    {
        // What the best split rests on may have risen since.
        var was = Best(code)!;
        known.Remove(code);
        if (
            Best(code) is not { } split
            || taste.Compare(split.Cost, split.Length, was.Cost, was.Length) > 0
        )
            return;
        var (here, there) = (last.DepthOf(split.Part), before.DepthOf(code - split.Part));
        if (here == Depth.Settled && there == Depth.Settled)
            settled.Add(code);
        else if (here <= there)
            last.LookInto(split.Part);
        else
            before.LookInto(code - split.Part);
    }

    /// <inheritdoc/>
    public override IReadOnlyList<DraftBoard>? Layout(int code) =>
        Best(code) is { } split
        && before.Layout(code - split.Part) is { } first
        && last.Layout(split.Part) is { } second
            ? [.. first, .. second]
            : null;

    private Split? Best(int code)
    {
        if (known.TryGetValue(code, out var best))
            return best;
        var whole = lattice.Packed(code);
        steps.Take(1 + code / 16);
        for (var part = 1; part < code; part++)
        {
            if (!lattice.Holds(whole, lattice.Packed(part)) || last.Least(part) is not { } here)
                continue;
            if (
                best is not null
                && taste.Compare(here.Cost, here.Length, best.Cost, best.Length) >= 0
            )
                continue;
            if (before.Least(code - part) is not { } there)
                continue;
            var (cost, length) = (here.Cost + there.Cost, here.Length + there.Length);
            if (best is null || taste.Compare(cost, length, best.Cost, best.Length) < 0)
                best = new(cost, length, part);
        }

        known.Add(code, best);
        return best;
    }
}
