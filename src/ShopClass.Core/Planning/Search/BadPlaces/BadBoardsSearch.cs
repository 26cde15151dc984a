namespace ShopClass.Core.Planning.Search.BadPlaces;

/// <summary>Looks for everything out of boards of which some have bad places, each of them cut.</summary>
/// <param name="bench">What is asked.</param>
/// <param name="lattice">Its choices of blanks.</param>
/// <param name="clearTable">What a clear board yields.</param>
/// <param name="steps">Counts the looks.</param>
/// <param name="limit">How many steps may be taken by its end.</param>
internal sealed class BadBoardsSearch(
    Bench bench,
    Lattice lattice,
    Func<Stock, BoardTable> clearTable,
    Steps steps,
    int limit
)
{
    /// <summary>The most bad places of a board that is searched to the end.</summary>
    private const int MostBadPlaces = 16;

    /// <summary>The most choices of blanks that are shared out over several boards with bad places.</summary>
    private const int MostShared = 4096;

    /// <summary>How many steps one choice may take out of one of several boards.</summary>
    private const int MostStepsForOne = 4000;
    private readonly Taste taste = new(bench);

    /// <summary>What the boards cost at the least; null where there is too much to list.</summary>
    /// <param name="chosen">The boards.</param>
    /// <param name="have">Cost and length of the best plan known on them.</param>
    /// <param name="tryOut">Takes boards laid out and says what is known to be had then.</param>
    public BadBoardAnswer? On(
        IReadOnlyList<Stock> chosen,
        (Cost Cost, long Length)? have,
        Func<IReadOnlyList<DraftBoard>, (Cost Cost, long Length)?> tryOut
    ) =>
        chosen.Any(s => s.Bad.Count > MostBadPlaces) ? null
        : chosen.Count == 1 ? OnOne(chosen[0], have, tryOut)
        : lattice.Size > MostShared ? null
        : OnSeveral(chosen, have, tryOut);

    private BadBoardAnswer? OnOne(
        Stock stock,
        (Cost Cost, long Length)? have,
        Func<IReadOnlyList<DraftBoard>, (Cost Cost, long Length)?> tryOut
    )
    {
        (Cost Cost, long Length)? Untrimmed((Cost Cost, long Length)? known) =>
            known is { } k ? (k.Cost - stock.TrimCost, k.Length) : null;
        var without = Untrimmed(have);
        var board = BadBoardOf(
            stock,
            (table, code, length, cost) =>
            {
                var begin = length + stock.CrosscutKerf;
                var rest =
                    code == lattice.All
                        ? (default, -stock.CrosscutKerf)
                        : table.Least(lattice.All - code, stock.Usable - begin);
                return rest is { } r
                    && (
                        without is not { } h
                        || taste.Compare(
                            cost + r.Cost,
                            stock.Start + begin + r.Length,
                            h.Cost,
                            h.Length
                        ) < 0
                    );
            }
        );
        if (board is null)
            return null;
        var answer = new BadBoardSearch(board, lattice.All, steps, limit).Run(
            without,
            sections => Untrimmed(tryOut([new(stock, sections)]))
        );
        return answer with
        {
            Least = answer.Least is { } l ? (l.Cost + stock.TrimCost, l.Length) : null,
        };
    }

    /// <summary>
    /// The best way to share the blanks out, each board at first taken for clear, is looked into board by board until it holds.
    /// </summary>
    private BadBoardAnswer? OnSeveral(
        IReadOnlyList<Stock> chosen,
        (Cost Cost, long Length)? have,
        Func<IReadOnlyList<DraftBoard>, (Cost Cost, long Length)?> tryOut
    )
    {
        SplitBound? all = null;
        foreach (var stock in chosen)
        {
            if (BoundOf(stock, have) is not { } one)
                return null;
            all = all is null ? one : new JointBound(lattice, taste, all, one, steps);
        }

        (Cost Cost, long Length)? tried = null;
        while (all!.Least(lattice.All) is { } least)
        {
            if (have is { } h && taste.Compare(h.Cost, h.Length, least.Cost, least.Length) <= 0)
                return new(true, have);
            if (steps.AreUp || steps.Taken >= limit)
                return new(false, least);
            var depth = all.DepthOf(lattice.All);
            if (depth == Depth.Settled || (depth == Depth.Roughly && tried != least))
            {
                tried = least;
                if (all.Layout(lattice.All) is { } boards)
                    have = tryOut(boards);
            }

            if (depth == Depth.Settled)
                return new(true, least);
            all.LookInto(lattice.All);
        }

        return new(true, have);
    }

    private SplitBound? BoundOf(Stock stock, (Cost Cost, long Length)? have)
    {
        if (stock.IsClear)
            return new ClearBound(stock, clearTable(stock));
        var board = BadBoardOf(
            stock,
            (_, _, length, cost) =>
                length <= stock.Usable
                && (
                    have is not { } h
                    || taste.Compare(cost, stock.Start + length, h.Cost, h.Length) <= 0
                )
        );
        return board is null
            ? null
            : new BadBound(board, sections => CostOf(stock, sections), steps, MostStepsForOne);
    }

    /// <summary>What sections come to, the board's trim included.</summary>
    private (Cost Cost, long Length) CostOf(Stock stock, IReadOnlyList<DraftSection> sections)
    {
        var score = Candidate.Of(bench, Draft.Of(bench, [new(stock, sections)])).Score;
        return (new(score.Effort, (long)score.Lines), (long)score.LengthUsed);
    }

    private BadBoard? BadBoardOf(Stock stock, Func<BoardTable, int, long, Cost, bool> isWanted)
    {
        var table = BoardTable.For(bench, lattice, stock, stock.Usable, steps, linesMayMeet: true);
        var sections = SectionList.Wanted(
            bench,
            lattice,
            stock,
            (code, length, cost) => isWanted(table, code, length, cost),
            steps
        );
        return sections is null || !table.IsWhole
            ? null
            : new(bench, lattice, table, stock, sections, steps);
    }
}
