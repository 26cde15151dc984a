using System.Runtime.InteropServices;

namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>A strip that could lie beside another.</summary>
/// <param name="Strip">Its index in the pool.</param>
/// <param name="Breadth">Index of its breadth.</param>
/// <param name="Length">Its length.</param>
/// <param name="Packed">Its blanks.</param>
/// <param name="Worth">Its worth; no cut at its end is counted.</param>
internal readonly record struct NearStrip(
    int Strip,
    int Breadth,
    long Length,
    ulong Packed,
    long Worth
);

/// <summary>
/// The strips that could lie beside one that leads a section whose length lies within bounds. They are gathered once for all
/// that may lead there: what the best of these could bear beside it is all that any of them could.
/// </summary>
internal sealed class NearStrips
{
    /// <summary>Those of a breadth lie in order of their worth in so many steps.</summary>
    private const int WorthSteps = 64;

    private const long Unknown = long.MaxValue;

    /// <summary>No worth at all.</summary>
    public const long None = long.MinValue / 8;
    private readonly StripPool pool;
    private readonly StripPrices worth;
    private readonly WidthSums sums;
    private readonly SectionBounds bounds;
    private readonly Stock stock;
    private readonly long rip;
    private readonly long[] cuts;
    private readonly List<NearStrip> all = [];
    private readonly List<(NearStrip Strip, long Worth)> some = [];
    private readonly long[] mostOutside;
    private readonly int[] firstOf;
    private readonly int[] endsByWorth;
    private readonly long[] mostBeside;
    private readonly long[] stepOf;
    private readonly BlankIndex index;
    private bool isIndexed;
    private readonly List<int> breadths = [];
    private readonly List<int> collected = [];
    private readonly long[] leastBeside;
    private long shortest;

    public NearStrips(Packing packing, StripPool pool, Stock stock, long rip, long cross)
    {
        (this.pool, this.stock, this.rip) = (pool, stock, rip);
        (worth, sums) = (pool.Prices, pool.Sums);
        bounds = new(pool.Breadths.Count, sums);
        index = new(packing);
        cuts = [.. pool.Breadths.Select(b => cross * b.Needed)];
        var count = pool.Breadths.Count;
        firstOf = new int[count];
        endsByWorth = new int[count * WorthSteps];
        mostBeside = new long[count];
        stepOf = new long[count];
        mostOutside = new long[count * index.Rows];
        leastBeside = new long[count];
        Leads = new long[count];
        LeastLead = new long[count];
    }

    /// <summary>The greatest worth of those of each breadth that may lead; to be set before gathering.</summary>
    public long[] Leads { get; }

    /// <summary>The least worth with which one of each breadth leads a good enough section.</summary>
    public long[] LeastLead { get; }

    /// <summary>Breadths of the strips gathered.</summary>
    public IReadOnlyList<int> Breadths => breadths;

    /// <summary>How many strips were looked at in all.</summary>
    public long Looks { get; private set; }

    /// <summary>The strips gathered, breadth by breadth, and within each those worth more before others.</summary>
    public ReadOnlySpan<NearStrip> All => CollectionsMarshal.AsSpan(all);

    /// <summary>From now on those are asked for that hold only what is left.</summary>
    public void Leave(ulong left) => Index.Leave(left);

    /// <summary>The most that one of a breadth may be worth that holds only what is left, each blank looked at for itself.</summary>
    public long Most(int breadth)
    {
        var most = mostBeside[breadth];
        foreach (var row in index.Gone)
            most = Math.Min(most, MostOutside(breadth, row));
        return most;
    }

    /// <summary>The most that one of a breadth may be worth that is not in a row.</summary>
    private long MostOutside(int breadth, int row)
    {
        ref var most = ref mostOutside[breadth * index.Rows + row];
        if (most != Unknown)
            return most;
        most = None;
        var (from, to) = PlacesOf(breadth, leastBeside[breadth]);
        var at = index.FirstOutside(row, from, to);
        if (at < 0)
            return most;
        var under = mostBeside[breadth] - WorthIn(shortest, All[at]);
        most = mostBeside[breadth] - under / stepOf[breadth] * stepOf[breadth];
        return most;
    }

    /// <summary>Where those of a breadth are that may be worth so much in a section.</summary>
    public (int From, int To) PlacesOf(int breadth, long least)
    {
        var under = mostBeside[breadth] - least;
        if (under < 0)
            return (0, 0);
        var step = Math.Min(under / stepOf[breadth], WorthSteps - 1);
        return (firstOf[breadth], endsByWorth[breadth * WorthSteps + step]);
    }

    /// <summary>How many of each blank the strips gathered hold.</summary>
    public BlankIndex Index
    {
        get
        {
            if (isIndexed)
                return index;
            isIndexed = true;
            index.Clear(all.Count);
            for (var i = 0; i < all.Count; i++)
                index.Note(i, All[i].Packed);
            Looks += all.Count;
            return index;
        }
    }

