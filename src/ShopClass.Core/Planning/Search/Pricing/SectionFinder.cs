using System.Runtime.InteropServices;

namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// Finds the sections of a group of boards that lose no more than a limit at given prices. A section is as long as its
/// longest strip, which leads it; the others are looked for beside it among the strips that hold only blanks still left,
/// as long as the best that could still lie beside them leaves hope.
/// </summary>
internal sealed class SectionFinder
{
    private const int LooksCounted = 320;
    private readonly BoardGroup group;
    private readonly Packing packing;
    private readonly Steps steps;
    private readonly WidthSums sums;
    private readonly Stock stock;
    private readonly Prices prices;
    private readonly long rip;
    private readonly long cross;
    private readonly StripPool pool;
    private readonly StripPrices worth;
    private readonly NearStrips near;
    private readonly int every;
    private readonly List<int> chosen = [];
    private readonly List<Column> found = [];
    private readonly List<Level> levels = [];
    private bool bestOnly;
    private long limit;
    private int most;
    private long length;
    private long looks;
    private long counted;

    public SectionFinder(
        Packing packing,
        BoardGroup group,
        Prices prices,
        Steps steps,
        int every = 1
    )
    {
        this.every = every;
        (this.group, this.packing, this.prices, this.steps) = (group, packing, prices, steps);
        stock = group.First;
        (rip, cross) = (prices.Rip(stock), prices.Cross(stock));
        pool = group.Pool;
        sums = pool.Sums;
        worth = pool.Prices;
        worth.Count(prices.Worth, cross);
        near = new(pool, stock, rip, cross);
        steps.Take(pool.Strips.Length / 64);
    }

    /// <summary>All sections that lose no more than the limit, or null where there are too many.</summary>
    public IReadOnlyList<Column>? Within(long limit, int most)
    {
        (this.most, bestOnly) = (most, false);
        LeadAll(limit, most + 1);
        return found.Count > most || steps.AreUp ? null : found;
    }

    /// <summary>
    /// For each strip the section led by it that loses least, where it loses no more than the limit, until there are so
    /// many.
    /// </summary>
    public IReadOnlyList<Column> Best(long limit, int most)
    {
        (this.most, bestOnly) = (int.MaxValue, true);
        LeadAll(limit, most);
        return found;
    }

    /// <summary>
    /// For about so many strips, from one on and round, the section led by it that loses least, where it loses no more than
    /// the limit; then the strip to go on from.
    /// </summary>
    public (IReadOnlyList<Column> Found, int Next) Some(long limit, int most, int from)
    {
        (this.most, bestOnly) = (int.MaxValue, true);
        found.Clear();
        Array.Fill(near.Leads, NearStrips.None);
        var at = from;
        for (var n = 0; n < pool.Strips.Length && found.Count < most && !steps.AreUp; n += every)
        {
            at = at + every >= pool.Strips.Length ? 0 : at + every;
            var (rank, breadth) = (pool.Shelf.RankOf(at), pool.Strips[at].Breadth);
            length = pool.Shelf.LengthOf(rank);
            if (length > stock.Usable)
                continue;
            near.Leads[breadth] = worth.Values[at];
            near.Gather(rank, length, Empty() - limit);
            near.Leads[breadth] = NearStrips.None;
            if (worth.Values[at] >= near.LeastLead[breadth])
                Lead(at, limit);
            CountLooks();
        }

        return (found, at);
    }

    /// <summary>
    /// Finds sections led by each strip, the shortest first, until there are so many. Of each length and breadth only strips
    /// worth enough are looked at.
    /// </summary>
    private void LeadAll(long limit, int enough)
    {
        found.Clear();
        var shelf = pool.Shelf;
        var froms = shelf.First.ToArray();
        for (var rank = 0; rank < shelf.Ranks && shelf.LengthOf(rank) <= stock.Usable; rank++)
        {
            var ends = shelf.EndsOf(rank);
            length = shelf.LengthOf(rank);
            for (var b = 0; b < ends.Length; b++)
                near.Leads[b] = Greatest(froms[b], ends[b]);
            near.Gather(rank, length, Empty() - limit);
            for (var b = 0; b < ends.Length; b++)
            {
                var least = near.LeastLead[b];
                for (var p = froms[b]; p < ends[b] && least < long.MaxValue; p++)
                {
                    if (worth.OnShelf[p] >= least)
                        Lead(shelf.Strips[p], limit);
                }

                froms[b] = ends[b];
            }

            CountLooks();
            if (found.Count >= enough || steps.AreUp)
                break;
        }
    }

