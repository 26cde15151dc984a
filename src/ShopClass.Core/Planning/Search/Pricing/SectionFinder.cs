namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// Finds the sections of a group of boards that lose no more than a limit at given prices. A section is as long as its
/// longest strip, which leads it; the others are looked for beside it among the strips that hold only blanks still left,
/// as long as the best that could still lie beside them leaves hope.
/// </summary>
internal sealed class SectionFinder
{
    private const int LooksCounted = 160;
    private readonly BoardGroup group;
    private readonly Packing packing;
    private readonly Steps steps;
    private readonly SectionBounds bounds;
    private readonly WidthSums sums;
    private readonly Stock stock;
    private readonly Prices prices;
    private readonly long rip;
    private readonly long cross;
    private readonly StripPool pool;
    private readonly StripPrices worth;
    private readonly int every;
    private readonly List<int> chosen = [];
    private readonly List<int> some = [];
    private readonly List<Column> found = [];
    private readonly Level first;
    private readonly List<Level> levels = [];
    private bool bestOnly;
    private long limit;
    private int most;
    private int lead;
    private long length;
    private int besideRank = -1;

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
        first = new(sums.Count);
        bounds = new(rip, pool.Breadths.Count, sums);
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
        var at = from;
        for (var n = 0; n < pool.Strips.Length && found.Count < most && !steps.AreUp; n += every)
        {
            at = at + every >= pool.Strips.Length ? 0 : at + every;
            Lead(at, limit);
        }

        return (found, at);
    }

    /// <summary>
    /// Finds sections led by each strip, the shortest first, until there are so many. Of each length and breadth only strips
    /// worth enough are looked at: what may lie beside them is the same for all.
    /// </summary>
    private void LeadAll(long limit, int enough)
    {
        found.Clear();
        var shelf = pool.Shelf;
        var froms = shelf.First.ToArray();
        for (var rank = 0; rank < shelf.Ranks && shelf.LengthOf(rank) <= stock.Usable; rank++)
        {
            var ends = shelf.EndsOf(rank);
            for (var b = 0; b < ends.Length; b++)
            {
                if (froms[b] == ends[b])
                    continue;
                Beside(rank);
                var least = Empty(length) + first.Least[sums.Next(0, b)] - limit;
                for (var p = froms[b]; p < ends[b]; p++)
                {
                    if (worth.OnShelf[p] >= least)
                        Lead(shelf.Strips[p], limit);
                }

                froms[b] = ends[b];
            }

            if (found.Count >= enough || steps.AreUp)
                break;
        }
    }

    /// <summary>What a section so long loses while nothing is in it.</summary>
    private long Empty(long length) =>
        cross * stock.Width + prices.PerTick[group.Index] * (length + stock.CrosscutKerf);

    /// <summary>Works out what may lie beside the strips of a length.</summary>
    private void Beside(int rank)
    {
        if (rank == besideRank)
            return;
        (besideRank, length) = (rank, pool.Shelf.LengthOf(rank));
        var ends = pool.Shelf.EndsOf(rank);
        bounds.Clear();
        for (var b = 0; b < ends.Length; b++)
            bounds.Note(b, worth.Greatest(b, ends[b]));
        bounds.Spread(length, 0, first.Least);
    }

    /// <summary>Finds sections led by a strip.</summary>
    private void Lead(int index, long limit)
    {
        ref readonly var strip = ref pool.Strips[index];
        (lead, this.limit) = (index, limit);
        if (strip.Length > stock.Usable)
            return;
        Beside(pool.Shelf.RankOf(index));
        var loss = Empty(length) - worth.Values[index];
        var taken = sums.Next(0, strip.Breadth);
        if (loss + first.Least[taken] > limit)
            return;
        var beside = stock.Width - pool.Breadths[strip.Breadth].Width;
        var left = packing.All - strip.Packed;
        chosen.Add(index);
        var before = found.Count;
        Add(loss, beside);
        if (taken <= sums.LastWithRoom && Candidates(left, taken, loss) is { Count: > 0 } some)
            Beside(0, some, left, taken, beside, loss);
        chosen.Clear();
        if (bestOnly && found.Count > before + 1)
            found.RemoveRange(before, found.Count - before - 1);
    }

    /// <summary>The strips that a good enough section led by such a strip could hold beside it.</summary>
    private List<int> Candidates(ulong left, int taken, long loss)
    {
        var ends = pool.Shelf.EndsOf(besideRank);
        first.Strips.Clear();
        var ripped = loss + rip * length;
        var looks = 0;
        for (var b = 0; b < ends.Length; b++)
        {
            var next = sums.Next(taken, b);
            if (next < 0)
                continue;
            var least = ripped + first.Least[next] - limit;
            if (worth.Greatest(b, ends[b]) < least)
                continue;

            some.Clear();
            looks += worth.Collect(b, ends[b], least, some);
            foreach (var i in some)
            {
                ref readonly var strip = ref pool.Strips[i];
                if (MayLieBeside(strip, i, left) && worth.Values[i] - LastCut(strip) >= least)
                    first.Strips.Add(i);
            }
        }

        steps.Take(1 + looks / LooksCounted);
        return first.Strips;
    }

    /// <summary>Tries each of some strips beside those chosen.</summary>
    private void Beside(int depth, List<int> some, ulong left, int taken, long beside, long loss)
    {
        if (levels.Count == depth)
            levels.Add(new(sums.Count));
        var level = levels[depth];
        bounds.Clear();
        foreach (var i in some)
            bounds.Note(pool.Strips[i].Breadth, worth.Values[i] - LastCut(pool.Strips[i]));
        bounds.Spread(length, taken, level.Least);
        if (loss + level.Least[taken] > limit)
            return;
        var ripped = loss + rip * length;
        for (var at = 0; at < some.Count; at++)
        {
            var i = some[at];
            ref readonly var strip = ref pool.Strips[i];
            var next = sums.Next(taken, strip.Breadth);
            var now = ripped - worth.Values[i] + LastCut(strip);
            var rest = beside - stock.RipKerf - pool.Breadths[strip.Breadth].Width;
            if (rest < 0 || now + level.Least[next] > limit)
                continue;
            chosen.Add(i);
            Add(now, rest);
            if (next <= sums.LastWithRoom)
            {
                level.Strips.Clear();
                for (var j = at; j < some.Count; j++)
                {
                    ref readonly var other = ref pool.Strips[some[j]];
                    if (
                        sums.Next(next, other.Breadth) >= 0
                        && packing.Holds(left - strip.Packed, other.Packed)
                    )
                        level.Strips.Add(some[j]);
                }

                if (level.Strips.Count > 0)
                    Beside(depth + 1, level.Strips, left - strip.Packed, next, rest, now);
            }

            chosen.RemoveAt(chosen.Count - 1);
        }

        steps.Take(1 + some.Count / LooksCounted);
    }

    private long LastCut(in PoolStrip strip) =>
        length - strip.Length > pool.Leeway ? cross * pool.Breadths[strip.Breadth].Needed : 0;

    /// <summary>Of strips as long as the section the first leads.</summary>
    private bool MayLieBeside(in PoolStrip strip, int index, ulong left) =>
        (strip.Length < length || (strip.Length == length && index >= lead))
        && packing.Holds(left, strip.Packed);

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

    /// <summary>What may still be added for each sum of widths, and the strips to add it with.</summary>
    private sealed class Level(int sums)
    {
        public long[] Least { get; } = new long[sums];
        public List<int> Strips { get; } = [];
    }
}
