namespace ShopClass.Core.Planning.Patterns;

/// <summary>
/// Whether so many boards, each cut by a pattern of a list, can yield every piece exactly once. The size with the fewest
/// patterns still possible is settled first, by each of them in turn, what the linear programme uses most before the rest.
/// At each such choice the programme's worths strike out the patterns too poor for a plan of the boards left.
/// </summary>
internal sealed class ExactCover(Lengths lengths, int boards, Work work)
{
    private readonly int[] left = [.. lengths.Counts];
    private readonly int[] ways = new int[lengths.Counts.Length];
    private readonly int[] place = new int[lengths.Counts.Length];
    private readonly List<Pattern> kept = [];
    private int nodes;

    /// <summary>Whether the search came to its end, so that finding nothing proves that there is nothing.</summary>
    public bool IsDecided { get; private set; } = true;

    /// <summary>No more than so many boards, or null where there is no way, or none was found before nodes or work ran out.</summary>
    public List<Pattern>? Find(IEnumerable<Pattern> patterns, int mostNodes)
    {
        nodes = mostNodes;
        return Cover([.. patterns]) ? kept : null;
    }

    private bool Cover(List<Pattern> open)
    {
        if (nodes-- <= 0 || !work.Take(open.Count))
            return IsDecided = false;
        open.RemoveAll(p => !Fits(p));
        var scarcest = Scarcest(open);
        if (scarcest < 0)
            return true;
        if (ways[scarcest] == 0 || kept.Count == boards)
            return false;
        var levels = new Dictionary<Pattern, double>();
        if (ways[scarcest] > 1)
        {
            if (!Strike(open, levels))
                return false;
            scarcest = Scarcest(open);
        }

        Pattern[] choices =
        [
            .. open.Where(p => p.Kinds.Contains(scarcest))
                .OrderByDescending(p => levels.GetValueOrDefault(p)),
        ];
        foreach (var choice in choices)
        {
            Take(choice, 1);
            kept.Add(choice);
            if (Cover([.. open]))
                return true;
            kept.RemoveAt(kept.Count - 1);
            Take(choice, -1);
            open.Remove(choice);
        }

        return false;
    }

    /// <summary>Strikes out what cannot lie in a plan of the boards left; false when no plan can.</summary>
    private bool Strike(List<Pattern> open, Dictionary<Pattern, double> levels)
    {
        var at = 0;
        for (var i = 0; i < left.Length; i++)
            place[i] = left[i] > 0 ? at++ : -1;
        var named = open.ToDictionary(
            p => p with { Kinds = [.. p.Kinds.Select(k => place[k])] },
            p => p
        );
        Pattern[] list = [.. named.Keys];
        var programme = new ListProgramme(lengths.With(left), list, work);
        var spare = ((boards - kept.Count) * programme.Most) - programme.Sum;
        if (spare < 0)
            return false;
        foreach (var pattern in list.Where(p => programme.Most - programme.Of(p) > spare))
            named.Remove(pattern);
        open.Clear();
        open.AddRange(list.Where(named.ContainsKey).Select(p => named[p]));
        foreach (var (pattern, level) in programme.Used)
        {
            if (named.TryGetValue(pattern, out var used))
                levels[used] = level;
        }

        return true;
    }

    /// <summary>The size still wanted with the fewest patterns, or -1 when nothing is wanted; counts the ways of each.</summary>
    private int Scarcest(List<Pattern> open)
    {
        Array.Clear(ways);
        foreach (var kind in open.SelectMany(p => p.Kinds))
            ways[kind]++;
        var scarcest = -1;
        for (var i = 0; i < left.Length; i++)
        {
            if (left[i] > 0 && (scarcest < 0 || ways[i] < ways[scarcest]))
                scarcest = i;
        }

        return scarcest;
    }

    private bool Fits(Pattern pattern)
    {
        for (var k = 0; k < pattern.Kinds.Length; k++)
        {
            if (pattern.Counts[k] > left[pattern.Kinds[k]])
                return false;
        }

        return true;
    }

    private void Take(Pattern pattern, int times)
    {
        for (var k = 0; k < pattern.Kinds.Length; k++)
            left[pattern.Kinds[k]] -= times * pattern.Counts[k];
    }
}
