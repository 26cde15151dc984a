using System.Runtime.InteropServices;

namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>A strip that could lie beside another.</summary>
/// <param name="Strip">Its index in the pool.</param>
/// <param name="Breadth">Index of its breadth.</param>
/// <param name="IsAsLong">Whether it is as long as the section.</param>
/// <param name="Packed">Its blanks.</param>
/// <param name="Worth">Its worth, less a cut at its end where it is shorter than the section.</param>
internal readonly record struct NearStrip(
    int Strip,
    int Breadth,
    bool IsAsLong,
    ulong Packed,
    long Worth
);

/// <summary>
/// The strips that could lie beside one that leads a section of a certain length. They are gathered once for all that may
/// lead there: what the best of these could bear beside it is all that any of them could.
/// </summary>
internal sealed class NearStrips
{
    /// <summary>No worth at all.</summary>
    public const long None = long.MinValue / 8;
    private readonly StripPool pool;
    private readonly StripPrices worth;
    private readonly WidthSums sums;
    private readonly SectionBounds bounds;
    private readonly Stock stock;
    private readonly long rip;
    private readonly long cross;
    private readonly List<NearStrip>[] lists;
    private readonly List<int> breadths = [];
    private readonly List<int> collected = [];
    private readonly long[] leastBeside;

    public NearStrips(StripPool pool, Stock stock, long rip, long cross)
    {
        (this.pool, this.stock, this.rip, this.cross) = (pool, stock, rip, cross);
        (worth, sums) = (pool.Prices, pool.Sums);
        bounds = new(pool.Breadths.Count, sums);
        lists = [.. pool.Breadths.Select(_ => new List<NearStrip>())];
        leastBeside = new long[lists.Length];
        Leads = new long[lists.Length];
        LeastLead = new long[lists.Length];
    }

    /// <summary>The greatest worth of those of each breadth that may lead; to be set before gathering.</summary>
    public long[] Leads { get; }

    /// <summary>The least worth with which one of each breadth leads a good enough section.</summary>
    public long[] LeastLead { get; }

    /// <summary>Breadths of the strips gathered.</summary>
    public IReadOnlyList<int> Breadths => breadths;

    /// <summary>How many strips were looked at in all.</summary>
    public long Looks { get; private set; }

    /// <summary>The strips gathered of a breadth.</summary>
    public ReadOnlySpan<NearStrip> Of(int breadth) => CollectionsMarshal.AsSpan(lists[breadth]);

    /// <summary>The least that strips beside such a sum of widths add to the loss, the same blanks as often as they please.</summary>
    public long Least(int sum) => bounds.Least(sum);

    /// <summary>Gathers for those that may lead at a length.</summary>
    /// <param name="rank">Number of the length.</param>
    /// <param name="length">The length.</param>
    /// <param name="hope">How much worth a section so long is to hold at least to be good enough, rips and cuts at ends not counted.</param>
    public void Gather(int rank, long length, long hope)
    {
        var ends = pool.Shelf.EndsOf(rank);
        foreach (var b in breadths)
            lists[b].Clear();
        breadths.Clear();
        bounds.Clear();
        for (var b = 0; b < ends.Length; b++)
            bounds.Note(b, worth.Greatest(b, ends[b]));
        bounds.Start(rip * length);
        Looks += ends.Length;
        if (!Any(rip * length, hope))
            return;
        for (var b = 0; b < ends.Length; b++)
        {
            if (worth.Greatest(b, ends[b]) >= leastBeside[b])
                Gather(b, ends[b], length);
        }

        LeastWith(rip * length, hope);
    }

    /// <summary>Whether any could have a strip beside it; what one alone and what such a strip is to be worth at least.</summary>
    private bool Any(long ripped, long hope)
    {
        Array.Fill(leastBeside, long.MaxValue);
        var any = false;
        for (var b = 0; b < lists.Length; b++)
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
            for (var o = 0; o < lists.Length; o++)
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

    private void Gather(int breadth, int end, long length)
    {
        collected.Clear();
        Looks += worth.Collect(breadth, end, leastBeside[breadth], collected);
        var list = lists[breadth];
        foreach (var i in collected)
        {
            ref readonly var strip = ref pool.Strips[i];
            var isCut = length - strip.Length > pool.Leeway;
            var its = worth.Values[i] - (isCut ? cross * pool.Breadths[breadth].Needed : 0);
            if (its >= leastBeside[breadth])
                list.Add(new(i, breadth, strip.Length == length, strip.Packed, its));
        }

        if (list.Count > 0)
            breadths.Add(breadth);
    }

    private void LeastWith(long ripped, long hope)
    {
        foreach (var o in breadths)
        {
            var most = None;
            foreach (ref readonly var near in Of(o))
                most = Math.Max(most, near.Worth);
            for (var b = 0; b < lists.Length; b++)
            {
                if (Leads[b] == None || sums.Next(sums.Next(0, b), o) is not (>= 0 and var next))
                    continue;
                LeastLead[b] = Math.Min(LeastLead[b], hope + ripped + bounds.Least(next) - most);
            }
        }
    }
}
