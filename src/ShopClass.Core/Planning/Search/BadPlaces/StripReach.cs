namespace ShopClass.Core.Planning.Search.BadPlaces;

/// <summary>A stretch of places along a board, both ends included.</summary>
internal readonly record struct Stretch(long From, long To);

/// <summary>
/// Where a strip's blanks can end, whatever their order, for each number of gaps left for bad places: worked out blank by blank
/// for every choice of them, as stretches of places. So it takes no more work for many orders than for one.
/// </summary>
internal sealed class StripReach
{
    private readonly StripOption strip;
    private readonly long leeway;
    private readonly List<Stretch>?[] ends;
    private readonly List<Stretch>[] lastStarts;
    private readonly IReadOnlyList<Stretch>[] clear;
    private readonly int most;

    /// <param name="strip">The strip.</param>
    /// <param name="from">Where its section begins.</param>
    /// <param name="most">The most gaps there is need for.</param>
    /// <param name="clear">For each blank where it may begin.</param>
    /// <param name="leeway">Surplus length the last blank may keep.</param>
    public StripReach(
        StripOption strip,
        long from,
        int most,
        IReadOnlyList<Stretch>[] clear,
        long leeway
    )
    {
        (this.strip, this.leeway, this.most, this.clear) = (strip, leeway, most, clear);
        var count = strip.Blanks.Count;
        var all = (1 << count) - 1;
        ends = new List<Stretch>[(all + 1) * (most + 1)];
        lastStarts = new List<Stretch>[count * (most + 1)];
        Meet(0, 0).Add(new(from - strip.Kerf, from - strip.Kerf));
        for (var placed = 0; placed < all; placed++)
        {
            for (var gaps = 0; gaps <= most; gaps++)
            {
                if (ends[placed * (most + 1) + gaps] is not { Count: > 0 } here)
                    continue;
                here.RemoveAll(s => IsHadWithFewer(placed, gaps, s));
                if (here.Count > 0)
                    Grow(placed, gaps, here, all);
            }
        }

        // Only where all blanks end is asked for later.
        ends = ends[(all * (most + 1))..];
        Soonest = long.MaxValue;
        foreach (var list in ends)
        {
            if (list is { Count: > 0 })
                Soonest = Math.Min(Soonest, list[0].From);
        }

        IsStraight = ends[0] is { Count: > 0 };
    }

    /// <summary>The soonest end; <see cref="long.MaxValue"/> where the blanks do not fit.</summary>
    public long Soonest { get; }

    /// <summary>Whether they can lie end to end from the section's beginning.</summary>
    public bool IsStraight { get; }

    /// <summary>The fewest crosscuts when the section ends there; -1 where the blanks cannot end by then.</summary>
    public int Cuts(long to)
    {
        if (Soonest > to)
            return -1;
        var between = strip.Blanks.Count - 1;
        var fewest = int.MaxValue;
        for (var gaps = 0; gaps <= most && gaps < fewest; gaps++)
        {
            if (ends[gaps] is not { Count: > 0 } here || here[0].From > to)
                continue;
            fewest = Math.Min(fewest, ReachesTo(gaps, to) ? gaps : gaps + 1);
            if (gaps == 0)
                break;
        }

        return between + fewest;
    }

    /// <summary>Whether the last blank can lie so that it ends there, or keeps surplus length up to there.</summary>
    private bool ReachesTo(int gaps, long to)
    {
        for (var i = 0; i < strip.Blanks.Count; i++)
        {
            if (lastStarts[i * (most + 1) + gaps] is not { } starts)
                continue;
            var along = strip.Blanks[i].Along;
            foreach (var start in starts)
            {
                var first = Math.Max(start.From, to - along - leeway);
                var last = Math.Min(start.To, to - along);
                if (first <= last && IsClearOn(i, last, to - along))
                    return true;
            }
        }

        return false;
    }

    /// <summary>Whether a blank that begins there stays clear as it is drawn out until one beginning at the second place would end.</summary>
    private bool IsClearOn(int blank, long start, long drawn)
    {
        foreach (var stretch in clear[blank])
        {
            if (stretch.From <= start && start <= stretch.To)
                return drawn <= stretch.To;
        }

        return false;
    }

    /// <summary>Whether fewer gaps do for these ends.</summary>
    private bool IsHadWithFewer(int placed, int gaps, Stretch stretch)
    {
        for (var fewer = 0; fewer < gaps; fewer++)
        {
            if (ends[placed * (most + 1) + fewer] is not { } list)
                continue;
            foreach (var other in list)
            {
                if (other.From <= stretch.From && stretch.To <= other.To)
                    return true;
            }
        }

        return false;
    }

    private List<Stretch> Meet(int placed, int gaps) => ends[placed * (most + 1) + gaps] ??= [];

    private void Grow(int placed, int gaps, List<Stretch> here, int all)
    {
        for (var i = 0; i < strip.Blanks.Count; i++)
        {
            if ((placed >> i & 1) == 1 || HasTwinBefore(i, placed))
                continue;
            var next = placed | 1 << i;
            foreach (var end in here)
                Add(i, next, gaps, new(end.From + strip.Kerf, end.To + strip.Kerf), all);
            if (gaps < most)
                Add(i, next, gaps + 1, new(here[0].From + strip.Kerf, long.MaxValue), all);
        }
    }

    /// <summary>Notes where the blank can end when it begins in a stretch.</summary>
    private void Add(int blank, int placed, int gaps, Stretch begin, int all)
    {
        var along = strip.Blanks[blank].Along;
        foreach (var good in clear[blank])
        {
            var from = Math.Max(good.From, begin.From);
            var to = Math.Min(good.To, begin.To);
            if (from > to)
                continue;
            Join(Meet(placed, gaps), new(from + along, to + along));
            if (placed == all)
                Join(lastStarts[blank * (most + 1) + gaps] ??= [], new(from, to));
        }
    }

    private static void Join(List<Stretch> list, Stretch more)
    {
        for (var i = list.Count - 1; i >= 0; i--)
        {
            var other = list[i];
            if (other.From > more.To || other.To < more.From)
                continue;
            if (other.From <= more.From && more.To <= other.To)
                return;
            more = new(Math.Min(other.From, more.From), Math.Max(other.To, more.To));
            list.RemoveAt(i);
        }

        var at = list.FindIndex(o => o.From > more.From);
        list.Insert(at < 0 ? list.Count : at, more);
    }

    private bool HasTwinBefore(int i, int placed)
    {
        for (var j = 0; j < i; j++)
        {
            if ((placed >> j & 1) == 0 && strip.Blanks[j] == strip.Blanks[i])
                return true;
        }

        return false;
    }
}
