namespace ShopClass.Core.Planning.Search.BadPlaces;

/// <summary>Where blanks that lie end to end (a run) are clear of bad wood.</summary>
internal sealed class StripRuns(Bench bench, Stock stock, long leeway, Steps steps)
{
    private readonly Dictionary<StripOption, int> numbers = new(ReferenceEqualityComparer.Instance);

    private readonly Dictionary<(int, long, int), StripReach> reaches = [];
    private readonly Dictionary<(int, long, int), IReadOnlyList<Stretch>> clear = [];

    /// <summary>Where the strip's blanks can end from there, where its band meets these bad places (bits).</summary>
    public StripReach Reach(StripOption strip, long from, int bad)
    {
        // What lies behind is in nobody's way.
        for (var i = 0; bad >> i != 0; i++)
            bad &= stock.Bad[i].To <= from ? ~(1 << i) : -1;
        var key = (NumberOf(strip), from, bad);
        if (reaches.TryGetValue(key, out var reach))
            return reach;
        var count = strip.Blanks.Count;
        var most = Math.Min(count, System.Numerics.BitOperations.PopCount((uint)bad));
        steps.Take(1 + (1 << count) * count * (most + 1) / 6);
        reach = new(strip, from, most, [.. strip.Blanks.Select(b => Clear(b, bad))], leeway);
        reaches.Add(key, reach);
        return reach;
    }

    /// <summary>Where a blank may begin among these bad places (bits).</summary>
    private IReadOnlyList<Stretch> Clear(Lie blank, int bad)
    {
        var key = (blank.Kind, blank.Along, bad);
        if (clear.TryGetValue(key, out var known))
            return known;
        var last = stock.End - blank.Along;
        var stops = new SortedSet<long> { stock.Start, last };
        for (var i = 0; bad >> i != 0; i++)
        {
            if ((bad >> i & 1) == 1)
                stops.UnionWith([stock.Bad[i].From - blank.Along, stock.Bad[i].To]);
        }

        bool IsGood(long at) => Past(blank.Kind, at, at + blank.Along, bad) is null;
        var found = new List<Stretch>();
        long? open = null;
        long before = 0;
        foreach (var stop in stops.Where(s => s >= stock.Start && s <= last))
        {
            // Between two stops all is as it is just after the first; at a stop itself touching is no harm.
            if (open is { } from && !(stop == before + 1 || IsGood(before + 1)))
            {
                found.Add(new(from, before));
                open = null;
            }

            if (open is null && IsGood(stop))
                open = stop;
            else if (open is { } since && !IsGood(stop))
            {
                found.Add(new(since, stop - 1));
                open = null;
            }

            before = stop;
        }

        if (open is { } begun)
            found.Add(new(begun, before));
        clear.Add(key, found);
        return found;
    }

    /// <summary>A number that stands for the strip.</summary>
    public int NumberOf(StripOption strip)
    {
        if (!numbers.TryGetValue(strip, out var number))
            numbers.Add(strip, number = numbers.Count);
        return number;
    }

    /// <summary>Null where the blank may lie there; otherwise the nearest place past something in its way.</summary>
    public long? Past(int kind, long from, long to, int bad)
    {
        long? marked = null;
        long? back = null;
        for (var i = 0; bad >> i != 0; i++)
        {
            if ((bad >> i & 1) == 0)
                continue;
            var place = stock.Bad[i];
            if (place.From >= to || place.To <= from)
                continue;
            if (!bench.Kinds[kind].AcceptsHiddenDefect || place.Reach is Lumber.DefectReach.Through)
                return place.To;
            if (place.Reach is Lumber.DefectReach.MarkedFace)
                marked = Math.Min(marked ?? long.MaxValue, place.To);
            else
                back = Math.Min(back ?? long.MaxValue, place.To);
        }

        return marked is null || back is null ? null : Math.Min(marked.Value, back.Value);
    }

    /// <summary>Where the last of these bad places ends, or the place given if that is farther on.</summary>
    public long PastAll(int bad, long from)
    {
        for (var i = 0; bad >> i != 0; i++)
            from = (bad >> i & 1) == 1 ? Math.Max(from, stock.Bad[i].To) : from;
        return from;
    }

    /// <summary>The first place at or after <paramref name="at"/> where these blanks may lie end to end.</summary>
    public long Shift(ReadOnlySpan<Lie> run, long at, int bad)
    {
        var isMoved = true;
        while (isMoved)
        {
            isMoved = false;
            var begin = at;
            foreach (var blank in run)
            {
                if (Past(blank.Kind, begin, begin + blank.Along, bad) is { } past)
                {
                    at += past - begin;
                    isMoved = true;
                    break;
                }

                begin += blank.Along + stock.CrosscutKerf;
            }
        }

        return at;
    }

    /// <summary>Counts a look; false when the search must end.</summary>
    public bool Count() => steps.Take();
}
