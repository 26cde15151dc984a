namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// Finds prices by column generation: the linear programme over the sections known so far gives prices, the sections
/// that gain at those prices are added to it, until none gains. At first only a sample of the strips is looked at, and
/// only great gains are looked for; then for every strip the section led by it that gains most is kept at hand, and the
/// programme is settled over these before all are looked for anew.
/// </summary>
internal sealed class PriceSearch
{
    private const int MostRounds = 400;
    private const int MostAtOnce = 40;
    private const int Sample = 1_500;
    private const int EnoughOfSample = 60;
    private const int EnoughAtHand = 150;
    private const int LooksCounted = 32;

    /// <summary>Counting the worth of so many strips takes as long as going on to one more gain.</summary>
    private const int StripsForOne = 1_500;

    /// <summary>At first only sections are looked for that gain this part of all costs.</summary>
    private const double GreatGain = 1.0 / 32;
    private readonly Bench bench;
    private readonly Packing packing;
    private readonly IReadOnlyList<BoardGroup> groups;
    private readonly Steps steps;
    private readonly List<Column> known;
    private readonly int[] places;

    public PriceSearch(Bench bench, Packing packing, IReadOnlyList<BoardGroup> groups, Steps steps)
    {
        (this.bench, this.packing, this.groups, this.steps) = (bench, packing, groups, steps);
        places = new int[groups.Count];
        known = [.. bench.Kinds.Select(Single)];
    }

    /// <summary>The sections looked at so far; first each blank in one of its own.</summary>
    public IReadOnlyList<Column> Known => known;

    /// <summary>Prices for an aim; null where the steps are up before they settle.</summary>
    public Priced? Find(Aim aim)
    {
        var programme = new PriceProgramme(aim, bench, packing, groups, known);
        var enough = Math.Max(EnoughAtHand, groups.Sum(g => g.Pool.Strips.Length) / StripsForOne);
        BySample(programme);
        for (var round = 0; round < MostRounds && !steps.AreUp; round++)
        {
            var prices = programme.Solve();
            var atHand = Gaining(prices, 0, enough);
            if (steps.AreUp)
                break;
            if (atHand.Count == 0)
                return new(aim, prices, programme.BoundAt(prices));
            Settle(programme, atHand);
        }

        return null;
    }

    private void BySample(PriceProgramme programme)
    {
        var gain = (long)(programme.Scale * GreatGain);
        for (var round = 0; round < MostRounds && !steps.AreUp; round++)
        {
            var prices = programme.Solve();
            var atHand = Gaining(prices, gain, EnoughOfSample, Sample);
            if (atHand.Count == 0)
                return;
            Settle(programme, atHand);
        }
    }

    /// <summary>
    /// For each strip of about so many, from where the last search ended, the section led by it that gains most, until there
    /// are enough.
    /// </summary>
    private List<Column> Gaining(Prices prices, long gain, int enough, int strips = int.MaxValue)
    {
        var all = new List<Column>();
        foreach (var group in groups)
        {
            var finder = new SectionFinder(packing, group, prices, steps);
            var every = 1 + group.Pool.Strips.Length / strips;
            var limit = -Math.Max(gain, prices.Slack + 1);
            var (found, next) = finder.Best(limit, enough, places[group.Index], every);
            places[group.Index] = next;
            all.AddRange(found);
        }

        return all;
    }

    /// <summary>Goes on with the sections at hand until none of them gains.</summary>
    private void Settle(PriceProgramme programme, List<Column> atHand)
    {
        Add(programme, Best(atHand.Select(c => (c, c.Loss))));
        while (steps.Take(1 + atHand.Count / LooksCounted))
        {
            var prices = programme.Solve();
            var gains = Best(
                atHand
                    .Select(c => (Column: c, Loss: c.LossAt(prices, packing)))
                    .Where(c => c.Loss < -prices.Slack)
            );
            if (gains.Count == 0)
                return;
            Add(programme, gains);
        }
    }

    private static List<Column> Best(IEnumerable<(Column Column, long Loss)> gains) =>
        [.. gains.OrderBy(c => c.Loss).Take(MostAtOnce).Select(c => c.Column)];

    private void Add(PriceProgramme programme, List<Column> gains)
    {
        known.AddRange(gains);
        gains.ForEach(programme.Add);
    }

    /// <summary>One blank in a section of its own, on the first boards it fits.</summary>
    private Column Single(Kind kind)
    {
        var group = groups.First(g => g.Holds(kind));
        return Column.Of(group, [group.Single(kind)], 0);
    }
}
