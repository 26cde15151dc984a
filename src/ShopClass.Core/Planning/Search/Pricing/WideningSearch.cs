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
    CoverEffort effort,
    Steps steps
)
{
    /// <summary>First distance looked at, as a part of the bound.</summary>
    private const int FirstPart = 250;

    /// <summary>Where so few sections are listed, the distance is made larger by more; where they are so many, by less.</summary>
    private const int FewListed = 500;
    private const int ManyListed = 5_000;

    /// <summary>How long a plan is looked for among the sections the prices came from.</summary>
    private const int KnownLooks = 3_000;
    private readonly (Cost Cost, long Length) before = ClearPlan.Before(
        groups.SelectMany(g => g.Stocks)
    );
    private Int128 most;

    /// <summary>The best plan, given what a plan costs that is known, and the sections the prices came from.</summary>
    public ClearAnswer Run((Cost Cost, long LengthUsed) have, IReadOnlyList<Column> known)
    {
        most = Above(have.Cost, have.LengthUsed);
        var slack = priced.SlackOf(bench);
        List<Column> some = [.. known.Select(c => c.At(priced.Prices, packing))];
        var best = Cover(some, most, KnownLooks);
        var width = Int128.Min(most, Int128.Max(1, priced.Bound / FirstPart));
        while (
            !steps.AreUp
            && SectionLists.Within(packing, groups, priced, width + slack, steps) is { } listed
        )
        {
            best = Cover(listed, Int128.Min(most, width + slack), int.MaxValue) ?? best;
            if (steps.AreUp)
                break;
            if (width >= most)
                return new(true, best);
            width = Int128.Min(most, Wider(width, listed.Count));
        }

        return new(false, best);
    }

    /// <summary>The best plan of some sections, with losses from a bound, that is no further from it than the width.</summary>
    private ClearPlan? Cover(List<Column> columns, Int128 width, int looks)
    {
        var (bound, perTick) = (priced.Bound - priced.SlackOf(bench), priced.OfRoom());
        var lines = new ColumnLines(columns);
        var boardByBoard = looks == int.MaxValue && FillSearch.Suits(bench);
        CoverSearch BlankByBlank(int mostSteps) =>
            new(bench, packing, groups, columns, lines, perTick, priced.Aim, steps)
            {
                Bound = (long)bound,
                Most = priced.Bound + Int128.Min(most, width),
                MostAfter = Costing,
                MostLooks = looks,
                MostSteps = mostSteps,
                WorthPricing = looks == int.MaxValue ? effort.WorthPricing : int.MaxValue,
            };

        ClearPlan? plan = null;
        if (!boardByBoard || columns.Count <= effort.MostSections)
        {
            var cover = BlankByBlank(boardByBoard ? effort.MostSteps : int.MaxValue);
            plan = Noted(cover.Run());
            if (!boardByBoard || cover.IsThrough || steps.AreUp)
                return plan;
        }

        var fills = new FillSearch(bench, packing, groups, columns, lines, perTick, steps)
        {
            Budget = Whole(priced.Bound + Int128.Min(most, width) - bound),
            Slack = Whole(priced.SlackOf(bench)),
            BudgetAfter = (cost, length) => Whole(Costing(cost, length) - bound),
        };
        var isThrough = fills.Run();
        plan = Noted(fills.Best) ?? plan;
        return isThrough || steps.AreUp ? plan : Noted(BlankByBlank(int.MaxValue).Run()) ?? plan;
    }

    private ClearPlan? Noted(ClearPlan? plan)
    {
        if (plan is not null)
            most = Int128.Min(most, Above(plan.Cost, plan.LengthUsed));
        return plan;
    }

    private static Int128 Wider(Int128 width, int listed) =>
        listed switch
        {
            < FewListed => width * 4,
            < ManyListed => width * 2,
            _ => width * 8 / 5,
        };

    private static long Whole(Int128 cost) => (long)Int128.Min(cost, long.MaxValue / 4);

    /// <summary>How far a plan's cost, in the numbers of the prices, lies above a bound.</summary>
    private Int128 Above(Cost cost, long length) => Costing(cost, length) - priced.Bound;

    private Int128 Costing(Cost cost, long length) =>
        priced.Aim is Aim.Sawing
            ? cost.Effort - before.Cost.Effort
            : (Int128)(length - before.Length) * PriceProgramme.PartsOfTick;
}
