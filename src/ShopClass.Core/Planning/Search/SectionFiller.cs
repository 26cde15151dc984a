namespace ShopClass.Core.Planning.Search;

/// <summary>
/// Fills one section of a board, strip by strip from the near edge: each strip takes the width that uses its wood best,
/// and in it the longest blanks first. Works round bad places.
/// </summary>
internal sealed class SectionFiller(Bench bench, Stock stock)
{
    private const int MostWidths = 24;

    /// <summary>Every width a blank may take, the widest first, with its kind.</summary>
    private readonly (long Width, Kind Kind)[] widths =
    [
        .. bench
            .Kinds.SelectMany(k =>
                k.MayTurn ? new[] { (k.Width, Kind: k), (k.Length, Kind: k) } : [(k.Width, Kind: k)]
            )
            .OrderByDescending(w => w.Item1),
    ];
    private readonly Kind[] suited = [.. bench.Kinds.Where(k => k.Suits[stock.Index])];
    private readonly int[] rest = new int[bench.Kinds.Count];
    private List<DraftBlank> filled = [];
    private List<DraftBlank> bestFilled = [];

    /// <summary>
    /// How far along the board the last section was decided: with its end anywhere between there and where it was, the same would
    /// have been filled.
    /// </summary>
    public long Reach { get; private set; }

    /// <summary>
    /// A section between two places along the board, or null when nothing fits. Takes what it uses out of
    /// <paramref name="left"/>. <paramref name="must"/> names a kind that has to be in its first strip, or -1.
    /// </summary>
    public DraftSection? Fill(long from, long to, int[] left, int must)
    {
        Reach = from;
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
            if (bad.From >= to || bad.To <= from || bad.Far <= near || bad.Far >= stock.Width)
                continue;
            next = Math.Min(next ?? long.MaxValue, bad.Far);
            Reach = Math.Max(Reach, bad.From + 1);
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
        FillAlong(from, to, (0, stock.Width), left, must, isWhole: true);
        if (
            filled.Count == 0
            || (must < 0 && filled.All(b => bench.Kinds[b.Kind].Width <= stock.Width))
        )
            return null;
        var strip = new DraftStrip(0, stock.Width, [.. filled]);
        Take(strip, left);
        return new(from, filled[^1].To, [strip]);
    }

    private DraftStrip? BestStrip(long from, long to, long near, int[] left, int must)
    {
        var bestWidth = 0L;
        Int128 bestUsed = 0;
        bestFilled.Clear();
        foreach (var width in Widths(left, must))
        {
            if (near + width > stock.Width)
                continue;
            FillAlong(from, to, (near, near + width), left, must, isWhole: false);
            if (filled.Count == 0)
                continue;
            var (used, across) = Use(filled);
            // Best use of the strip's own area; the wider strip where two are as good.
            if (
                bestFilled.Count > 0
                && used * (bestWidth + stock.RipKerf) <= bestUsed * (across + stock.RipKerf)
            )
                continue;
            (bestWidth, bestUsed) = (across, used);
            (filled, bestFilled) = (bestFilled, filled);
        }

        return bestFilled.Count == 0 ? null : new(near, near + bestWidth, [.. bestFilled]);
    }

    /// <summary>Area of blanks, and the width the widest of them takes.</summary>
    private (Int128 Used, long Across) Use(List<DraftBlank> blanks)
    {
        Int128 used = 0;
        var widest = 0L;
        foreach (var blank in blanks)
        {
            var across = bench.Kinds[blank.Kind].Across(blank.Turned);
            used += (Int128)(blank.To - blank.From) * across;
            widest = Math.Max(widest, across);
        }

        return (used, widest);
    }

    private IEnumerable<long> Widths(int[] left, int must)
    {
        var all = new List<long>(widths.Length);
        foreach (var (width, kind) in widths)
        {
            var isWanted = left[kind.Index] > 0 && (must < 0 || must == kind.Index);
            if (isWanted && (all.Count == 0 || all[^1] != width))
                all.Add(width);
        }

        return all.Count <= MostWidths ? all : Greedy.Thinned([.. all], MostWidths);
    }

    /// <summary>Blanks end to end between two edges, each the longest that still fits, the must first.</summary>
    private void FillAlong(
        long from,
        long to,
        (long Near, long Far) edges,
        int[] left,
        int must,
        bool isWhole
    )
    {
        filled.Clear();
        left.CopyTo(rest, 0);
        var at = from;
        while (at < to)
        {
            var only = filled.Count == 0 ? must : -1;
            if (NextBlank(at, to, edges, only, isWhole) is not { } blank)
                break;
            filled.Add(blank);
            rest[blank.Kind]--;
            at = blank.To + stock.CrosscutKerf;
        }

        if (filled.Count > 0)
            Reach = Math.Max(Reach, filled[^1].To);
    }

    /// <summary>No wood skipped before wood skipped; then the longest.</summary>
    private DraftBlank? NextBlank(
        long at,
        long to,
        (long Near, long Far) edges,
        int only,
        bool isWhole
    )
    {
        DraftBlank? best = null;
        foreach (var kind in suited)
        {
            if (rest[kind.Index] == 0 || (only >= 0 && only != kind.Index))
                continue;
            for (var turn = 0; turn < (kind.MayTurn ? 2 : 1); turn++)
            {
                var turned = turn == 1;
                var along = kind.Along(turned);
                var across =
                    turned ? kind.Length
                    : isWhole ? kind.WidthBetweenStraightEdges
                    : kind.Width;
                if (across > edges.Far - edges.Near || at + along > to)
                    continue;
                if (best is { } b && b.From == at && b.To - b.From >= along)
                    continue;
                var start = stock.FirstClear(kind, at, along, edges.Near, edges.Far, to);
                if (start == long.MaxValue)
                    continue;
                if (
                    best is not { } other
                    || start < other.From
                    || (start == other.From && along > other.To - other.From)
                )
                    best = new(kind.Index, turned, start, start + along);
            }
        }

        return best;
    }
}