    private long Greatest(int from, int end)
    {
        looks += end - from;
        var greatest = NearStrips.None;
        for (var p = from; p < end; p++)
            greatest = Math.Max(greatest, worth.OnShelf[p]);
        return greatest;
    }

    /// <summary>What a section so long loses while nothing is in it.</summary>
    private long Empty() =>
        cross * stock.Width + prices.PerTick[group.Index] * (length + stock.CrosscutKerf);

    /// <summary>Finds sections led by a strip.</summary>
    private void Lead(int index, long limit)
    {
        this.limit = limit;
        ref readonly var strip = ref pool.Strips[index];
        var loss = Empty() - worth.Values[index];
        var taken = sums.Next(0, strip.Breadth);
        var beside = stock.Width - pool.Breadths[strip.Breadth].Width;
        var left = packing.All - strip.Packed;
        chosen.Add(index);
        var before = found.Count;
        Add(loss, beside);
        if (taken <= sums.LastWithRoom)
        {
            Take(index, left, taken, loss);
            if (LevelAt(0).Strips.Count > 0)
                Beside(0, left, taken, beside, loss);
        }

        chosen.Clear();
        if (bestOnly && found.Count > before + 1)
            found.RemoveRange(before, found.Count - before - 1);
    }

    /// <summary>Takes those near that a good enough section led by such a strip could hold beside it.</summary>
    private void Take(int lead, ulong left, int taken, long loss)
    {
        var strips = LevelAt(0).Strips;
        strips.Clear();
        var ripped = loss + rip * length;
        foreach (var b in near.Breadths)
        {
            if (sums.Next(taken, b) is not (>= 0 and var next))
                continue;
            var least = ripped + near.Least(next) - limit;
            var all = near.Of(b);
            looks += all.Length;
            foreach (ref readonly var strip in all)
            {
                if (
                    strip.Worth >= least
                    && packing.Holds(left, strip.Packed)
                    && (!strip.IsAsLong || strip.Strip >= lead)
                )
                    strips.Add(strip);
            }
        }
    }

    /// <summary>Tries each of the strips of a level beside those chosen.</summary>
    private void Beside(int depth, ulong left, int taken, long beside, long loss)
    {
        var level = LevelAt(depth);
        var some = CollectionsMarshal.AsSpan(level.Strips);
        level.Bounds.Clear();
        foreach (ref readonly var strip in some)
            level.Bounds.Note(strip.Breadth, strip.Worth);
        level.Bounds.Start(rip * length);
        looks += some.Length;
        if (loss + level.Bounds.Least(taken) > limit)
            return;
        var ripped = loss + rip * length;
        for (var at = 0; at < some.Length; at++)
        {
            ref readonly var strip = ref some[at];
            var next = sums.Next(taken, strip.Breadth);
            var now = ripped - strip.Worth;
            var rest = beside - stock.RipKerf - pool.Breadths[strip.Breadth].Width;
            if (rest < 0 || now + level.Bounds.Least(next) > limit)
                continue;
            chosen.Add(strip.Strip);
            Add(now, rest);
            if (next <= sums.LastWithRoom && Fit(depth + 1, some[at..], left - strip.Packed, next))
                Beside(depth + 1, left - strip.Packed, next, rest, now);
            chosen.RemoveAt(chosen.Count - 1);
        }
    }

    /// <summary>Puts those that still fit on the next level; false where none does.</summary>
    private bool Fit(int depth, ReadOnlySpan<NearStrip> some, ulong left, int taken)
    {
        var strips = LevelAt(depth).Strips;
        strips.Clear();
        foreach (ref readonly var strip in some)
        {
            if (packing.Holds(left, strip.Packed) && sums.Next(taken, strip.Breadth) >= 0)
                strips.Add(strip);
        }

        looks += some.Length;
        return strips.Count > 0;
    }

    private void Add(long loss, long beside)
    {
        if (beside >= pool.Keepable)
            loss += rip * length;
        if (loss > limit || found.Count > most)
            return;
        found.Add(Column.Of(group, chosen, loss));
        if (bestOnly)
            limit = loss - 1;
    }

    private void CountLooks()
    {
        var all = looks + near.Looks - counted;
        if (all < LooksCounted)
            return;
        steps.Take((int)(all / LooksCounted));
        counted += all / LooksCounted * LooksCounted;
    }

    private Level LevelAt(int depth)
    {
        if (levels.Count == depth)
            levels.Add(new(new(pool.Breadths.Count, sums)));
        return levels[depth];
    }

    /// <summary>The strips to add next, and what they may still add.</summary>
    private sealed record Level(SectionBounds Bounds)
    {
        public List<NearStrip> Strips { get; } = [];
    }
}
