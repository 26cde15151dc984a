namespace ShopClass.Core.Planning.Search.BadPlaces;

/// <summary>What a section costs at least on a board with bad places, by where it begins and ends.</summary>
internal sealed class SectionFit
{
    private readonly Stock stock;
    private readonly Taste taste;
    private readonly SectionEnds ends;
    private readonly long leeway;
    private readonly Dictionary<(SectionOption, long), IReadOnlyList<Outcome>> known = new(
        new ByReference<SectionOption, long>()
    );
    private readonly Dictionary<SectionOption, long[]> starts = new(
        ReferenceEqualityComparer.Instance
    );

    public SectionFit(Bench bench, Stock stock, Steps steps)
    {
        this.stock = stock;
        taste = new(bench);
        leeway = bench.Request.Rules.LengthAllowance.Ticks;
        ends = new(bench, stock, steps, (o, cost, end) => CanImprove(o, cost, end));
        Ways = new(stock, stock.RipKerf + bench.Request.Rules.NarrowestOffcut.Ticks, steps);
    }

    /// <summary>Whether a section of that cost that ends there can be of a plan better than the best known.</summary>
    public Func<SectionOption, Cost, long, bool> CanImprove { get; set; } = (_, _, _) => true;

    /// <summary>What a gap before a section costs: one more crosscut right across.</summary>
    public Cost Gap => ends.Gap;

    /// <summary>Where the strips' blanks can lie.</summary>
    public StripLayouts Layouts => ends.Layouts;

    /// <summary>How the strips can lie across.</summary>
    public SectionWays Ways { get; }

    /// <summary>From now on lines are counted of all strips of a section together.</summary>
    public void CountLines()
    {
        ends.CountsLines = true;
        known.Clear();
    }

    /// <summary>What it comes to where it begins just there: for each end the cheapest, as far as it is worth it.</summary>
    public IReadOnlyList<Outcome> At(SectionOption option, long from)
    {
        if (known.TryGetValue((option, from), out var outcomes))
            return outcomes;
        outcomes = WorkOut(option, from);
        known.Add((option, from), outcomes);
        return outcomes;
    }

    /// <summary>How far a section that is no longer than its longest strip may be moved on as it is, for no more.</summary>
    public long Movable(SectionOption option, Outcome at)
    {
        var all = StartsOf(option);
        var next = Array.BinarySearch(all, at.From);
        next = next < 0 ? ~next : next + 1;
        var until = at.From;
        var most = stock.End - option.Length;
        while (until < most)
        {
            var stop = next < all.Length ? Math.Min(all[next], most) : most;
            next++;
            if (stop <= until)
                continue;
            if (!IsGoodAt(option, until + 1, at))
                break;
            if (!IsGoodAt(option, stop, at))
                return stop - 1 - at.From;
            until = stop;
        }

        return until - at.From;
    }

    private bool IsGoodAt(SectionOption option, long from, Outcome like)
    {
        foreach (var at in At(option, from))
        {
            if (
                at.To == from + option.Length
                && at.Rips <= like.Rips
                && taste.Compare(at.Cost, like.Cost) <= 0
            )
                return true;
        }

        return false;
    }

    /// <summary>
    /// Where it may begin if not next to the section before it, sorted: no other place is better. There a bad place stops it from
    /// lying nearer the start, or stops its first blanks from lying farther on.
    /// </summary>
    public long[] StartsOf(SectionOption option)
    {
        if (!starts.TryGetValue(option, out var all))
            starts.Add(option, all = WorkOutStarts(option));
        return all;
    }

    private long[] WorkOutStarts(SectionOption option)
    {
        var some = new SortedSet<long>();
        foreach (var strip in option.Strips.Distinct(ReferenceEqualityComparer.Instance))
        {
            foreach (var end in ((StripOption)strip!).Ends.Append(-stock.CrosscutKerf))
            {
                var next = end + stock.CrosscutKerf;
                foreach (var bad in stock.Bad)
                {
                    some.Add(bad.To - next);
                    some.Add(bad.From - end);
                    some.Add(bad.To + end - option.Length);
                }
            }
        }

        some.RemoveWhere(s => s < stock.Start || s + option.Length > stock.End);
        return [.. some];
    }

    private List<Outcome> WorkOut(SectionOption option, long from)
    {
        var outcomes = new List<Outcome>();
        var to = from + option.Length;
        if (to > stock.End)
            return outcomes;
        var bad = Ways.Between(from, to);
        // Bad places beyond the section's end are left out until it is found to reach them.
        while (true)
        {
            outcomes.Clear();
            foreach (var way in Ways.Kinds(option, bad))
                ends.Judge(option, from, way, outcomes);
            var reach =
                outcomes.Count == 0
                    ? stock.End
                    : outcomes.Max(o => o.To + Math.Min(o.Room, Worth(o)));
            var more = Ways.Between(from, reach);
            if ((more & ~bad) == 0)
                return outcomes;
            bad |= more;
        }
    }

    /// <summary>How much longer a section may grow before a gap after it is cheaper.</summary>
    private long Worth(Outcome at) =>
        at.Rips == 0
            ? 2 * leeway
            : Math.Min(
                2 * leeway,
                Score.CrosscutWeight * stock.Width / (Score.RipWeight * at.Rips)
            );
}
