namespace ShopClass.Core.Planning.Search;

/// <summary>
/// Finds a place for a section on a board with bad places: shifts it along, changes the order of its strips and of the
/// blanks in them, and leaves gaps where it must.
/// </summary>
internal sealed class SectionPlacer(Bench bench, Stock stock, Steps steps)
{
    private const int MostPermuted = 4;
    private readonly long leeway = bench.Request.Rules.LengthAllowance.Ticks;

    /// <summary>The section placed at or after a point along the board so that it ends soonest; null when it has no place.</summary>
    public DraftSection? Place(SectionOption option, long from)
    {
        if (from + option.Length > stock.End)
            return null;
        if (IsClear(from, from + option.Length))
            return ClearDraft.Place(option, stock, from, leeway);
        DraftSection? best = null;
        var starts = stock
            .Bad.Select(b => b.To)
            .Where(to => to > from && to + option.Length <= stock.End)
            .Prepend(from)
            .Distinct()
            .Order();
        foreach (var start in starts)
        {
            if (best is not null && start + option.Length >= best.To)
                break;
            foreach (var strips in Orders(option.Strips))
            {
                if (!steps.Take(5))
                    return best;
                var section = Arrange(strips, start);
                if (section is not null && (best is null || section.To < best.To))
                    best = section;
            }
        }

        return best;
    }

    private bool IsClear(long from, long to) => stock.Bad.All(b => b.From >= to || b.To <= from);

    private DraftSection? Arrange(IReadOnlyList<StripOption> strips, long from)
    {
        var near = 0L;
        var placed = new List<DraftStrip>();
        foreach (var strip in strips)
        {
            var target = from + strips.Max(s => s.Length);
            var found = Lay(strip, from, near, target);
            if (found is null)
                return null;
            placed.Add(found);
            near = found.Far + stock.RipKerf;
        }

        return new(from, placed.Max(s => s.Blanks.Max(b => b.To)), placed);
    }

    /// <summary>The strip at the nearest edge where it keeps to the section's length, or else where it ends soonest.</summary>
    private DraftStrip? Lay(StripOption strip, long from, long near, long target)
    {
        DraftStrip? best = null;
        foreach (var edge in Edges(near, strip.Width))
        {
            var laid = LayAt(strip, from, edge);
            if (laid is null)
                continue;
            if (best is null || laid.Blanks[^1].To < best.Blanks[^1].To)
                best = laid;
            if (best.Blanks[^1].To <= target)
                break;
        }

        return best;
    }

    private IEnumerable<long> Edges(long near, long width) =>
        stock
            .Bad.Select(b => b.Far)
            .Where(far => far > near)
            .Prepend(near)
            .Where(edge => edge + width <= stock.Width)
            .Distinct()
            .Order();

    private DraftStrip? LayAt(StripOption strip, long from, long near)
    {
        DraftStrip? best = null;
        foreach (var blanks in Orders(strip.Blanks))
        {
            var laid = LayBlanks(blanks, from, near, near + strip.Width);
            if (laid is not null && (best is null || laid[^1].To < best.Blanks[^1].To))
                best = new(near, near + strip.Width, laid);
            if (best is not null && best.Blanks[^1].To == from + strip.Length)
                break;
        }

        return best;
    }

    private List<DraftBlank>? LayBlanks(IReadOnlyList<Lie> blanks, long from, long near, long far)
    {
        var laid = new List<DraftBlank>(blanks.Count);
        var at = from;
        foreach (var blank in blanks)
        {
            var kind = bench.Kinds[blank.Kind];
            var start = stock.FirstClear(kind, at, blank.Along, near, far, stock.End);
            if (start == long.MaxValue)
                return null;
            laid.Add(new(blank.Kind, blank.Turned, start, start + blank.Along));
            at = start + blank.Along + stock.CrosscutKerf;
        }

        return laid;
    }

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
