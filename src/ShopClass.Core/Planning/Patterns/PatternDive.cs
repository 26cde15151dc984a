namespace ShopClass.Core.Planning.Patterns;

/// <summary>
/// From fractions to whole boards: keeps the patterns the linear programme uses nearly whole, or else the one it uses most,
/// and solves again for what is left; a few second choices are tried too. When that does not reach the number wanted
/// it starts over, bolder or more careful about what is nearly whole, from another solution of the linear programme.
/// </summary>
internal sealed class PatternDive(
    Lengths whole,
    IReadOnlyList<Pattern> known,
    int target,
    Work work
)
{
    /// <summary>How nearly whole is whole enough, start by start.</summary>
    private static readonly double[] Enough = [0.55, 0.8, 0.65, 0.9, 0.7];

    private readonly List<Pattern> pool = [.. known];
    private double enough;
    private int nodes;
    private int variation;

    /// <summary>No more boards than the target, or null when these starts did not find them; the next call goes on from there.</summary>
    public List<Pattern>? Find(int starts, int nodesEach, int breadth)
    {
        for (var last = variation + starts; variation < last && !work.IsUp; variation++)
        {
            (enough, nodes) = (Enough[variation % Enough.Length], nodesEach);
            if (Below([], whole.Counts, breadth) is { } found)
                return found;
        }

        return null;
    }

    private List<Pattern>? Below(List<Pattern> kept, int[] left, int breadth)
    {
        if (work.IsUp || nodes-- <= 0)
            return null;
        var rest = Rest(left, out var kinds);
        if (Finish(rest, kinds, kept) is { } done)
            return done;
        if (rest.Sizes.Length == 0)
            return null;
        var relaxed = new Relaxation(rest, Fitting(rest, kinds), variation);
        relaxed.Solve(target - kept.Count, work);
        if (relaxed.Bound > target - kept.Count)
            return null;
        Remember(relaxed, kinds);
        List<(Pattern Pattern, double Level)> used =
        [
            .. relaxed.Used.Select(u => (Whole(u.Pattern, kinds), u.Level)),
        ];
        List<Pattern> with = [.. kept];
        int[] after = [.. left];
        if (KeepWhole(used, with, after, enough))
            return Below(with, after, breadth);
        List<Pattern> choices = [.. used.OrderByDescending(u => u.Level).Select(u => u.Pattern)];
        foreach (var choice in choices.Take(breadth))
        {
            with = [.. kept];
            after = [.. left];
            Keep(choice, with, after);
            if (Below(with, after, breadth) is { } found)
                return found;
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
        int[] left,
        double enough
    )
    {
        var any = false;
        foreach (var (pattern, level) in used)
        {
            for (var n = 0; n < (int)(level + 1e-3 + 1 - enough); n++)
                any |= Keep(pattern, kept, left);
        }

        return any;
    }

    /// <summary>Keeps a pattern; where a size is used up, the longest shorter one that is left takes its place.</summary>
    private static bool Keep(Pattern pattern, List<Pattern> kept, int[] left)
    {
        var counts = new SortedDictionary<int, int>();
        for (var k = 0; k < pattern.Kinds.Length; k++)
        {
            for (var n = 0; n < pattern.Counts[k]; n++)
            {
                var size = pattern.Kinds[k];
                while (size < left.Length && left[size] == 0)
                    size++;
                if (size == left.Length)
                    break;
                left[size]--;
                counts[size] = counts.GetValueOrDefault(size) + 1;
            }
        }

        if (counts.Count == 0)
            return false;
        kept.Add(new([.. counts.Keys], [.. counts.Values]));
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
