namespace ShopClass.Core.Planning.Search.BadPlaces;

/// <summary>
/// Lays a strip's blanks between two places with as few crosscuts as that takes: blanks end to end are a run, and each run lies
/// as near to the start as bad wood lets it, the last one else so that it ends with the section. All ways include a gap in place
/// of the cut at the end, and gaps of no length, since moving the run on from there may save a line; one way has neither.
/// </summary>
internal sealed class StripLayouts(Stock stock, StripRuns runs, long leeway)
{
    private const int MostKept = 60;
    private const int MostLooks = 2000;
    private const int MostLooksForOne = 50_000;
    private readonly Dictionary<(int, long, long, int), StripLayout?> single = [];
    private readonly Dictionary<(int, long, long, int), StripLayout[]?> several = [];
    private readonly List<StripLayout> found = [];
    private readonly List<Mark> marks = [];
    private readonly HashSet<int> seen = [];
    private StripOption strip = null!;
    private Lie[] order = [];
    private bool[] used = [];
    private long[] begins = [];
    private (long From, long To)[] places = [];
    private int[] firsts = [];
    private bool isOneEnough;
    private int mostGaps;
    private int mostCuts;
    private int looks;
    private long pastAllBad;
    private long from;
    private long to;
    private int bad;

    /// <summary>One way with the fewest cuts; null where the blanks do not fit.</summary>
    public StripLayout? One(StripOption some, long start, long end, int meets)
    {
        var key = (runs.NumberOf(some), start, end, meets);
        if (single.TryGetValue(key, out var layout))
            return layout;
        isOneEnough = true;
        Search(some, start, end, meets);
        // Bad places on either face may stand in the way of the surplus length that was counted on.
        if (found.Count == 0 && mostCuts >= 0)
        {
            mostCuts++;
            seen.Clear();
            looks = 0;
            Grow(0, 1, some.Length + stock.CrosscutKerf);
        }

        layout = found.Count == 0 ? null : found[0];
        single.Add(key, layout);
        return layout;
    }

    /// <summary>All ways with the fewest cuts; null where there are too many to go through, or none is found.</summary>
    public StripLayout[]? All(StripOption some, long start, long end, int meets)
    {
        var key = (runs.NumberOf(some), start, end, meets);
        if (several.TryGetValue(key, out var layouts))
            return layouts;
        isOneEnough = false;
        Search(some, start, end, meets);
        // Without gaps first: of two that are as good, the plainer.
        layouts =
            looks > MostLooks || found.Count is 0 or > MostKept
                ? null
                : [.. found.OrderBy(l => l.Marks.Any(m => m.Moves is not MarkMoves.Not))];
        several.Add(key, layouts);
        return layouts;
    }

    private void Begin(StripOption some, long start, long end, int meets)
    {
        (strip, from, to, bad) = (some, start, end, meets);
        found.Clear();
        seen.Clear();
        looks = 0;
        var count = some.Blanks.Count;
        order = new Lie[count];
        places = new (long, long)[count];
        used = new bool[count];
        begins = new long[count + 2];
        firsts = new int[count + 2];
        begins[0] = start;
        pastAllBad = runs.PastAll(meets, start);
    }

    private void Search(StripOption some, long start, long end, int meets)
    {
        Begin(some, start, end, meets);
        var reach = runs.Reach(some, start, meets);
        mostCuts = reach.Cuts(end);
        if (mostCuts < 0)
            return;
        mostGaps = isOneEnough && reach.IsStraight ? 0 : mostCuts - order.Length + 1;
        Grow(0, 1, strip.Length + stock.CrosscutKerf);
    }

    /// <param name="count">Blanks placed.</param>
    /// <param name="runCount">Runs begun.</param>
    /// <param name="rest">Length of the blanks not placed, a kerf with each.</param>
    private void Grow(int count, int runCount, long rest)
    {
        var (begin, first) = (begins[runCount - 1], firsts[runCount - 1]);
        var next = begin;
        for (var i = first; i < count; i++)
            next += order[i].Along + stock.CrosscutKerf;
        if (next + rest - stock.CrosscutKerf > to || IsEnough() || !runs.Count())
            return;
        if (count == order.Length)
        {
            Finish(runCount);
            return;
        }

        if (isOneEnough && IsSeen(runCount))
            return;
        var any = false;
        for (var i = 0; i < used.Length; i++)
        {
            if (used[i] || HasTwinBefore(i))
                continue;
            // Past all bad places one order is as good as another.
            if (any && isOneEnough && next >= pastAllBad)
                return;
            any = true;
            var blank = strip.Blanks[i];
            var left = rest - blank.Along - stock.CrosscutKerf;
            used[i] = true;
            order[count] = blank;
            if (runCount == 1)
            {
                if (runs.Past(blank.Kind, next, next + blank.Along, bad) is null)
                    Grow(count + 1, runCount, left);
            }
            else if (count > first)
            {
                begins[runCount - 1] = runs.Shift(
                    order.AsSpan(first, count + 1 - first),
                    begin,
                    bad
                );
                Grow(count + 1, runCount, left);
                begins[runCount - 1] = begin;
            }

            // A gap of no length is none, unless what comes after moves on.
            order[count] = blank;
            if (runCount <= mostGaps && !(isOneEnough && next >= pastAllBad))
            {
                begins[runCount] = runs.Shift(order.AsSpan(count, 1), next, bad);
                firsts[runCount] = count;
                Grow(count + 1, runCount + 1, left);
            }

            used[i] = false;
        }
    }

