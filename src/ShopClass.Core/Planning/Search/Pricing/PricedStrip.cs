namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>A strip of a pool with what it is worth at prices.</summary>
/// <param name="Packed">Its blanks.</param>
/// <param name="Length">Its length.</param>
/// <param name="Value">Worth of its blanks less the crosscuts between them.</param>
/// <param name="Breadth">Index of its breadth.</param>
/// <param name="Last">Index of its last blank.</param>
/// <param name="End">Index after the last strip that goes on from it.</param>
internal readonly record struct PricedStrip(
    ulong Packed,
    long Length,
    long Value,
    int Breadth,
    int Last,
    int End
)
{
    /// <summary>All strips of a pool in its order.</summary>
    /// <param name="pool">The pool.</param>
    /// <param name="worth">Worth of a blank of each kind.</param>
    /// <param name="cross">Cost of a tick crosscut.</param>
    public static PricedStrip[] All(StripPool pool, long[] worth, long cross)
    {
        var strips = pool.Strips;
        var ends = pool.Ends;
        var sums = new long[strips.Length];
        var all = new PricedStrip[strips.Length];
        for (var i = 0; i < all.Length; i++)
        {
            ref readonly var strip = ref strips[i];
            sums[i] = (strip.Before < 0 ? 0 : sums[strip.Before]) + worth[strip.Lie.Kind];
            var cuts = cross * pool.Breadths[strip.Breadth].Needed * (strip.Count - 1);
            var value = sums[i] - cuts;
            all[i] = new(strip.Packed, strip.Length, value, strip.Breadth, strip.Last, ends[i]);
        }

        return all;
    }
}
