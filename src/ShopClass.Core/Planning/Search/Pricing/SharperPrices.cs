namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// Makes the bound of listed sections better: rules that every plan keeps but the mixture breaks are added to the linear
/// programme, and what loses too much at the new prices is struck off the list, again and again.
/// </summary>
internal sealed class SharperPrices(
    Bench bench,
    Packing packing,
    IReadOnlyList<BoardGroup> groups,
    Steps steps
)
{
    private const int MostRounds = 10;
    private const int MostRules = 60;
    private const int RulesAtOnce = 12;
    private const int MostAtOnce = 60;
    private const int FirstKnown = 200;
    private const int FewSections = 150;
    private const int LooksCounted = 32;

    /// <summary>
    /// The sections that a plan may hold which costs no more than so much, with their losses, and the bound these are
    /// counted from.
    /// </summary>
    public (List<Column> Columns, Priced Priced) Of(
        Priced priced,
        IReadOnlyList<Column> single,
        List<Column> listed,
        Int128 most
    )
    {
        var columns = listed;
        var rules = new List<PairRule>();
        var known = single.Concat(listed.OrderBy(c => c.Loss).Take(FirstKnown)).ToList();
        for (var round = 0; round < MostRounds && columns.Count > FewSections; round++)
        {
            var programme = new PriceProgramme(priced.Aim, bench, packing, groups, known, rules);
            if (Settle(programme, columns, rules) is not { } prices)
                break;
            var (kept, newBound) = Struck(programme, prices, columns, rules, most);
            if (newBound >= priced.Bound)
                (columns, priced) = (kept, priced with { Prices = prices, Bound = newBound });
            var mixture = programme.Mixture();
            var more = PairRule.Broken(bench.Demand, packing, mixture, RulesAtOnce).ToList();
            if (more.Count == 0 || rules.Count + more.Count > MostRules)
                break;
            known =
            [
                .. single,
                .. mixture.Select(m => m.Column).Except(single),
                .. columns.OrderBy(c => c.Loss).Take(FirstKnown),
            ];
            rules = [.. rules.Where((_, i) => prices.PerPair[i] > 0), .. more];
        }

        return (columns, priced);
    }

    private Prices? Settle(PriceProgramme programme, List<Column> columns, List<PairRule> rules)
    {
        while (steps.Take(1 + columns.Count / LooksCounted))
        {
            var prices = programme.Solve();
            var gains = columns
                .Select(c => (Column: c, Loss: c.LossAt(prices, packing, rules)))
                .Where(c => c.Loss < -prices.Slack)
                .OrderBy(c => c.Loss)
                .Take(MostAtOnce)
                .Select(c => c.Column)
                .ToList();
            if (gains.Count == 0)
                return prices;
            gains.ForEach(programme.Add);
        }

        return null;
    }

    private (List<Column> Columns, Int128 Bound) Struck(
        PriceProgramme programme,
        Prices prices,
        List<Column> columns,
        List<PairRule> rules,
        Int128 most
    )
    {
        var bound = programme.BoundAt(prices);
        var all = columns.ConvertAll(c => c.At(prices, packing, rules));
        var least = Math.Min(0, all.Min(c => c.Loss));
        var budget = most - bound - (Int128)least * (bench.Demand.Sum() - 1);
        return (all.FindAll(c => c.Loss <= budget), bound);
    }
}
