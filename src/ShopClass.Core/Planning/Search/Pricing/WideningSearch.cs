namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// Looks for the best plan among the sections within a distance of the bound, the distance made larger until it is
/// certain that nothing lies beyond.
/// </summary>
internal sealed class WideningSearch(
    Bench bench,
    Packing packing,
    IReadOnlyList<BoardGroup> groups,
    Priced priced,
    Steps steps
)
{
    /// <summary>First distance looked at, as a part of the bound.</summary>
    private const int FirstPart = 60;

    /// <summary>How long a plan is looked for among the sections the prices came from.</summary>
    private const int KnownLooks = 3_000;
    private readonly (Cost Cost, long Length) before = ClearPlan.Before(
        groups.SelectMany(g => g.Stocks)
    );
    private Int128 most;

    /// <summary>The best plan, given what a plan costs that is known, and the sections the prices came from.</summary>
    public ClearAnswer Run((Cost Cost, long LengthUsed) have, IReadOnlyList<Column> known)
    {
        most = Above(priced, have.Cost, have.LengthUsed);
        var slack = priced.SlackOf(bench);
        List<Column> some = [.. known.Select(c => c.At(priced.Prices, packing, []))];
        var best = Cover(some, priced, most, slack, KnownLooks);
        List<Column> single = [.. known.Take(packing.Kinds)];
        var width = Int128.Min(most, Int128.Max(1, priced.Bound / FirstPart));
        while (
            !steps.AreUp
            && SectionLists.Within(packing, groups, priced, width + slack, steps) is { } listed
        )
        {
            var limit = priced.Bound + width + slack;
            var sharper = new SharperPrices(bench, packing, groups, steps);
            var (columns, at) = sharper.Of(priced, single, listed, limit);
            var least = Math.Min(0, columns.Select(c => c.Loss).DefaultIfEmpty(0).Min());
            var spare = -(Int128)least * bench.Demand.Sum();
            best = Cover(columns, at, limit - at.Bound, spare, int.MaxValue) ?? best;
            if (steps.AreUp)
                break;
            if (width >= most)
                return new(true, best);
            width = Int128.Min(most, width * 2);
        }

        return new(false, best);
    }

    /// <summary>The best plan of some sections, with losses from a bound, that is no further from it than the width.</summary>
    private ClearPlan? Cover(List<Column> columns, Priced at, Int128 width, Int128 spare, int looks)
    {
        var cover = new CoverSearch(bench, packing, groups, columns, at.OfRoom(), steps)
        {
            Budget = width + spare,
            BudgetAfter = (cost, length) => Above(at, cost, length) + spare,
            MostLooks = looks,
        };
        var plan = cover.Run();
        if (plan is not null)
            most = Int128.Min(most, Above(priced, plan.Cost, plan.LengthUsed));
        return plan;
    }

    /// <summary>How far a plan's cost, in the numbers of the prices, lies above a bound.</summary>
    private Int128 Above(Priced at, Cost cost, long length) =>
        (
            at.Aim is Aim.Sawing
                ? cost.Effort - before.Cost.Effort
                : (Int128)(length - before.Length) * PriceProgramme.PartsOfTick
        ) - at.Bound;
}
