namespace ShopClass.Core.Planning.Search.BadPlaces;

/// <summary>What choices of blanks cost at the least out of one board or several, which may rise as it is looked into.</summary>
internal abstract class SplitBound
{
    /// <summary>Cost and length this choice does not go below, as far as is known; null where it does not go.</summary>
    public abstract (Cost Cost, long Length)? Least(int code);

    /// <summary>How far this choice has been looked into.</summary>
    public abstract Depth DepthOf(int code);

    /// <summary>Looks into the choice, of which not everything is known.</summary>
    public abstract void LookInto(int code);

    /// <summary>A layout of the choice to go with what is known, if there is one.</summary>
    public abstract IReadOnlyList<DraftBoard>? Layout(int code);
}

/// <summary>How far a choice of blanks has been looked into.</summary>
internal enum Depth
{
    /// <summary>As if the boards were clear.</summary>
    AsClear,

    /// <summary>With their bad places, but lines only counted of each section's strip with the most cuts.</summary>
    Roughly,

    /// <summary>As far as it goes.</summary>
    Settled,
}

/// <summary>A clear board: everything is known.</summary>
internal sealed class ClearBound(Stock stock, BoardTable table) : SplitBound
{
    private readonly Dictionary<int, BoardWay?> ways = [];

    private BoardWay? Way(int code)
    {
        if (!ways.TryGetValue(code, out var way))
            ways.Add(code, way = table.BestOn(stock, code));
        return way;
    }

    /// <inheritdoc/>
    public override (Cost Cost, long Length)? Least(int code) =>
        Way(code) is { } way ? (way.Cost + stock.TrimCost, way.Length) : null;

    /// <inheritdoc/>
    public override Depth DepthOf(int code) => Depth.Settled;

    /// <inheritdoc/>
    public override void LookInto(int code) { }

    /// <inheritdoc/>
    public override IReadOnlyList<DraftBoard>? Layout(int code) =>
        Way(code) is { } way ? [new(stock, way.Sections())] : null;
}

/// <summary>A board with bad places: at first what it would yield if it were clear.</summary>
/// <param name="board">The board.</param>
/// <param name="costOf">What sections laid out on it come to, its trim included.</param>
/// <param name="steps">Counts the looks.</param>
/// <param name="mostSteps">How many steps one look into a choice may take.</param>
internal sealed class BadBound(
    BadBoard board,
    Func<IReadOnlyList<DraftSection>, (Cost Cost, long Length)> costOf,
    Steps steps,
    int mostSteps
) : SplitBound
{
    private readonly Lazy<BadBoard> counting = new(board.CountingLines);
    private readonly Dictionary<int, Known> known = [];

    private sealed record Known(
        (Cost Cost, long Length)? Least,
        IReadOnlyList<DraftSection>? Sections,
        Depth Depth
    );

    /// <inheritdoc/>
    public override (Cost Cost, long Length)? Least(int code)
    {
        if (known.TryGetValue(code, out var found))
            return found.Least;
        var stock = board.Stock;
        return board.Clear.Least(code, stock.Usable) is { } clear
            ? (clear.Cost + stock.TrimCost, stock.Start + clear.Length)
            : null;
    }

    /// <inheritdoc/>
    public override Depth DepthOf(int code) =>
        known.TryGetValue(code, out var found) ? found.Depth : Depth.AsClear;

    /// <inheritdoc/>
    public override void LookInto(int code) =>
        known[code] = known.TryGetValue(code, out var rough) ? Wholly(code, rough) : Roughly(code);

    private Known Roughly(int code)
    {
        var (answer, sections) = Search(board, code, 1);
        return answer.Least is not { } least ? new(null, null, Depth.Settled)
            : sections is not null && Compare(costOf(sections), least) == 0
                ? new(least, sections, Depth.Settled)
            : new(least, sections, answer.IsWhole ? Depth.Roughly : Depth.Settled);
    }

    private Known Wholly(int code, Known rough)
    {
        var (answer, sections) = Search(counting.Value, code, BadBoardSearch.MostLaidOut);
        var least = answer.Least is { } l && Compare(l, rough.Least!.Value) > 0 ? l : rough.Least;
        return new(least, sections ?? rough.Sections, Depth.Settled);
    }

    /// <summary>What the search says, the board's trim included, and the best of what it laid out.</summary>
    private (BadBoardAnswer Answer, IReadOnlyList<DraftSection>? Sections) Search(
        BadBoard on,
        int code,
        int mostLaidOut
    )
    {
        (Cost Cost, long Length)? have = null;
        IReadOnlyList<DraftSection>? best = null;
        var trim = board.Stock.TrimCost;
        var answer = new BadBoardSearch(on, code, steps, steps.Taken + mostSteps).FromStart(
            sections =>
            {
                var come = costOf(sections);
                if (have is null || Compare(come, have.Value) < 0)
                    (have, best) = (come, sections);
                return (have!.Value.Cost - trim, have.Value.Length);
            },
            mostLaidOut
        );
        return (
            answer with
            {
                Least = answer.Least is { } l ? (l.Cost + trim, l.Length) : null,
            },
            best
        );
    }

    private int Compare((Cost Cost, long Length) a, (Cost Cost, long Length) b) =>
        board.Taste.Compare(a.Cost, a.Length, b.Cost, b.Length);

    /// <inheritdoc/>
    public override IReadOnlyList<DraftBoard>? Layout(int code) =>
        known.TryGetValue(code, out var found) && found.Sections is { } sections
            ? [new(board.Stock, sections)]
            : null;
}

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
