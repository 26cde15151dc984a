namespace ShopClass.Core.Planning.Search.BadPlaces;

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
        var (answer, have, sections) = Search(board, code, 1);
        if (answer.Least is not { } least)
            return new(null, null, Depth.Settled);
        var isReached = have is { } h && Compare(h, least) == 0;
        var depth = answer.IsWhole && !isReached ? Depth.Roughly : Depth.Settled;
        return new(least, sections, depth);
    }

    private Known Wholly(int code, Known rough)
    {
        var (answer, _, sections) = Search(counting.Value, code, BadBoardSearch.MostLaidOut);
        var least = answer.Least is { } l && Compare(l, rough.Least!.Value) > 0 ? l : rough.Least;
        return new(least, sections ?? rough.Sections, Depth.Settled);
    }

    /// <summary>What the search says, the board's trim included, and the best of what it laid out, with its cost.</summary>
    private (
        BadBoardAnswer Answer,
        (Cost Cost, long Length)? Have,
        IReadOnlyList<DraftSection>? Sections
    ) Search(BadBoard on, int code, int mostLaidOut)
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
            have,
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
