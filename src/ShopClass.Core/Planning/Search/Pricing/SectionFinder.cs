using System.Runtime.InteropServices;

namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// Finds the sections of a group of boards that lose no more than a limit at given prices. A section is as long as its
/// longest strip, which leads it; the others are looked for beside it among the strips that hold only blanks still left,
/// as long as the best that could still lie beside them leaves hope.
/// </summary>
internal sealed class SectionFinder
{
    private const int LooksCounted = 1_000;

    /// <summary>With fewer strips to add what they add at most is not worked out.</summary>
    private const int WorthBounding = 24;

    /// <summary>So many lengths are looked at together.</summary>
    private const int AtOnce = 16;
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
    private readonly List<int> chosen = [];
    private readonly List<Column> found = [];
    private readonly List<StripsToAdd> levels = [];
    private bool bestOnly;
    private long limit;
    private int most;
    private long length;
    private long looks;
    private long counted;

    public SectionFinder(Packing packing, BoardGroup group, Prices prices, Steps steps)
    {
        (this.group, this.packing, this.prices, this.steps) = (group, packing, prices, steps);
        stock = group.First;
        (rip, cross) = (prices.Rip(stock), prices.Cross(stock));
        pool = group.Pool;
        sums = pool.Sums;
        worth = pool.Prices;
        worth.Count(prices.Worth, cross);
        near = new(packing, pool, stock, rip, cross);
        steps.Take(pool.Strips.Length / 64);
    }

    /// <summary>All sections that lose no more than the limit, or null where there are too many.</summary>
    public IReadOnlyList<Column>? Within(long limit, int most)
    {
        (this.most, bestOnly) = (most, false);
        found.Clear();
        for (var block = 0; block < Blocks && found.Count <= most && !steps.AreUp; block++)
            LeadAll(block, limit);
        return found.Count > most || steps.AreUp ? null : found;
    }

    /// <summary>
    /// For each strip the section led by it that loses least, where it loses no more than the limit, until there are enough.
    /// The lengths are gone through in blocks, from one on and round; then comes the block where it ended.
    /// </summary>
    /// <param name="limit">The limit.</param>
    /// <param name="enough">How many are enough.</param>
    /// <param name="from">The block where it ended last.</param>
    /// <param name="every">Only every so many-th block is gone through.</param>
    public (IReadOnlyList<Column> Found, int End) Best(long limit, int enough, int from, int every)
    {
        (most, bestOnly) = (int.MaxValue, true);
        found.Clear();
        var block = from;
        for (var n = 0; n < Blocks && found.Count < enough && !steps.AreUp; n += every)
        {
            // Round again it begins one block later, so that in time each has its turn.
            block = block + every < Blocks ? block + every : (block + 1) % every % Blocks;
            LeadAll(block, limit);
        }

        return (found, block);
    }

    private int Blocks => (pool.Shelf.Ranks + AtOnce - 1) / AtOnce;

    /// <summary>
    /// Finds sections led by the strips of a block of lengths, the shortest first. Of each breadth only strips worth enough are
    /// looked at.
    /// </summary>
    private void LeadAll(int block, long limit)
    {
        var shelf = pool.Shelf;
        var rank = block * AtOnce;
        var shortest = shelf.LengthOf(rank);
        if (shortest > stock.Usable)
            return;
        var last = Math.Min(rank + AtOnce, shelf.Ranks) - 1;
        var ends = shelf.EndsOf(last);
        var froms = rank > 0 ? shelf.EndsOf(rank - 1) : shelf.First;
        for (var b = 0; b < ends.Length; b++)
        {
            looks += ends[b] - froms[b];
            near.Leads[b] = worth.GreatestOf(froms[b], ends[b]);
        }

        near.Gather(shortest, last, Empty(shortest) - limit);
        for (var b = 0; b < ends.Length; b++)
        {
            var least = near.LeastLead[b];
            for (var p = froms[b]; p < ends[b] && least < long.MaxValue; p++)
            {
                if (worth.OnShelf[p] >= least)
                    Lead(p, limit);
            }
        }

        CountLooks();
    }

    /// <summary>What a section so long loses while nothing is in it.</summary>
    private long Empty(long its) =>
        cross * stock.Width + prices.PerTick[group.Index] * (its + stock.CrosscutKerf);

