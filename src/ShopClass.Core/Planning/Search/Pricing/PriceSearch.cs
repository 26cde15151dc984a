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
    private const int EnoughAtOnce = 60;
    private const int MostAtHand = 4_000;
    private const int Sample = 1_500;
    private const int LooksCounted = 32;

    private const double FirstGain = 1.0 / 32;
    private const double LastSampledGain = 1.0 / 32;
    private const int NextGain = 8;
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
        BySample(programme);
        for (var round = 0; round < MostRounds && !steps.AreUp; round++)
        {
            var prices = programme.Solve();
            var atHand = AtHand(prices);
            if (steps.AreUp)
                break;
            if (atHand.Count == 0)
                return new(aim, prices, programme.BoundAt(prices));
            Settle(programme, atHand);
        }

        return null;
    }

    /// <summary>For each strip the section led by it that gains most.</summary>
    private List<Column> AtHand(Prices prices)
    {
        var all = new List<Column>();
        foreach (var group in groups)
        {
            var finder = new SectionFinder(packing, group, prices, steps);
            all.AddRange(finder.Best(-prices.Slack - 1, MostAtHand));
        }

        return all;
    }

    private void BySample(PriceProgramme programme)
    {
        var gain = FirstGain;
        for (var round = 0; round < MostRounds && !steps.AreUp && gain >= LastSampledGain; )
        {
            var prices = programme.Solve();
            var limit = Math.Min(-prices.Slack - 1, -(long)(programme.Scale * gain));
            var gains = new List<Column>();
            foreach (var group in groups)
                gains.AddRange(Sampled(group, prices, limit));

            if (gains.Count == 0)
                gain /= NextGain;
            else
                round++;
            Add(programme, gains);
        }
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

    /// <summary>Sections that gain at these prices, led by a sample of strips from where the last search ended.</summary>
    private IEnumerable<Column> Sampled(BoardGroup group, Prices prices, long limit)
    {
        var every = 1 + group.Pool.Strips.Length / Sample;
        var finder = new SectionFinder(packing, group, prices, steps, every);
        var (found, next) = finder.Some(limit, EnoughAtOnce, places[group.Index]);
        places[group.Index] = next;
        return found.OrderBy(c => c.Loss).Take(MostAtOnce);
    }

    /// <summary>One blank in a section of its own, on the first boards it fits.</summary>
    private Column Single(Kind kind)
    {
        var group = groups.First(g => g.Holds(kind));
        return Column.Of(group, [group.Single(kind)], 0);
    }
}
