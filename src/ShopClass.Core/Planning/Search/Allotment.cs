namespace ShopClass.Core.Planning.Search;

/// <summary>A way to get a choice of blanks out of one board: its cost, the length it uses up, and its sections when asked for.</summary>
internal sealed record BoardWay(
    Cost Cost,
    long Length,
    Func<IReadOnlyList<DraftSection>> Sections,
    Func<IReadOnlyList<SectionOption>>? Options = null
);

/// <summary>Which blanks come from which board: one board's way after another.</summary>
internal sealed record Allotment(
    Cost Cost,
    long Length,
    Stock Stock,
    BoardWay Way,
    Allotment? Before
)
{
    /// <summary>The allotment as sections, where its ways know them.</summary>
    public ClearPlan ToClearPlan()
    {
        var boards = new List<(Stock, IReadOnlyList<SectionOption>)>();
        for (var part = this; part is not null; part = part.Before)
            boards.Add((part.Stock, part.Way.Options!()));
        return new(Cost, Length, boards);
    }

    /// <summary>The allotment as a draft.</summary>
    public Draft ToDraft(Bench bench)
    {
        var boards = new List<DraftBoard>();
        for (var part = this; part is not null; part = part.Before)
            boards.Add(new(part.Stock, part.Way.Sections()));
        return Draft.Of(bench, boards);
    }
}

/// <summary>Shares the blanks out over chosen boards at the least cost.</summary>
internal sealed class Allotments
{
    private readonly Lattice lattice;
    private readonly Taste taste;
    private readonly Steps steps;
    private readonly Dictionary<int, Allotment?[]> onOne = [];
    private readonly Dictionary<int, Allotment?[]> onSeveral = [];
    private readonly Func<Stock, Func<int, BoardWay?>> waysOf;
    private int[]? parts;

    public Allotments(
        Bench bench,
        Lattice lattice,
        Func<Stock, Func<int, BoardWay?>> waysOf,
        Steps steps
    )
    {
        (this.lattice, this.waysOf, this.steps) = (lattice, waysOf, steps);
        taste = new(bench);
    }

    /// <summary>The cheapest way to get a choice of blanks out of these boards, each of them cut; null when there is none.</summary>
    public Allotment? Best(IReadOnlyList<Stock> chosen, int code)
    {
        var last = OnOne(chosen[^1]);
        if (chosen.Count == 1)
            return last[code];
        var before = OnSeveral([.. chosen.SkipLast(1)]);
        return BestSplit(before, last, code);
    }

    /// <summary>The same for every choice.</summary>
    public Allotment?[] OnSeveral(IReadOnlyList<Stock> chosen)
    {
        if (chosen.Count == 1)
            return OnOne(chosen[0]);
        var mask = chosen.Aggregate(0, (bits, s) => bits | (1 << s.Index));
        if (onSeveral.TryGetValue(mask, out var known))
            return known;
        var before = OnSeveral([.. chosen.SkipLast(1)]);
        var last = OnOne(chosen[^1]);
        var all = new Allotment?[lattice.Size];
        for (var code = 1; code < lattice.Size && !steps.AreUp; code++)
            all[code] = BestSplit(before, last, code);
        onSeveral.Add(mask, all);
        return all;
    }

    private Allotment? BestSplit(Allotment?[] before, Allotment?[] last, int code)
    {
        Allotment? best = null;
        if (!steps.Take(1 + code / 16))
            return null;
        parts ??= new int[lattice.Size];
        var count = lattice.Parts(code, parts);
        for (var i = 1; i < count - 1; i++)
        {
            if (last[parts[i]] is not { } here || before[code - parts[i]] is not { } there)
                continue;
            var cost = here.Cost + there.Cost;
            var length = here.Length + there.Length;
            if (best is null || taste.Compare(cost, length, best.Cost, best.Length) < 0)
                best = new(cost, length, here.Stock, here.Way, there);
        }

        return best;
    }

    private Allotment?[] OnOne(Stock stock)
    {
        if (onOne.TryGetValue(stock.Index, out var known))
            return known;
        var ways = waysOf(stock);
        var all = new Allotment?[lattice.Size];
        for (var code = 1; code < lattice.Size; code++)
        {
            if (ways(code) is { } way)
                all[code] = new(way.Cost + stock.TrimCost, way.Length, stock, way, null);
        }

        steps.Take(lattice.Size / 8);
        onOne.Add(stock.Index, all);
        return all;
    }
}
