using ShopClass.Core.Planning.Search.BadPlaces;

namespace ShopClass.Core.Planning.Search;

/// <summary>
/// Works out every way to get every choice of blanks out of the boards: exactly as long as they are clear, and with bad
/// places as well as a few kept ways allow.
/// </summary>
internal sealed class ExactSearch
{
    private readonly Bench bench;
    private readonly Lattice lattice;
    private readonly Steps steps;
    private readonly List<(Stock Stock, BoardTable Table)> clearTables = [];
    private readonly List<(Stock Stock, BoardTable Table)> anyTables = [];
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

    /// <summary>A layout of everything on these boards as they are that takes no long search, or null.</summary>
    public Draft? Soon(IReadOnlyList<Stock> chosen)
    {
        if (chosen.Count > 1 && Choices > SoonShares.MostChoices)
            return null;
        // Only lengths count at first: that is a small part of the work of all costs.
        return Soon(chosen, anyTables, bench.ForAnyPlan()) ?? Soon(chosen, clearTables, bench);
    }

    private Draft? Soon(
        IReadOnlyList<Stock> chosen,
        List<(Stock Stock, BoardTable Table)> tables,
        Bench on
    )
    {
        List<(Stock Stock, BoardTable Table, SoonLayout Layout)> boards =
        [
            .. chosen
                .Select(s => (Stock: s, Table: TableFor(s, tables, on)))
                .Select(b =>
                    (b.Stock, b.Table, new SoonLayout(bench, lattice, b.Stock, b.Table, steps))
                ),
        ];
        var found =
            chosen.Count > 1 ? new SoonShares(lattice, boards, steps).Find()
            : boards[0].Layout.Find(lattice.All, SoonLayout.MostPlaced) is { } sections
                ? [new(chosen[0], sections)]
            : null;
        return found is null ? null : Draft.Of(bench, found);
    }

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
    ) => new BadBoardsSearch(bench, lattice, TableFor, steps, limit).On(chosen, have, tryOut);

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

    private BoardTable TableFor(Stock stock) => TableFor(stock, clearTables, bench);

    /// <summary>Boards sawn alike share one table, made for the longest of them.</summary>
    private BoardTable TableFor(Stock stock, List<(Stock Stock, BoardTable Table)> tables, Bench on)
    {
        foreach (var (other, table) in tables)
        {
            if (bench.AreSawnAlike(stock, other))
                return table;
        }

        var longest = bench.Stocks.Where(s => bench.AreSawnAlike(s, stock)).Max(s => s.Usable);
        var made = BoardTable.For(on, lattice, stock, longest, steps);
        tables.Add((stock, made));
        return made;
    }
}
