namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// The search by prices. A linear programme over sections bounds every plan from below; all sections that a plan within a
/// small distance of the bound could hold are listed; putting them together either finds the best plan there is or shows
/// that the distance was too small, and then it is made larger.
/// </summary>
internal sealed class SectionSearch
{
    private const int MostStrips = 1_500_000;

    /// <summary>First part of all the spare room that a plan is looked for in.</summary>
    private const int FirstRoomPart = 256;
    private readonly CoverEffort effort;
    private readonly Bench bench;
    private readonly Packing packing;
    private readonly Steps steps;
    private readonly Aim aim;
    private readonly List<StripPool> known = [];

    private SectionSearch(
        Bench bench,
        Packing packing,
        Taste taste,
        Steps steps,
        CoverEffort effort
    )
    {
        this.effort = effort;
        (this.bench, this.packing, this.steps) = (bench, packing, steps);
        aim = taste.Inner[0] is PlanGoal.SawingEffort ? Aim.Sawing : Aim.Length;
    }

    /// <summary>The search, or null where lines count first or the blanks are too many.</summary>
    /// <param name="bench">What is to be cut from what.</param>
    /// <param name="steps">How long it may take.</param>
    /// <param name="effort">How sections are put together; as usual where it is not said.</param>
    public static SectionSearch? Over(Bench bench, Steps steps, CoverEffort? effort = null)
    {
        var taste = new Taste(bench);
        return taste.Inner[0] is not PlanGoal.Lines && Packing.For(bench.Demand) is { } packing
            ? new(bench, packing, taste, steps, effort ?? CoverEffort.Usual)
            : null;
    }

    /// <summary>
    /// The best plan with each of these boards cut as if clear, given the cost of a plan that is known already; any plan
    /// where costs do not matter. A first plan is told at once where none is known.
    /// </summary>
    public ClearAnswer Solve(
        IReadOnlyList<Stock> chosen,
        (Cost Cost, long LengthUsed)? have,
        Action<ClearPlan>? tell = null
    )
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
            tell?.Invoke(any);
            have = (any.Cost, any.LengthUsed);
        }

        if (search.Find(aim) is not { } priced)
            return new(false, any);
        var widening = new WideningSearch(bench, packing, groups, priced, effort, steps);
        var best = widening.Run(have.Value, search.Known);
        return best with { Plan = best.Plan ?? any };
    }

    /// <summary>Any plan at all, or the certainty that there is none.</summary>
    private ClearAnswer FindAny(List<BoardGroup> groups, PriceSearch search)
    {
        if (search.Find(Aim.Room) is not { } room)
            return new(false, null);
        var slack = room.SlackOf(bench);
        var spare = slack - room.Bound;
        if (spare < 0)
            return new(true, null);
        for (var part = FirstRoomPart; part > 0; part /= 4)
        {
            var width = spare / part + slack;
            if (SectionLists.Within(packing, groups, room, width, steps) is not { } columns)
                return new(false, null);
            // What is left of the boards is what is looked for here: it costs nothing.
            var free = new long[groups.Count];
            var cover = new CoverSearch(
                bench,
                packing,
                groups,
                columns,
                new(columns),
                free,
                Aim.Room,
                steps
            )
            {
                Bound = 0,
                Most = width,
                MostAfter = (_, _) => Int128.MaxValue,
                AnyWillDo = true,
            };
            if (cover.Run() is { } plan)
                return new(true, plan);
            if (steps.AreUp)
                return new(false, null);
        }

        return new(true, null);
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
