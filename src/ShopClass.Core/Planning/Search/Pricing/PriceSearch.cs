namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>Prices and what they prove: the cost of every plan is at least the bound and the losses of its sections.</summary>
internal sealed record Priced(Aim Aim, Prices Prices, Int128 Bound);

/// <summary>
/// Finds prices by column generation: the linear programme over the sections known so far gives prices, the sections
/// that gain at those prices are added to it, until none gains. At first only a sample of the strips is looked at, and
/// only great gains are looked for.
/// </summary>
internal sealed class PriceSearch
{
    private const int MostRounds = 400;
    private const int MostAtOnce = 40;
    private const int EnoughAtOnce = 60;
    private const int Sample = 1_500;
    private const double FirstGain = 1.0 / 32;
    private const double LastSampledGain = 1.0 / 1024;
    private const int NextGain = 8;
    private readonly Bench bench;
    private readonly Packing packing;
    private readonly IReadOnlyList<BoardGroup> groups;
    private readonly Steps steps;
    private readonly List<Column> known;
    private readonly int[] places;
    private List<SectionFinder> finders = [];
    private bool isSampled;
    private double gain;

    public PriceSearch(Bench bench, Packing packing, IReadOnlyList<BoardGroup> groups, Steps steps)
    {
        (this.bench, this.packing, this.groups, this.steps) = (bench, packing, groups, steps);
        places = new int[groups.Count];
        known = [.. bench.Kinds.Select(Single)];
    }

    /// <summary>Prices for an aim; null where the steps are up before they settle.</summary>
    public Priced? Find(Aim aim)
    {
        (gain, isSampled) = (FirstGain, true);
        var programme = new PriceProgramme(aim, bench, packing, groups, known);
        for (var round = 0; round < MostRounds && !steps.AreUp; round++)
        {
            var prices = programme.Solve();
            var gains = Gains(prices, programme.Scale);
            if (steps.AreUp)
                break;
            if (gains.Count == 0)
                return new(aim, prices, programme.BoundAt(prices));
            known.AddRange(gains);
            gains.ForEach(programme.Add);
        }

        return null;
    }

    /// <summary>
    /// Some sections that gain at these prices, looked for from where the last search ended. A smaller gain is asked for
    /// when none is left; none at all only where every section was looked at.
    /// </summary>
    private List<Column> Gains(Prices prices, double scale)
    {
        Ready(prices);
        while (true)
        {
            var limit = Math.Min(-prices.Slack - 1, -(long)(scale * gain));
            var gains = groups.SelectMany(g => Some(g, limit)).ToList();
            if (gains.Count > 0 || steps.AreUp || (!isSampled && limit == -prices.Slack - 1))
                return gains;
            if (isSampled && gain < LastSampledGain)
            {
                isSampled = false;
                Ready(prices);
            }
            else
            {
                gain /= NextGain;
            }
        }
    }

    private IEnumerable<Column> Some(BoardGroup group, long limit)
    {
        var (found, next) = finders[group.Index].Some(limit, EnoughAtOnce, places[group.Index]);
        places[group.Index] = next;
        return found.OrderBy(c => c.Loss).Take(MostAtOnce);
    }

    private void Ready(Prices prices) =>
        finders = [
            .. groups.Select(g => new SectionFinder(
                packing,
                g,
                prices,
                steps,
                isSampled ? 1 + g.Pool.Strips.Count / Sample : 1
            )),
        ];

    /// <summary>One blank in a section of its own, on the first boards it fits.</summary>
    private Column Single(Kind kind)
    {
        var group = groups.First(g => g.Holds(kind));
        return Column.Of(group, [group.Single(kind)], 0);
    }
}
