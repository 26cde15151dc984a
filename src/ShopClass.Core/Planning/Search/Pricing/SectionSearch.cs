namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// The search by prices. A linear programme over sections bounds every plan from below; all sections that a plan within a
/// small distance of the bound could hold are listed; putting them together either finds the best plan there is or shows
/// that the distance was too small, and then it is made larger.
/// </summary>
internal sealed class SectionSearch
{
    private const int MostStrips = 400_000;
    private const int MostColumns = 60_000;

    /// <summary>First distance looked at, as a part of the bound.</summary>
    private const int FirstPart = 128;

    /// <summary>First part of all the spare room that a plan is looked for in.</summary>
    private const int FirstRoomPart = 256;
    private readonly Bench bench;
    private readonly Packing packing;
    private readonly Steps steps;
    private readonly Aim aim;
    private readonly List<StripPool> known = [];

    private SectionSearch(Bench bench, Packing packing, Taste taste, Steps steps)
    {
        (this.bench, this.packing, this.steps) = (bench, packing, steps);
        aim = taste.Inner[0] is PlanGoal.SawingEffort ? Aim.Sawing : Aim.Length;
    }

    /// <summary>The search, or null where lines count first or the blanks are too many.</summary>
    public static SectionSearch? Over(Bench bench, Steps steps)
    {
        var taste = new Taste(bench);
        return taste.Inner[0] is not PlanGoal.Lines && Packing.For(bench.Demand) is { } packing
            ? new(bench, packing, taste, steps)
            : null;
    }

    /// <summary>
    /// The best plan with each of these boards cut as if clear, given the cost of a plan that is known already; any plan
    /// where costs do not matter.
    /// </summary>
    public ClearAnswer Solve(IReadOnlyList<Stock> chosen, (Cost Cost, long LengthUsed)? have)
    {
        if (Groups(chosen) is not { } groups)
            return new(false, null);
        if (bench.Kinds.Any(k => !groups.Any(g => g.Holds(k))))
            return new(true, null);
        var search = new PriceSearch(bench, packing, groups, steps);
        ClearPlan? any = null;
        if (have is null)
        {
            var answer = FindAny(groups, search);
            if (answer.Plan is null || !bench.CostMatters)
                return answer;
            any = answer.Plan;
            have = (any.Cost, any.LengthUsed);
        }

        if (search.Find(aim) is not { } priced)
            return new(false, any);
        var best = Widen(groups, priced, have.Value);
        return best with { Plan = best.Plan ?? any };
    }

    /// <summary>Any plan at all, or the certainty that there is none.</summary>
    private ClearAnswer FindAny(List<BoardGroup> groups, PriceSearch search)
    {
        if (search.Find(Aim.Room) is not { } room)
            return new(false, null);
        var slack = SlackOf(room.Prices);
        var spare = slack - room.Bound;
        if (spare < 0)
            return new(true, null);
        for (var part = FirstRoomPart; part > 0; part /= 4)
        {
            if (Listed(groups, room.Prices, spare / part + slack) is not { } columns)
                return new(false, null);
            var cover = new CoverSearch(bench, packing, groups, columns, steps)
            {
                Budget = spare / part + slack,
                BudgetAfter = (_, _) => Int128.MaxValue,
                AnyWillDo = true,
            };
            if (cover.Run() is { } plan)
                return new(true, plan);
            if (steps.AreUp)
                return new(false, null);
        }

        return new(true, null);
    }

    /// <summary>The best plan within a distance of the bound, the distance made larger until it is certain.</summary>
    private ClearAnswer Widen(
        List<BoardGroup> groups,
        Priced priced,
        (Cost Cost, long LengthUsed) have
    )
    {
        var (trims, before) = ClearPlan.Before(groups.SelectMany(g => g.Stocks));
        Int128 Distance(Cost cost, long length) =>
            (
                aim is Aim.Sawing
                    ? cost.Effort - trims.Effort
                    : (Int128)(length - before) * PriceProgramme.PartsOfTick
            ) - priced.Bound;
        var most = Distance(have.Cost, have.LengthUsed);
        var slack = SlackOf(priced.Prices);
        var width = Int128.Min(most, Int128.Max(1, priced.Bound / FirstPart));
        ClearPlan? best = null;
        while (Listed(groups, priced.Prices, width + slack) is { } columns)
        {
            var cover = new CoverSearch(bench, packing, groups, columns, steps)
            {
                Budget = width + slack,
                BudgetAfter = (cost, length) => Distance(cost, length) + slack,
            };
            best = cover.Run() ?? best;
            if (best is not null)
                most = Int128.Min(most, Distance(best.Cost, best.LengthUsed));
            if (steps.AreUp)
                break;
            if (width >= most)
                return new(true, best);
            width = best is null ? Int128.Min(most, width * 2) : most;
        }

        return new(false, best);
    }

    /// <summary>What all losses below zero in a plan can make up at most.</summary>
    private Int128 SlackOf(Prices prices) => bench.Demand.Sum() * (Int128)prices.Slack;

    private List<Column>? Listed(List<BoardGroup> groups, Prices prices, Int128 limit)
    {
        var all = new List<Column>();
        foreach (var group in groups)
        {
            var finder = new SectionFinder(packing, group, prices, steps);
            if (
                finder.Within((long)Int128.Min(limit, long.MaxValue / 8), MostColumns)
                is not { } found
            )
                return null;
            all.AddRange(found);
        }

        return all;
    }

    private List<BoardGroup>? Groups(IReadOnlyList<Stock> chosen)
    {
        var groups = new List<BoardGroup>();
        var left = chosen.ToList();
        while (left.Count > 0)
        {
            var first = left[0];
            List<Stock> alike = [first, .. left.Skip(1).Where(s => s.IsLike(first))];
            left.RemoveAll(alike.Contains);
            if (PoolFor(first) is not { } pool)
                return null;
            groups.Add(new(groups.Count, alike, pool));
        }

        return groups;
    }

    private StripPool? PoolFor(Stock stock)
    {
        if (known.Find(p => bench.AreSawnAlike(p.Stock, stock)) is { } alike)
            return alike;
        var longest = bench.Stocks.Where(s => bench.AreSawnAlike(s, stock)).Max(s => s.Usable);
        var pool = StripPool.Of(bench, packing, stock, longest, MostStrips, steps);
        if (pool is not null)
            known.Add(pool);
        return pool;
    }
}
