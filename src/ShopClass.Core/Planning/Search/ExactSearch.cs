using ShopClass.Core.Planning.Search.BadPlaces;

namespace ShopClass.Core.Planning.Search;

/// <summary>
/// Works out every way to get every choice of blanks out of the boards: exactly as long as they are clear, and with bad
/// places as well as a few kept ways allow.
/// </summary>
internal sealed class ExactSearch
{
    /// <summary>The most bad places of a board that is searched to the end.</summary>
    private const int MostBadPlaces = 16;

    /// <summary>The most choices of blanks that are shared out over several boards with bad places.</summary>
    private const int MostShared = 4096;

    /// <summary>How many steps one choice may take out of one of several boards.</summary>
    private const int MostStepsForOne = 4000;
    private readonly Bench bench;
    private readonly Lattice lattice;
    private readonly Steps steps;
    private readonly List<(Stock Stock, BoardTable Table)> clearTables = [];
    private readonly Allotments clear;
    private readonly Allotments real;

    private ExactSearch(Bench bench, Lattice lattice, Steps steps)
    {
        (this.bench, this.lattice, this.steps) = (bench, lattice, steps);
        clear = new(bench, lattice, ClearWays, steps);
        real = new(bench, lattice, s => s.IsClear ? ClearWays(s) : DefectWays(s), steps);
    }

    /// <summary>The search, or null where there are too many choices for it.</summary>
    public static ExactSearch? Over(Bench bench, Steps steps) =>
        Lattice.Over(bench.Demand) is { } lattice ? new(bench, lattice, steps) : null;

    /// <summary>How many choices of blanks there are.</summary>
    public int Choices => lattice.Size;

    /// <summary>The best allotment if none of these boards had a bad place: nothing on the boards as they are beats it.</summary>
    public Allotment? OnClearWood(IReadOnlyList<Stock> chosen) => clear.Best(chosen, lattice.All);

    /// <summary>The best allotment found on the boards as they are.</summary>
    public Allotment? AsTheyAre(IReadOnlyList<Stock> chosen) => real.Best(chosen, lattice.All);

    /// <summary>A layout of everything on one board with bad places that takes no long search, or null.</summary>
    public Draft? Soon(Stock stock) =>
        new SoonLayout(bench, lattice, stock, TableFor(stock), steps).Find() is { } sections
            ? new([new(stock, sections)], new int[bench.Kinds.Count])
            : null;

    /// <summary>The most blanks these boards yield, then the most area.</summary>
    public Allotment? Most(IReadOnlyList<Stock> chosen)
    {
        var all = real.OnSeveral(chosen);
        Allotment? best = null;
        (int Count, Int128 Area) most = default;
        for (var code = 1; code < lattice.Size; code++)
        {
            if (all[code] is not { } allotment)
                continue;
            var yield = YieldOf(code);
            if (yield.CompareTo(most) > 0)
                (best, most) = (allotment, yield);
        }

        return best;
    }

    /// <summary>
    /// What boards cost at the least of which some have bad places, with what is known to be had; null where there is too much
    /// to list.
    /// </summary>
    /// <param name="chosen">The boards, each of them cut.</param>
    /// <param name="have">Cost and length of the best plan known on them.</param>
    /// <param name="limit">How many steps may be taken by its end.</param>
    /// <param name="tryOut">Takes boards laid out and says what is known to be had then.</param>
    public BadBoardAnswer? OnBadBoards(
        IReadOnlyList<Stock> chosen,
        (Cost Cost, long Length)? have,
        int limit,
        Func<IReadOnlyList<DraftBoard>, (Cost Cost, long Length)?> tryOut
    )
    {
        if (chosen.Any(s => s.Bad.Count > MostBadPlaces))
            return null;
        return chosen.Count == 1
            ? OnOne(chosen[0], have, limit, tryOut)
            : OnSeveral(chosen, have, limit, tryOut);
    }

    private BadBoardAnswer? OnOne(
        Stock stock,
        (Cost Cost, long Length)? have,
        int limit,
        Func<IReadOnlyList<DraftBoard>, (Cost Cost, long Length)?> tryOut
    )
    {
        (Cost Cost, long Length)? Untrimmed((Cost Cost, long Length)? known) =>
            known is { } k ? (k.Cost - stock.TrimCost, k.Length) : null;
        var without = Untrimmed(have);
        var taste = new Taste(bench);
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
        int limit,
        Func<IReadOnlyList<DraftBoard>, (Cost Cost, long Length)?> tryOut
    )
    {
        if (lattice.Size > MostShared)
            return null;
        var taste = new Taste(bench);
        SplitBound? all = null;
        foreach (var stock in chosen)
        {
            SplitBound? one =
                stock.IsClear ? new ClearBound(stock, TableFor(stock))
                : BadBoardOf(
                    stock,
                    (_, _, length, cost) =>
                        length <= stock.Usable
                        && (
                            have is not { } h
                            || taste.Compare(cost, stock.Start + length, h.Cost, h.Length) <= 0
                        )
                )
                    is { } board
                    ? new BadBound(
                        board,
                        sections => CostOf(stock, sections),
                        steps,
                        MostStepsForOne
                    )
                : null;
            if (one is null)
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

    /// <summary>What sections come to, the board's trim included.</summary>
    private (Cost Cost, long Length) CostOf(Stock stock, IReadOnlyList<DraftSection> sections)
    {
        int[] left = [.. bench.Demand];
        foreach (var blank in sections.SelectMany(s => s.Blanks))
            left[blank.Kind]--;
        var score = Candidate.Of(bench, new([new(stock, sections)], left)).Score;
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

    private (int Count, Int128 Area) YieldOf(int code)
    {
        var count = 0;
        Int128 area = 0;
        for (var rest = code; rest > 0; count++)
        {
            var kind = lattice.First(rest);
            area += bench.Kinds[kind].Area;
            rest -= lattice.One(kind);
        }

        return (count, area);
    }

    private Func<int, BoardWay?> ClearWays(Stock stock)
    {
        var table = TableFor(stock);
        return code => table.BestOn(stock, code);
    }

    private Func<int, BoardWay?> DefectWays(Stock stock)
    {
        var table = DefectTable.For(bench, lattice, stock, TableFor(stock).Options, steps);
        return code => table.Best(code) is { } way ? new(way.Cost, way.End, way.Sections) : null;
    }

    /// <summary>Boards sawn alike share one table, made for the longest of them.</summary>
    private BoardTable TableFor(Stock stock)
    {
        foreach (var (other, table) in clearTables)
        {
            if (bench.AreSawnAlike(stock, other))
                return table;
        }

        var longest = bench.Stocks.Where(s => bench.AreSawnAlike(s, stock)).Max(s => s.Usable);
        var made = BoardTable.For(bench, lattice, stock, longest, steps);
        clearTables.Add((stock, made));
        return made;
    }
}
