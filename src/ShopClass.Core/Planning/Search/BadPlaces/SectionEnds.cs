namespace ShopClass.Core.Planning.Search.BadPlaces;

/// <summary>
/// What a section costs at least by where it ends, once it is said where it begins and which bad places each strip meets. It is worked
/// out at all places where something changes; from one of them to the next only the rips grow.
/// </summary>
internal sealed class SectionEnds
{
    private readonly Stock stock;
    private readonly Steps steps;
    private readonly Taste taste;
    private readonly StripRuns runs;
    private readonly long leeway;
    private readonly List<long> places = [];
    private readonly List<Cost> costs = [];
    private readonly Func<SectionOption, Cost, long, bool> canImprove;

    /// <param name="bench">What is asked.</param>
    /// <param name="stock">The board.</param>
    /// <param name="steps">Counts the looks.</param>
    /// <param name="canImprove">Whether a section of that cost that ends there can be of a plan better than the best known.</param>
    public SectionEnds(
        Bench bench,
        Stock stock,
        Steps steps,
        Func<SectionOption, Cost, long, bool> canImprove
    )
    {
        (this.stock, this.steps, this.canImprove) = (stock, steps, canImprove);
        taste = new(bench);
        leeway = bench.Request.Rules.LengthAllowance.Ticks;
        runs = new(bench, stock, leeway, steps);
        Layouts = new(stock, runs, leeway);
        Gap = new((Int128)Score.CrosscutWeight * stock.Width * stock.Board.Thickness.Ticks, 1);
    }

    /// <summary>
    /// Whether lines inside a section are counted of all its strips together, which takes long, and not those of the strip with
    /// the most cuts alone. Where lines come first, never.
    /// </summary>
    public bool CountsLines { get; set; }

    /// <summary>What a gap before a section costs: one more crosscut right across.</summary>
    public Cost Gap { get; }

    /// <summary>Where the strips' blanks can lie.</summary>
    public StripLayouts Layouts { get; }

    /// <summary>Adds what is not beaten by what is there already.</summary>
    public void Judge(SectionOption option, long from, (int, int[]) way, List<Outcome> outcomes)
    {
        var (rips, meets) = way;
        var soonest = from;
        var reaches = new StripReach[meets.Length];
        for (var i = 0; i < meets.Length; i++)
        {
            reaches[i] = runs.Reach(option.Strips[i], from, meets[i]);
            soonest = Math.Max(soonest, reaches[i].Soonest);
        }

        if (soonest > stock.End)
            return;
        var gapped = Gapped(reaches);
        var last = LastWorth(option, from, soonest, rips, reaches);
        FindPlaces(option, from, soonest, last, meets);
        costs.Clear();
        Cost? best = null;
        foreach (var outcome in outcomes)
            best = best is { } b && taste.Compare(b, outcome.Cost) <= 0 ? b : outcome.Cost;
        for (var i = 0; i < places.Count; i++)
        {
            // From here on a gap after what ends sooner is no dearer.
            if (
                best is { } b
                && taste.Compare(b + Gap, LeastCost(option, rips, places[i] - from, gapped)) <= 0
            )
                break;
            var cost = CostOf(option, places[i] - from, places[i], rips, reaches);
            costs.Add(cost);
            if (best is not { } known || taste.Compare(cost, known) < 0)
                best = cost;
        }

        Note(option, meets, new(from, rips, last), outcomes);
    }

    /// <summary>Where a section begins, its rips, and the last place it is worth ending at.</summary>
    private readonly record struct Extent(long From, int Rips, long Last);

    private void Note(SectionOption option, int[] meets, Extent at, List<Outcome> outcomes)
    {
        var (from, rips, last) = at;
        // The last place before the one with this number.
        long Before(int place) => place < places.Count ? places[place] - 1 : last;
        // As far as a place's cost holds, found from the last place back.
        bool HoldsAt(int place, int later) =>
            taste.Compare(
                costs[later],
                costs[place] + new Cost(Slope(rips) * (places[later] - places[place]), 0)
            ) <= 0;
        var holds = costs.Count <= 64 ? stackalloc int[costs.Count] : new int[costs.Count];
        for (var i = costs.Count - 1; i >= 0; i--)
        {
            var until = i;
            while (until + 1 < costs.Count && HoldsAt(i, until + 1))
                until = holds[until + 1];
            holds[i] = until;
        }

        var isKnown = false;
        for (var i = 0; i < costs.Count; i++)
        {
            // The place before says all there is to say of this one.
            if (isKnown && HoldsAt(i, i - 1) && HoldsAt(i - 1, i))
                continue;
            isKnown = false;
            var outcome = new Outcome(
                from,
                places[i],
                Before(holds[i] + 1) - places[i],
                costs[i],
                rips
            );
            // Lines take long to count: only where it may come to them.
            if (
                !canImprove(option, outcome.Cost, outcome.To)
                || outcomes.Exists(o => Beats(o, outcome))
            )
                continue;
            var reach = Before(i + 1) - places[i];
            var (here, later) = Lines(option, meets, outcome, reach);
            Add(outcomes, outcome with { Cost = costs[i] with { Lines = here } });
            if (later < here)
                Add(outcomes, Later(outcome, later));
            isKnown = later == costs[i].Lines;
        }
    }