    /// <summary>The least that strips beside such a sum of widths add to the loss, the same blanks as often as they please.</summary>
    public long Least(int sum) => bounds.Least(sum);

    /// <summary>What a strip adds to the worth of a section so long.</summary>
    public long WorthIn(long length, in NearStrip strip) =>
        strip.Worth - (length - strip.Length > pool.Leeway ? cuts[strip.Breadth] : 0);

    /// <summary>Gathers for those that may lead at some lengths.</summary>
    /// <param name="shortest">The shortest of these lengths.</param>
    /// <param name="to">Number of the longest.</param>
    /// <param name="hope">
    /// How much worth a section of the shortest is to hold at least to be good enough, rips and cuts at ends not counted.
    /// </param>
    public void Gather(long shortest, int to, long hope)
    {
        var ends = pool.Shelf.EndsOf(to);
        var ripped = rip * shortest;
        all.Clear();
        breadths.Clear();
        isIndexed = false;
        this.shortest = shortest;
        Array.Fill(mostOutside, Unknown);
        bounds.Clear();
        for (var b = 0; b < ends.Length; b++)
            bounds.Note(b, worth.Greatest(b, ends[b]));
        bounds.Start(ripped);
        Looks += ends.Length;
        if (!Any(ripped, hope))
            return;
        for (var b = 0; b < ends.Length; b++)
        {
            if (worth.Greatest(b, ends[b]) >= leastBeside[b])
                Gather(b, ends[b]);
        }

        bounds.Clear();
        foreach (var b in breadths)
            bounds.Note(b, mostBeside[b]);
        bounds.Start(ripped);
        LeastWith(ripped, hope);
    }

    /// <summary>Whether any could have a strip beside it; what one alone and what such a strip is to be worth at least.</summary>
    private bool Any(long ripped, long hope)
    {
        Array.Fill(leastBeside, long.MaxValue);
        var any = false;
        for (var b = 0; b < Leads.Length; b++)
        {
            LeastLead[b] = long.MaxValue;
            if (Leads[b] == None)
                continue;
            var isRipped = stock.Width - pool.Breadths[b].Width >= pool.Keepable;
            var alone = hope + (isRipped ? ripped : 0);
            if (Leads[b] >= alone)
                LeastLead[b] = alone;
            var taken = sums.Next(0, b);
            if (Leads[b] < hope + bounds.Least(taken))
                continue;
            for (var o = 0; o < Leads.Length; o++)
            {
                if (sums.Next(taken, o) is not (>= 0 and var next))
                    continue;
                any = true;
                var least = hope - Leads[b] + ripped + bounds.Least(next);
                leastBeside[o] = Math.Min(leastBeside[o], least);
            }
        }

        return any;
    }

    private void Gather(int breadth, int end)
    {
        collected.Clear();
        Looks += worth.Collect(breadth, end, leastBeside[breadth], collected);
        some.Clear();
        var most = None;
        foreach (var place in collected)
        {
            var i = pool.Shelf.Strips[place];
            ref readonly var strip = ref pool.Strips[i];
            var its = worth.OnShelf[place];
            var near = new NearStrip(i, breadth, strip.Length, strip.Packed, its);
            its = WorthIn(shortest, near);
            if (its < leastBeside[breadth])
                continue;
            some.Add((near, its));
            most = Math.Max(most, its);
        }

        if (some.Count == 0)
            return;
        breadths.Add(breadth);
        mostBeside[breadth] = most;
        Sort(breadth, most);
    }

    /// <summary>Puts those of a breadth in order by worth, as far as it is told by so many equal steps.</summary>
    private void Sort(int breadth, long most)
    {
        var ends = Ends(breadth);
        var step = stepOf[breadth] = (most - leastBeside[breadth]) / WorthSteps + 1;
        ends.Clear();
        foreach (ref readonly var item in CollectionsMarshal.AsSpan(some))
            ends[(int)((most - item.Worth) / step)]++;
        var at = firstOf[breadth] = all.Count;
        foreach (ref var end in ends)
            (end, at) = (at, at + end);
        CollectionsMarshal.SetCount(all, at);
        var sorted = CollectionsMarshal.AsSpan(all);
        foreach (ref readonly var item in CollectionsMarshal.AsSpan(some))
            sorted[ends[(int)((most - item.Worth) / step)]++] = item.Strip;
    }

    private Span<int> Ends(int breadth) => endsByWorth.AsSpan(breadth * WorthSteps, WorthSteps);

    private void LeastWith(long ripped, long hope)
    {
        foreach (var o in breadths)
        {
            for (var b = 0; b < Leads.Length; b++)
            {
                if (Leads[b] == None || sums.Next(sums.Next(0, b), o) is not (>= 0 and var next))
                    continue;
                LeastLead[b] = Math.Min(
                    LeastLead[b],
                    hope + ripped + bounds.Least(next) - mostBeside[o]
                );
            }
        }
    }
}
