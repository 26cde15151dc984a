namespace ShopClass.Core.Planning.Patterns;

/// <summary>
/// From fractions to whole boards: keeps the patterns the linear programme uses whole times, then the one it uses most, and
/// solves again for what is left. When that does not reach the number wanted, it starts over with the second choice at
/// one place, then at two (limited discrepancy search, Harvey and Ginsberg 1995).
/// </summary>
internal sealed class PatternDive(
    Lengths whole,
    IReadOnlyList<Pattern> known,
    int target,
    Work work
)
{
    private readonly List<Pattern> pool = [.. known];

    /// <summary>Boards no more than the target, or null when none were found.</summary>
    public List<Pattern>? Find(int discrepancies, int deepest)
    {
        for (var most = 0; most <= discrepancies; most++)
        {
            if (Below([], [.. whole.Counts], most, deepest) is { } found)
                return found;
            if (work.IsUp)
                return null;
        }

        return null;
    }

    private List<Pattern>? Below(List<Pattern> kept, int[] left, int others, int deepest)
    {
        kept = [.. kept];
        left = [.. left];
        while (!work.IsUp)
        {
            var rest = Rest(left, out var kinds);
            if (Finish(rest, kinds, kept) is { } done)
                return done;
            if (rest.Sizes.Length == 0)
                return null;
            var relaxed = new Relaxation(rest, Fitting(rest, kinds));
            relaxed.Solve(target - kept.Count, work);
            if (relaxed.Bound > target - kept.Count)
                return null;
            Remember(relaxed, kinds);
            List<(Pattern Pattern, double Level)> used =
            [
                .. relaxed.Used.Select(u => (Whole(u.Pattern, kinds), u.Level)),
            ];
            if (KeepWhole(used, kept, left))
                continue;
            List<Pattern> choices =
            [
                .. used.OrderByDescending(u => u.Level).Select(u => u.Pattern),
            ];
            if (others > 0 && deepest > 0)
            {
                for (var other = 1; other <= Math.Min(others, choices.Count - 1); other++)
                {
                    List<Pattern> with = [.. kept];
                    int[] after = [.. left];
                    Keep(choices[other], with, after);
                    if (Below(with, after, others - other, deepest - 1) is { } found)
                        return found;
                }

                deepest--;
            }

            Keep(choices[0], kept, left);
        }

        return null;
    }

    private Lengths Rest(int[] left, out int[] kinds)
    {
        kinds = [.. Enumerable.Range(0, left.Length).Where(i => left[i] > 0)];
        return whole.With(left);
    }

    private List<Pattern>? Finish(Lengths rest, int[] kinds, List<Pattern> kept)
    {
        var room = target - kept.Count;
        if (room < 0)
            return null;
        var filled = BestFit.Fill(rest);
        if (filled.Count > room)
            filled = BestFit.FillWithLeastSlack(rest, work);
        return filled.Count > room
            ? null
            : [.. kept, .. filled.Select(b => Whole(Pattern.Of(b), kinds))];
    }

    private static bool KeepWhole(
        List<(Pattern Pattern, double Level)> used,
        List<Pattern> kept,
        int[] left
    )
    {
        var any = false;
        foreach (var (pattern, level) in used)
        {
            for (var n = 0; n < (int)(level + 1e-4); n++)
                any |= Keep(pattern, kept, left);
        }

        return any;
    }

    private static bool Keep(Pattern pattern, List<Pattern> kept, int[] left)
    {
        int[] counts =
        [
            .. pattern.Kinds.Select((kind, k) => Math.Min(left[kind], pattern.Counts[k])),
        ];
        if (counts.All(c => c == 0))
            return false;
        var yields = Enumerable.Range(0, counts.Length).Where(k => counts[k] > 0).ToArray();
        for (var k = 0; k < counts.Length; k++)
            left[pattern.Kinds[k]] -= counts[k];
        kept.Add(
            new([.. yields.Select(k => pattern.Kinds[k])], [.. yields.Select(k => counts[k])])
        );
        return true;
    }

    private static Pattern Whole(Pattern pattern, int[] kinds) =>
        pattern with
        {
            Kinds = [.. pattern.Kinds.Select(k => kinds[k])],
        };

    /// <summary>The known patterns that yield no more than is left.</summary>
    private IEnumerable<Pattern> Fitting(Lengths rest, int[] kinds)
    {
        var place = new int[whole.Sizes.Length];
        Array.Fill(place, -1);
        for (var i = 0; i < kinds.Length; i++)
            place[kinds[i]] = i;
        foreach (var pattern in pool)
        {
            var fits = true;
            for (var k = 0; k < pattern.Kinds.Length && fits; k++)
            {
                var at = place[pattern.Kinds[k]];
                fits = at >= 0 && pattern.Counts[k] <= rest.Counts[at];
            }

            if (fits)
                yield return pattern with
                {
                    Kinds = [.. pattern.Kinds.Select(k => place[k])],
                };
        }
    }

    private void Remember(Relaxation relaxed, int[] kinds)
    {
        foreach (var (pattern, _) in relaxed.Used)
            pool.Add(Whole(pattern, kinds));
    }
}