    /// <summary>Finds sections led by the strip at a place of the shelf.</summary>
    private void Lead(int place, long limit)
    {
        this.limit = limit;
        var index = pool.Shelf.Strips[place];
        ref readonly var strip = ref pool.Strips[index];
        length = strip.Length;
        if (length > stock.Usable)
            return;
        var loss = Empty(length) - worth.OnShelf[place];
        var taken = sums.Next(0, strip.Breadth);
        var beside = stock.Width - pool.Breadths[strip.Breadth].Width;
        var left = packing.All - strip.Packed;
        chosen.Add(index);
        var before = found.Count;
        Add(loss, beside);
        if (taken <= sums.LastWithRoom)
        {
            Take(index, left, taken, loss);
            if (LevelAt(0).Items.Count > 0)
                Beside(0, left, taken, beside, loss);
        }

        chosen.Clear();
        if (bestOnly && found.Count > before + 1)
            found.RemoveRange(before, found.Count - before - 1);
    }

    /// <summary>Takes those near that a good enough section led by such a strip could hold beside it.</summary>
    private void Take(int lead, ulong left, int taken, long loss)
    {
        var level = LevelAt(0);
        level.Clear();
        var items = level.Items;
        var index = near.Index;
        var all = near.All;
        near.Leave(left);
        var ripped = loss + rip * length;
        foreach (var b in near.Breadths)
        {
            if (sums.Next(taken, b) is not (>= 0 and var next))
                continue;
            var least = ripped + near.Least(next) - limit;
            if (near.Most(b) < least)
                continue;
            var (from, to) = near.PlacesOf(b, least);
            looks += index.Among(from, to);
            for (var i = index.Next(); i >= 0; i = index.Next())
            {
                ref readonly var strip = ref all[i];
                looks++;
                if (strip.Length > length)
                    continue;
                var its = near.WorthIn(length, strip);
                if (its >= least && (strip.Length < length || strip.Strip >= lead))
                    items.Add(new(i, b, strip.Packed, its));
            }

            level.SortSince(b);
        }
    }

    /// <summary>Tries each of the strips of a level beside those chosen.</summary>
    private void Beside(int depth, ulong left, int taken, long beside, long loss)
    {
        var level = LevelAt(depth);
        Bound(level);
        looks += level.Items.Count;
        var ripped = loss + rip * length;
        var items = CollectionsMarshal.AsSpan(level.Items);
        for (var at = 0; at < items.Length; at++)
        {
            ref readonly var strip = ref items[at];
            var next = sums.Next(taken, strip.Breadth);
            var now = ripped - strip.Worth;
            var rest = beside - stock.RipKerf - pool.Breadths[strip.Breadth].Width;
            if (rest < 0)
                continue;
            var mayGoOn = next <= sums.LastWithRoom;
            if (now + (mayGoOn ? LeastBeside(level, next) : 0) > limit)
                continue;
            chosen.Add(near.All[strip.Near].Strip);
            Add(now, rest);
            var still = left - strip.Packed;
            if (mayGoOn && Fit(depth, at, still, next, now))
                Beside(depth + 1, still, next, rest, now);
            chosen.RemoveAt(chosen.Count - 1);
        }
    }

    /// <summary>
    /// Works out what the strips of a level may add, each as often as it pleases; for a few it is not worth the time.
    /// </summary>
    private void Bound(StripsToAdd level)
    {
        level.IsBounded = level.Items.Count >= WorthBounding;
        if (!level.IsBounded)
            return;
        level.Bounds.Clear();
        foreach (var (breadth, first, _) in level.Breadths)
            level.Bounds.Note(breadth, level.Items[first].Worth);
        level.Bounds.Start(rip * length);
        looks += level.Breadths.Count;
    }

    /// <summary>Puts those of a level, from one on, that still fit and might do on the next; false where there are none.</summary>
    private bool Fit(int depth, int from, ulong left, int taken, long loss)
    {
        var level = LevelAt(depth);
        var further = LevelAt(depth + 1);
        further.Clear();
        var ripped = loss + rip * length;
        var items = CollectionsMarshal.AsSpan(level.Items);
        foreach (var (breadth, first, to) in level.Breadths)
        {
            var i = Math.Max(from, first);
            if (i >= to || sums.Next(taken, breadth) is not (>= 0 and var next))
                continue;
            var least = ripped + LeastBeside(level, next) - limit;
            for (; i < to && items[i].Worth >= least; i++)
            {
                looks++;
                if (packing.Holds(left, items[i].Packed))
                    further.Items.Add(items[i]);
            }

            further.Close(breadth);
        }

        looks += level.Breadths.Count;
        return further.Items.Count > 0;
    }

    private long LeastBeside(StripsToAdd level, int sum) =>
        level.IsBounded ? level.Bounds.Least(sum) : near.Least(sum);

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

    private StripsToAdd LevelAt(int depth)
    {
        if (levels.Count == depth)
            levels.Add(new(new(pool.Breadths.Count, sums)));
        return levels[depth];
    }
}
