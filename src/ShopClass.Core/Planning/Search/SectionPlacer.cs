using ShopClass.Core.Planning.Search.BadPlaces;

namespace ShopClass.Core.Planning.Search;

/// <summary>
/// Finds a place for a section on a board with bad places: shifts it along, changes the order of its strips and of the
/// blanks in them, and leaves gaps where it must.
/// </summary>
internal sealed class SectionPlacer(Bench bench, Stock stock, Steps steps)
{
    private const int MostPermuted = 4;
    private readonly long leeway = bench.Request.Rules.LengthAllowance.Ticks;

    private readonly Dictionary<(StripOption, (long, long)), Laid> known = new(
        new ByReference<StripOption, (long, long)>()
    );

    /// <summary>The section placed at or after a point along the board so that it ends soonest; null when it has no place.</summary>
    public DraftSection? Place(SectionOption option, long from)
    {
        if (from + option.Length > stock.End)
            return null;
        if (IsClear(from, from + option.Length))
            return ClearDraft.Place(option, stock, from, leeway);
        DraftSection? best = null;
        foreach (var start in Starts(option, from))
        {
            if (best is not null && start + option.Length >= best.To)
                break;
            foreach (var strips in option.Orders)
            {
                if (!steps.Take(5))
                    return best;
                best = Arrange(strips, start, start + option.Length, best?.To) ?? best;
                if (best?.To == start + option.Length)
                    break;
            }
        }

        return best;
    }

    private IEnumerable<long> Starts(SectionOption option, long from) =>
        stock
            .Bad.Select(b => b.To)
            .Where(to => to > from && to + option.Length <= stock.End)
            .Prepend(from)
            .Distinct()
            .Order();

    private bool IsClear(long from, long to)
    {
        foreach (var bad in stock.Bad)
        {
            if (bad.From < to && bad.To > from)
                return false;
        }

        return true;
    }

    /// <summary>The strips beside each other in this order; null where they do not go, or end no sooner than is known to go.</summary>
    private DraftSection? Arrange(
        IReadOnlyList<StripOption> strips,
        long from,
        long target,
        long? before
    )
    {
        var near = 0L;
        var end = 0L;
        var laid = new Laid[strips.Count];
        for (var i = 0; i < laid.Length; i++)
        {
            laid[i] = Lay(strips[i], from, near, target);
            end = Math.Max(end, laid[i].To);
            if (end >= (before ?? long.MaxValue))
                return null;
            near = laid[i].Near + strips[i].Width + stock.RipKerf;
        }

        return new(from, end, [.. strips.Select((s, i) => Written(s, from, laid[i]))]);
    }

    /// <summary>The strip at the nearest edge where it keeps to the section's length, or else where it ends soonest.</summary>
    private Laid Lay(StripOption strip, long from, long near, long target)
    {
        var best = new Laid(near, long.MaxValue, null);
        var edge = near;
        while (edge + strip.Width <= stock.Width)
        {
            var laid = LayAt(strip, from, edge);
            if (laid.To < best.To)
                best = laid;
            if (best.To <= target)
                break;
            var next = long.MaxValue;
            foreach (var bad in stock.Bad)
            {
                if (bad.Far > edge)
                    next = Math.Min(next, bad.Far);
            }

            if (next == long.MaxValue)
                break;
            edge = next;
        }

        return best;
    }

    private Laid LayAt(StripOption strip, long from, long near)
    {
        if (known.TryGetValue((strip, (from, near)), out var best))
            return best;
        best = new(near, long.MaxValue, null);
        foreach (var order in strip.Orders)
        {
            var to = EndOf(order, from, near, near + strip.Width);
            if (to < best.To)
                best = new(near, to, order);
            if (best.To == from + strip.Length)
                break;
        }

        known.Add((strip, (from, near)), best);
        return best;
    }

    /// <summary>Where a strip's blanks end in this order; <see cref="long.MaxValue"/> where they have no room.</summary>
    private long EndOf(StripOrder order, long from, long near, long far)
    {
        var at = from - stock.CrosscutKerf;
        foreach (var blank in order.Blanks)
        {
            var kind = bench.Kinds[blank.Kind];
            var ready = at + stock.CrosscutKerf;
            var start = stock.FirstClear(kind, ready, blank.Along, near, far, stock.End);
            if (start == long.MaxValue)
                return start;
            at = start + blank.Along;
        }

        return at;
    }

    private DraftStrip Written(StripOption strip, long from, Laid laid)
    {
        var (near, far) = (laid.Near, laid.Near + strip.Width);
        var blanks = new List<DraftBlank>();
        var at = from;
        foreach (var blank in laid.Order!.Blanks)
        {
            var kind = bench.Kinds[blank.Kind];
            var start = stock.FirstClear(kind, at, blank.Along, near, far, stock.End);
            blanks.Add(new(blank.Kind, blank.Turned, start, start + blank.Along));
            at = start + blank.Along + stock.CrosscutKerf;
        }

        return new(near, far, blanks);
    }

    /// <summary>A strip from its near edge, its blanks in the order in which they end soonest, and where that is.</summary>
    private readonly record struct Laid(long Near, long To, StripOrder? Order);

    /// <summary>All orders of a few things; of many, as they are and backwards.</summary>
    internal static IEnumerable<IReadOnlyList<T>> Orders<T>(IReadOnlyList<T> things)
    {
        if (things.Count == 1)
            return [things];
        if (things.Count > MostPermuted)
            return [things, [.. things.Reverse()]];
        return Permute(things, 0);
    }

    private static IEnumerable<IReadOnlyList<T>> Permute<T>(IReadOnlyList<T> things, int fixedCount)
    {
        if (fixedCount >= things.Count - 1)
        {
            yield return things;
            yield break;
        }

        for (var i = fixedCount; i < things.Count; i++)
        {
            var seen = false;
            for (var j = fixedCount; j < i && !seen; j++)
                seen = EqualityComparer<T>.Default.Equals(things[j], things[i]);
            if (seen)
                continue;
            T[] next = [.. things];
            (next[fixedCount], next[i]) = (next[i], next[fixedCount]);
            foreach (var order in Permute(next, fixedCount + 1))
                yield return order;
        }
    }
}
