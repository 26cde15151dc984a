namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// What strips beside a given one could add to a section at best. Lengths are taken in blocks and widths in cells,
/// rounded so that nothing is promised that cannot be held.
/// </summary>
internal sealed class SectionBounds
{
    private const int Blocks = 128;
    private const int MostCells = 48;
    private const long None = long.MaxValue / 8;
    private readonly StripPool pool;
    private readonly Packing packing;
    private readonly long rip;
    private readonly long block;
    private readonly long cell;
    private readonly int[] cellsOf;
    private readonly long[][] best;
    private readonly long[][][] without;
    private readonly long[]?[] beside = new long[Blocks + 1][];
    private readonly int cells;
    private readonly long[] adds;
    private readonly long[] row;

    public SectionBounds(
        StripPool pool,
        Packing packing,
        Stock stock,
        long[] values,
        long rip,
        long cross,
        int every
    )
    {
        (this.pool, this.packing, this.rip) = (pool, packing, rip);
        block = Math.Max(1, (stock.Usable + Blocks - 1) / Blocks);
        var narrowest = pool.Breadths.Select(b => b.Width).DefaultIfEmpty(1).Min();
        cell = Math.Max(1, Math.Min(stock.Width / MostCells, narrowest));
        cells = (int)(stock.Width / cell) + 1;
        cellsOf = [.. pool.Breadths.Select(b => (int)((b.Width + stock.RipKerf) / cell))];
        best = [.. pool.Breadths.Select(_ => NewRow())];
        without =
        [
            .. Enumerable
                .Range(0, packing.Kinds)
                .Select(_ => pool.Breadths.Select(_ => NewRow()).ToArray()),
        ];
        adds = new long[best.Length];
        row = new long[cells];
        for (var i = 0; i < values.Length; i += every)
            Note(pool.Strips[i], values[i]);
        for (var b = 0; b < best.Length; b++)
        {
            var cut = cross * pool.Breadths[b].Needed;
            SpreadShort(best[b], cut);
            foreach (var rows in without)
                SpreadShort(rows[b], cut);
        }
    }

    /// <summary>The greatest value of a strip of this breadth in a section so long, its last cut counted.</summary>
    public long BestValue(long length, int breadth) => best[breadth][length / block];

    /// <summary>The same where some kinds are used up, and that one of these without which it is least; -1 where none matters.</summary>
    public (long Value, int Without) BestValue(long length, int breadth, ulong used)
    {
        var at = (int)(length / block);
        var scarcest = -1;
        var least = best[breadth][at];
        for (var kind = 0; kind < without.Length; kind++)
        {
            if (without[kind][breadth][at] < least && IsUsedUp(kind, used))
                (scarcest, least) = (kind, without[kind][breadth][at]);
        }

        return (least, scarcest);
    }

    private bool IsUsedUp(int kind, ulong used) =>
        packing.Count(used, kind) == packing.Count(packing.All, kind);

    /// <summary>The least that strips in so much width, kerfs before them included, add to the loss: never above 0.</summary>
    public long Beside(long length, long width)
    {
        var at = (int)(length / block);
        if (beside[at] is { } known)
            return known[Math.Max(0, width) / cell];
        var made = new long[cells];
        for (var b = 0; b < best.Length; b++)
            adds[b] = rip * (at * block) - best[b][at];
        Fill(made, cells - 1);
        beside[at] = made;
        return made[Math.Max(0, width) / cell];
    }

    /// <summary>The same where some kinds are used up.</summary>
    public long Beside(long length, long width, ulong used)
    {
        var at = (int)(length / block);
        for (var b = 0; b < best.Length; b++)
            adds[b] = best[b][at];
        for (var kind = 0; kind < without.Length; kind++)
        {
            if (!IsUsedUp(kind, used))
                continue;
            var rows = without[kind];
            for (var b = 0; b < adds.Length; b++)
                adds[b] = Math.Min(adds[b], rows[b][at]);
        }

        for (var b = 0; b < adds.Length; b++)
            adds[b] = rip * length - adds[b];
        var c = (int)(Math.Max(0, width) / cell);
        Array.Clear(row);
        Fill(row, c);
        return row[c];
    }

    private void Fill(long[] into, int upTo)
    {
        for (var b = 0; b < adds.Length; b++)
        {
            var (takes, add) = (cellsOf[b], adds[b]);
            if (add >= 0)
                continue;
            for (var c = takes; c <= upTo; c++)
                into[c] = Math.Min(into[c], into[c - takes] + add);
        }
    }

    private static long[] NewRow()
    {
        var blank = new long[Blocks + 1];
        Array.Fill(blank, -None);
        return blank;
    }

    private void Note(PoolStrip strip, long value)
    {
        var at = strip.Length / block;
        if (at > Blocks)
            return;
        ref var here = ref best[strip.Breadth][at];
        here = Math.Max(here, value);
        for (var kind = 0; kind < without.Length; kind++)
        {
            if (packing.Count(strip.Packed, kind) > 0)
                continue;
            ref var there = ref without[kind][strip.Breadth][at];
            there = Math.Max(there, value);
        }
    }

    /// <summary>Shorter strips lie in longer sections too; those shorter by more than the leeway are cut once more.</summary>
    private void SpreadShort(long[] of, long cut)
    {
        var own = (long[])of.Clone();
        var shorter = -None;
        var from = 0;
        for (var at = 0; at <= Blocks; at++)
        {
            var first = Math.Max(0, (at * block - pool.Leeway) / block);
            while (from < first)
                shorter = Math.Max(shorter, own[from++]);
            var near = shorter - cut;
            for (var i = from; i <= at; i++)
                near = Math.Max(near, own[i]);
            of[at] = near;
        }
    }
}
