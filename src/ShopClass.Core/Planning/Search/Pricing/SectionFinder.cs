namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// Finds the sections of a group of boards that lose no more than a limit at given prices. A section is as long as its
/// longest strip, which leads it; the others are looked for beside it, as long as the best that could still lie beside
/// them leaves hope.
/// </summary>
internal sealed class SectionFinder
{
    private readonly BoardGroup group;
    private readonly Packing packing;
    private readonly Steps steps;
    private readonly SectionBounds bounds;
    private readonly IReadOnlyList<PoolStrip> strips;
    private readonly long[] values;
    private readonly int[][] byBreadth;
    private readonly int[] ranks;
    private readonly Stock stock;
    private readonly Prices prices;
    private readonly long rip;
    private readonly long cross;
    private readonly List<int> chosen = [];
    private readonly List<Column> found = [];
    private readonly int every;
    private readonly int[]?[] without;
    private long limit;
    private int most;
    private int lead;
    private long length;

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
        strips = group.Pool.Strips;
        values = Values();
        ranks = new int[strips.Count];
        byBreadth = ByBreadth();
        without = new int[]?[byBreadth.Length * packing.Kinds];
        bounds = new(group.Pool, packing, stock, values, rip, cross, every);
        steps.Take(strips.Count / every / 4);
    }

    /// <summary>All sections that lose no more than the limit, or null where there are too many.</summary>
    public IReadOnlyList<Column>? Within(long limit, int most)
    {
        (this.limit, this.most) = (limit, most);
        found.Clear();
        for (var i = 0; i < strips.Count && found.Count <= most && !steps.AreUp; i++)
            Lead(i);
        return found.Count > most || steps.AreUp ? null : found;
    }

    /// <summary>About so many sections that lose no more than the limit, from one strip on and round; then the strip to go on from.</summary>
    public (IReadOnlyList<Column> Found, int Next) Some(long limit, int most, int from)
    {
        (this.limit, this.most) = (limit, int.MaxValue);
        found.Clear();
        var at = from;
        for (var n = 0; n < strips.Count && found.Count < most && !steps.AreUp; n += every)
        {
            at = at + every >= strips.Count ? 0 : at + every;
            Lead(at);
        }

        return (found, at);
    }

    private void Lead(int index)
    {
        var strip = strips[index];
        (lead, length) = (index, strip.Length);
        if (length > stock.Usable)
            return;
        var loss =
            cross * stock.Width
            + prices.PerTick[group.Index] * (length + stock.CrosscutKerf)
            - values[index];
        var beside = stock.Width - group.Pool.Breadths[strip.Breadth].Width;
        if (loss + bounds.Beside(length, beside) > limit)
            return;
        if (loss + bounds.Beside(length, beside, strip.Packed) > limit)
            return;
        chosen.Add(index);
        Add(loss, beside);
        Beside(0, 0, strip.Packed, beside, loss);
        chosen.Clear();
    }

    /// <summary>Tries each strip at or after a place in the lists beside those chosen.</summary>
    private void Beside(int breadthFrom, int from, ulong packed, long beside, long loss)
    {
        var left = packing.All - packed;
        var ripped = rip * length;
        for (var b = breadthFrom; b < byBreadth.Length; b++)
        {
            var breadth = group.Pool.Breadths[b];
            var rest = beside - stock.RipKerf - breadth.Width;
            if (rest < 0)
                continue;
            var (value, usedUp) = bounds.BestValue(length, b, packed);
            if (loss + ripped + bounds.Beside(length, rest) - value > limit)
                continue;
            var after = bounds.Beside(length, rest, packed);
            var sure = loss + ripped + after;
            if (sure - value > limit)
                continue;
            var list = ListFor(b, usedUp);
            for (var i = 0; i < list.Length && sure - values[list[i]] <= limit; i++)
            {
                if ((b == breadthFrom && ranks[list[i]] < from) || !MayLieBeside(list[i], left))
                    continue;
                var strip = strips[list[i]];
                var cut = length - strip.Length > group.Pool.Leeway ? cross * breadth.Needed : 0;
                var now = loss + ripped - values[list[i]] + cut;
                if (now + after > limit)
                    continue;
                chosen.Add(list[i]);
                Add(now, rest);
                Beside(b, ranks[list[i]], packed + strip.Packed, rest, now);
                chosen.RemoveAt(chosen.Count - 1);
            }

            if (!steps.Take(1 + list.Length / 256))
                return;
        }
    }

    /// <summary>Of strips as long as the section the first leads.</summary>
    private bool MayLieBeside(int index, ulong left)
    {
        var strip = strips[index];
        return (strip.Length < length || (strip.Length == length && index >= lead))
            && packing.Holds(left, strip.Packed);
    }

    private void Add(long loss, long beside)
    {
        if (beside >= group.Pool.Keepable)
            loss += rip * length;
        if (loss <= limit && found.Count <= most)
            found.Add(Column.Of(group, chosen, loss));
    }

    /// <summary>Worth of each strip's blanks less the crosscuts between them.</summary>
    private long[] Values()
    {
        var worth = new long[strips.Count];
        var net = new long[strips.Count];
        for (var i = 0; i < net.Length; i++)
        {
            var strip = strips[i];
            worth[i] = (strip.Before < 0 ? 0 : worth[strip.Before]) + prices.Worth[strip.Lie.Kind];
            net[i] =
                worth[i] - cross * group.Pool.Breadths[strip.Breadth].Needed * (strip.Count - 1);
        }

        return net;
    }

    /// <summary>The strips of a breadth without a kind that is used up.</summary>
    private int[] ListFor(int b, int usedUp) =>
        usedUp < 0
            ? byBreadth[b]
            : without[b * packing.Kinds + usedUp] ??= [
                .. byBreadth[b].Where(i => packing.Count(strips[i].Packed, usedUp) == 0),
            ];

    private int[][] ByBreadth()
    {
        var counts = new int[group.Pool.Breadths.Count];
        for (var i = 0; i < strips.Count; i += every)
            counts[strips[i].Breadth]++;
        int[][] lists = [.. counts.Select(c => new int[c])];
        long[][] keys = [.. counts.Select(c => new long[c])];
        Array.Clear(counts);
        for (var i = 0; i < strips.Count; i += every)
        {
            var b = strips[i].Breadth;
            lists[b][counts[b]] = i;
            keys[b][counts[b]++] = -values[i];
        }

        for (var b = 0; b < lists.Length; b++)
        {
            Array.Sort(keys[b], lists[b]);
            for (var i = 0; i < lists[b].Length; i++)
                ranks[lists[b][i]] = i;
        }

        return lists;
    }
}
