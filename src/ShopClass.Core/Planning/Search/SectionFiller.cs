namespace ShopClass.Core.Planning.Search;

/// <summary>
/// Fills one section of a board, strip by strip from the near edge: each strip takes the width that uses its wood best,
/// and in it the longest blanks first. Works round bad places.
/// </summary>
internal sealed class SectionFiller(Bench bench, Stock stock)
{
    private const int MostWidths = 24;

    /// <summary>
    /// A section between two places along the board, or null when nothing fits. Takes what it uses out of
    /// <paramref name="left"/>. <paramref name="must"/> names a kind that has to be in its first strip, or -1.
    /// </summary>
    public DraftSection? Fill(long from, long to, int[] left, int must)
    {
        var strips = new List<DraftStrip>();
        if (must < 0 && WholeWidth(from, to, left, must) is { } whole)
            return whole;
        var near = 0L;
        while (near < stock.Width)
        {
            var strip = BestStrip(from, to, near, left, strips.Count == 0 ? must : -1);
            if (strip is null)
            {
                var next = NextEdge(from, to, near);
                if (next is null)
                    break;
                near = next.Value;
                continue;
            }

            strips.Add(strip);
            Take(strip, left);
            near = strip.Far + stock.RipKerf;
        }

        if (strips.Count == 0)
            return must < 0 ? null : WholeWidth(from, to, left, must);
        return new(from, strips.Max(s => s.Blanks[^1].To), strips);
    }

    private static void Take(DraftStrip strip, int[] left)
    {
        foreach (var blank in strip.Blanks)
            left[blank.Kind]--;
    }

    /// <summary>The far edge of the next bad place: a strip may begin there where none could begin nearer.</summary>
    private long? NextEdge(long from, long to, long near)
    {
        long? next = null;
        foreach (var bad in stock.Bad)
        {
            if (bad.From < to && bad.To > from && bad.Far > near && bad.Far < stock.Width)
                next = Math.Min(next ?? long.MaxValue, bad.Far);
        }

        return next;
    }

    /// <summary>On a board with two straight edges a blank of its full width needs no allowance.</summary>
    private DraftSection? WholeWidth(long from, long to, int[] left, int must)
    {
        if (!stock.Board.HasStraightEdges)
            return null;
        var tight = bench.Kinds.Any(k =>
            left[k.Index] > 0
            && (must < 0 || must == k.Index)
            && k.Width > stock.Width
            && k.WidthBetweenStraightEdges <= stock.Width
        );
        if (!tight)
            return null;
        var blanks = FillAlong(
            from,
            to,
            0,
            stock.Width,
            left,
            must,
            k => k.WidthBetweenStraightEdges
        );
        if (
            blanks.Count == 0
            || (must < 0 && blanks.All(b => bench.Kinds[b.Kind].Width <= stock.Width))
        )
            return null;
        var strip = new DraftStrip(0, stock.Width, blanks);
        Take(strip, left);
        return new(from, blanks[^1].To, [strip]);
    }

    private DraftStrip? BestStrip(long from, long to, long near, int[] left, int must)
    {
        DraftStrip? best = null;
        Int128 bestUsed = 0;
        foreach (var width in Widths(left, must).Where(w => near + w <= stock.Width))
        {
            var blanks = FillAlong(from, to, near, near + width, left, must, k => k.Width);
            if (blanks.Count == 0)
                continue;
            var strip = new DraftStrip(near, near + blanks.Max(Across), blanks);
            var used = blanks.Aggregate(
                (Int128)0,
                (sum, b) => sum + (Int128)(b.To - b.From) * Across(b)
            );
            // Best use of the strip's own area; the wider strip where two are as good.
            if (
                best is null
                || used * (best.Width + stock.RipKerf) > bestUsed * (strip.Width + stock.RipKerf)
            )
                (best, bestUsed) = (strip, used);
        }

        return best;
    }

    private long Across(DraftBlank blank) => bench.Kinds[blank.Kind].Across(blank.Turned);

    private IEnumerable<long> Widths(int[] left, int must) =>
        Greedy.Thinned(AllWidths(left, must), MostWidths);

    private long[] AllWidths(int[] left, int must) =>
        [
            .. bench
                .Kinds.Where(k => left[k.Index] > 0 && (must < 0 || must == k.Index))
                .SelectMany(k => k.MayTurn ? new[] { k.Width, k.Length } : [k.Width])
                .Distinct()
                .OrderDescending(),
        ];

    /// <summary>Blanks end to end, each the longest that still fits, the must first.</summary>
    private List<DraftBlank> FillAlong(
        long from,
        long to,
        long near,
        long far,
        int[] left,
        int must,
        Func<Kind, long> widthOf
    )
    {
        var blanks = new List<DraftBlank>();
        var rest = (int[])left.Clone();
        var at = from;
        while (at < to)
        {
            var only = blanks.Count == 0 ? must : -1;
            if (NextBlank(at, to, near, far, rest, only, widthOf) is not { } blank)
                break;
            blanks.Add(blank);
            rest[blank.Kind]--;
            at = blank.To + stock.CrosscutKerf;
        }

        return blanks;
    }

    private DraftBlank? NextBlank(
        long at,
        long to,
        long near,
        long far,
        int[] left,
        int only,
        Func<Kind, long> widthOf
    )
    {
        DraftBlank? best = null;
        foreach (var kind in bench.Kinds)
        {
            if (
                left[kind.Index] == 0
                || !kind.Suits[stock.Index]
                || (only >= 0 && only != kind.Index)
            )
                continue;
            foreach (var turned in kind.MayTurn ? new[] { false, true } : [false])
            {
                var along = kind.Along(turned);
                if ((turned ? kind.Length : widthOf(kind)) > far - near)
                    continue;
                var start = stock.FirstClear(kind, at, along, near, far, to);
                if (start == long.MaxValue)
                    continue;
                // No wood skipped before wood skipped; then the longest.
                if (
                    best is null
                    || start < best.Value.From
                    || (start == best.Value.From && along > best.Value.To - best.Value.From)
                )
                    best = new(kind.Index, turned, start, start + along);
            }
        }

        return best;
    }
}