    private bool IsEnough() =>
        ++looks > (isOneEnough ? MostLooksForOne : MostLooks)
        || found.Count > (isOneEnough ? 0 : MostKept);

    /// <summary>Before the first gap only which blanks are placed matters, not their order.</summary>
    private bool IsSeen(int runCount)
    {
        if (runCount > 1)
            return false;
        var bits = 0;
        for (var i = 0; i < used.Length; i++)
            bits |= used[i] ? 1 << i : 0;
        return !seen.Add(bits);
    }

    private void Finish(int runCount)
    {
        Note(runCount, 0, 0);
        if (runCount == 1)
            return;
        var length = -stock.CrosscutKerf;
        for (var i = firsts[runCount - 1]; i < order.Length; i++)
            length += order[i].Along + stock.CrosscutKerf;
        var begin = begins[runCount - 1];
        var flush = to - length;
        var near = ToEnd(firsts[runCount - 1], Math.Max(begin, flush - leeway));
        if (near > flush)
            return;
        var isFlushGood = ToEnd(firsts[runCount - 1], flush) == flush;
        begins[runCount - 1] = isFlushGood ? flush : near;
        Note(runCount, begins[runCount - 1] - near, flush - begins[runCount - 1]);
        begins[runCount - 1] = begin;
    }

    /// <summary>The first place for the last run where its last blank may reach to the section's end.</summary>
    private long ToEnd(int first, long begin)
    {
        while (begin < to)
        {
            begin = runs.Shift(order.AsSpan(first), begin, bad);
            var last = begin;
            for (var i = first; i < order.Length - 1; i++)
                last += order[i].Along + stock.CrosscutKerf;
            if (last >= to || runs.Past(order[^1].Kind, last, to, bad) is not { } past)
                break;
            begin += past - last;
        }

        return begin;
    }

    /// <param name="runCount">Runs there are.</param>
    /// <param name="back">How much nearer the last run might lie and still end with the section.</param>
    /// <param name="on">How much farther on.</param>
    private void Note(int runCount, long back, long on)
    {
        marks.Clear();
        var run = 0;
        var at = begins[0];
        var ready = from;
        var ends = false;
        for (var i = 0; i < order.Length; i++)
        {
            var isMoved = false;
            while (run + 1 < runCount && firsts[run + 1] == i)
            {
                at = begins[++run];
                isMoved = !isOneEnough;
            }

            var end = at + order[i].Along;
            if (
                i == order.Length - 1
                && end < to
                && to - end <= leeway
                && runs.Past(order[i].Kind, at, to, bad) is null
            )
                end = to;
            ends = end == to;
            if (at > ready || isMoved)
                marks.Add(Of(at, run));
            if (end < to)
                marks.Add(Of(end, run));
            places[i] = (at, end);
            at += order[i].Along + stock.CrosscutKerf;
            ready = at;
        }

        Mark Of(long place, int inRun) =>
            inRun == 0 ? new(place, place, place, MarkMoves.Not)
            : inRun == runCount - 1 ? new(place, place - back, place + on, MarkMoves.WithEnd)
            : new(place, place, place, MarkMoves.Freely);

        if (marks.Count != mostCuts)
            return;
        // A last run that has to be cut at its end too may lie anywhere from there on.
        if (!ends && runCount > 1)
        {
            for (var i = 0; i < marks.Count; i++)
            {
                if (marks[i].Moves is MarkMoves.WithEnd)
                    marks[i] = marks[i] with { Moves = MarkMoves.Freely };
            }
        }

        found.Add(
            new(
                [
                    .. order.Select(
                        (b, i) => new DraftBlank(b.Kind, b.Turned, places[i].From, places[i].To)
                    ),
                ],
                [.. marks]
            )
        );
    }

    private bool HasTwinBefore(int i)
    {
        for (var j = 0; j < i; j++)
        {
            if (!used[j] && strip.Blanks[j] == strip.Blanks[i])
                return true;
        }

        return false;
    }
}