    /// <summary>
    /// Where a section that begins here may end, from the soonest on, so that between two of these nothing changes: where a bad
    /// place comes out of the way of a strip's last blanks or into it, and where last blanks have to be cut to length.
    /// </summary>
    private void FindPlaces(SectionOption option, long from, long soonest, long last, int[] meets)
    {
        places.Clear();
        places.Add(soonest);
        void Add(long place)
        {
            if (place > soonest && place <= last)
                places.Add(place);
        }

        for (var s = 0; s < meets.Length; s++)
        {
            var strip = option.Strips[s];
            Add(from + strip.Length);
            Add(from + strip.Length + leeway + 1);
            for (var i = 0; meets[s] >> i != 0; i++)
            {
                var place = stock.Bad[i];
                if ((meets[s] >> i & 1) == 0 || place.To <= from)
                    continue;
                foreach (var end in strip.Ends)
                {
                    Add(place.To + end);
                    Add(place.To + end + leeway + 1);
                    Add(place.From + end + strip.Kerf + 1);
                    Add(place.From + end + strip.Kerf + leeway + 1);
                }

                Add(place.From + 1);
                Add(place.From + leeway + 1);
            }
        }

        places.Sort();
        var kept = 0;
        for (var i = 0; i < places.Count; i++)
        {
            if (i == 0 || places[i] != places[i - 1])
                places[kept++] = places[i];
        }

        places.RemoveRange(kept, places.Count - kept);
        steps.Take(1 + kept / 8);
    }

    /// <summary>Where a section that grows on comes to cost as much as one that ends at the soonest and a gap after it.</summary>
    private long LastWorth(
        SectionOption option,
        long from,
        long soonest,
        int rips,
        StripReach[] reaches
    )
    {
        if (rips == 0 || taste.LinesFirst)
            return stock.End;
        var cost = CostOf(option, soonest - from, soonest, rips, reaches);
        var least = LeastCost(option, rips, soonest - from, Gapped(reaches));
        var spare = cost.Effort + Gap.Effort - least.Effort;
        return (long)Int128.Min(stock.End, soonest + spare / Slope(rips) + 1);
    }

    /// <summary>Which strips cannot do without a gap or a cut at the end, as bits.</summary>
    private static int Gapped(StripReach[] reaches)
    {
        var bits = 0;
        for (var i = 0; i < reaches.Length; i++)
            bits |= reaches[i].IsStraight ? 0 : 1 << i;
        return bits;
    }

    private Cost LeastCost(SectionOption option, int rips, long length, int gapped)
    {
        Int128 crosscut = stock.Width;
        for (var i = 0; i < option.Strips.Count; i++)
        {
            var strip = option.Strips[i];
            var isCut = (gapped >> i & 1) == 1 || length - strip.Length > leeway;
            crosscut += (Int128)(strip.Blanks.Count - (isCut ? 0 : 1)) * strip.NeededWidth;
        }

        return CostOf(rips, length, crosscut, 0);
    }

    private Cost CostOf(SectionOption option, long length, long to, int rips, StripReach[] reaches)
    {
        Int128 crosscut = stock.Width;
        var most = 0;
        for (var i = 0; i < reaches.Length; i++)
        {
            var strip = option.Strips[i];
            var cuts = reaches[i].Cuts(to);
            crosscut += (Int128)cuts * strip.NeededWidth;
            most = Math.Max(most, cuts);
        }

        return CostOf(rips, length, crosscut, most);
    }

    /// <summary>The section that ends at least a tick later, with so many lines.</summary>
    private Outcome Later(Outcome outcome, long lines) =>
        outcome with
        {
            To = outcome.To + 1,
            Room = outcome.Room - 1,
            Cost = new(outcome.Cost.Effort + Slope(outcome.Rips), lines),
        };

    /// <summary>
    /// The fewest lines where the section ends there, and where it ends so much later at most. Where lines come first, or there
    /// are too many ways, inside the section only those of the strip with the most cuts.
    /// </summary>
    private (long Here, long Later) Lines(
        SectionOption option,
        int[] meets,
        Outcome outcome,
        long reach
    )
    {
        var simple = (outcome.Cost.Lines, outcome.Cost.Lines);
        if (meets.Length == 1 || !CountsLines || taste.LinesFirst)
            return simple;
        var choices = new StripLayout[meets.Length][];
        for (var i = 0; i < meets.Length; i++)
        {
            var all = Layouts.All(option.Strips[i], outcome.From, outcome.To, meets[i]);
            if (all is null)
                return simple;
            choices[i] = all;
        }

        var before = 1 + outcome.Rips;
        var here = before + LeastLines.Of(choices, 0, steps);
        return reach == 0 || here == outcome.Cost.Lines
            ? (here, here)
            : (here, before + LeastLines.Of(choices, reach, steps));
    }

    private Cost CostOf(int rips, long length, Int128 crosscut, int inside)
    {
        var sawn = Score.RipWeight * ((Int128)rips * length) + Score.CrosscutWeight * crosscut;
        return new(sawn * stock.Board.Thickness.Ticks, 1 + rips + inside);
    }

    private Int128 Slope(int rips) => (Int128)Score.RipWeight * rips * stock.Board.Thickness.Ticks;

    private void Add(List<Outcome> outcomes, Outcome outcome)
    {
        if (outcomes.Exists(o => Beats(o, outcome)))
            return;
        outcomes.RemoveAll(o => Beats(outcome, o));
        outcomes.Add(outcome);
    }

    private bool Beats(Outcome a, Outcome b)
    {
        if (a.To > b.To)
            return false;
        var moved = a.Cost + new Cost(Slope(a.Rips) * (b.To - a.To), 0);
        return (
                a.To + a.Room >= b.To + b.Room
                && a.Rips <= b.Rips
                && taste.Compare(moved, b.Cost) <= 0
            )
            || taste.Compare(a.Cost + Gap, b.Cost) <= 0;
    }
}
