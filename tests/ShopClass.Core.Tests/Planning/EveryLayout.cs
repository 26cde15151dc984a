using System.Numerics;
using ShopClass.Core.Lumber;
using ShopClass.Core.Planning;

namespace ShopClass.Core.Tests.Planning;

/// <summary>
/// The best plan on one tiny board with bad places by trying every layout whose places are whole units: sections, strips
/// and blanks anywhere, in any order. Works from the written rules of <see cref="PlanGoal"/>; nothing of the planner is used.
/// </summary>
/// <remarks>
/// A strip is at least as wide as its widest blank; the surplus all strips of a section keep is less than an offcut worth
/// keeping with its kerf. Blanks of a strip may lie with gaps, but end to end where the board is clear between its trims. The last blank of a strip may reach to the section's end, by no
/// more than the length allowance.
/// </remarks>
internal sealed class EveryLayout(
    (int Along, int Across, bool MayHide)[] blanks,
    (int From, int To, int Near, int Far, DefectReach Reach)[] bad,
    int start,
    int end,
    int width,
    int kerf,
    int leeway,
    int keepable,
    IReadOnlyList<PlanGoal> order
)
{
    /// <summary>Sawing (rips weigh 3, crosscuts 4), lines, and how far from the board's start it reaches.</summary>
    public readonly record struct Worth(long Sawing, int Lines, int Length)
    {
        public static Worth operator +(Worth a, Worth b) =>
            new(a.Sawing + b.Sawing, a.Lines + b.Lines, a.Length + b.Length);
    }

    private readonly bool isClear = !bad.Any(b => b.From < end && b.To > start);
    private readonly Dictionary<(int, int), Worth?> known = [];
    private readonly Dictionary<(int, int, int, int, int), HashSet<(int, int)>> strips = [];
    private readonly Dictionary<(int, int, int), HashSet<(long, int)>> sections = [];

    /// <summary>The best there is for some of the blanks (bits), or null where not all of these fit.</summary>
    public Worth? Best(int some)
    {
        var trim = start > 0 ? (4L * width, 1) : (0, 0);
        return Rest(some, start) is { } best
            ? best with
            {
                Sawing = best.Sawing + trim.Item1,
                Lines = best.Lines + trim.Item2,
            }
            : null;
    }

    /// <summary>Which is better, by the goals in their order.</summary>
    public int Compare(Worth a, Worth b)
    {
        foreach (var goal in order)
        {
            var by = goal switch
            {
                PlanGoal.SawingEffort => a.Sawing.CompareTo(b.Sawing),
                PlanGoal.Lines => a.Lines.CompareTo(b.Lines),
                PlanGoal.LengthUsed => a.Length.CompareTo(b.Length),
                _ => 0,
            };
            if (by != 0)
                return by;
        }

        return 0;
    }

    private Worth? Rest(int left, int ready)
    {
        if (left == 0)
            return new(0, 0, ready - kerf);
        if (known.TryGetValue((left, ready), out var best))
            return best;
        for (var from = ready; from < end; from++)
        {
            for (var to = from + 1; to <= end; to++)
            {
                for (var some = left; some > 0; some = (some - 1) & left)
                {
                    var here = Section(some, from, to);
                    if (here.Count == 0 || Rest(left & ~some, to + kerf) is not { } rest)
                        continue;
                    var ends = from > ready ? 2 : 1;
                    foreach (var (sawing, lines) in here)
                    {
                        var sum = new Worth(
                            sawing + ends * 4L * width + rest.Sawing,
                            lines + ends + rest.Lines,
                            rest.Length
                        );
                        if (best is null || Compare(sum, best.Value) < 0)
                            best = sum;
                    }
                }
            }
        }

        known.Add((left, ready), best);
        return best;
    }

    /// <summary>Sawing and lines inside a section of these blanks, apart from its ends.</summary>
    private HashSet<(long, int)> Section(int some, int from, int to)
    {
        if (sections.TryGetValue((some, from, to), out var found))
            return found;
        found = [];
        Across(some, from, to, 0, 0, (0, 0, 0), found);
        sections.Add((some, from, to), found);
        return found;
    }

    private void Across(
        int left,
        int from,
        int to,
        int ready,
        int surplus,
        (int Rips, long Crosscut, int Marks) sum,
        HashSet<(long, int)> found
    )
    {
        for (var some = left; some > 0; some = (some - 1) & left)
        {
            var need = Enumerable
                .Range(0, blanks.Length)
                .Where(i => (some >> i & 1) == 1)
                .Max(i => blanks[i].Across);
            for (var near = ready; near + need <= width; near++)
            {
                for (var far = near + need; far <= width; far++)
                {
                    var kept = surplus + far - near - need;
                    if (kept >= keepable)
                        break;
                    foreach (var (cuts, marks) in Strip(some, from, to, near, far))
                    {
                        var next = (
                            sum.Rips + (near > ready ? 1 : 0) + (far < width ? 1 : 0),
                            sum.Crosscut + (long)cuts * need,
                            sum.Marks | marks
                        );
                        if (some != left)
                            Across(left & ~some, from, to, far + kerf, kept, next, found);
                        else
                            found.Add(
                                (
                                    3L * next.Item1 * (to - from) + 4L * next.Item2,
                                    next.Item1 + BitOperations.PopCount((uint)next.Item3)
                                )
                            );
                    }
                }
            }
        }
    }

    /// <summary>Numbers of cuts and their places, of all ways to lay these blanks in a strip.</summary>
    private HashSet<(int, int)> Strip(int some, int from, int to, int near, int far)
    {
        if (strips.TryGetValue((some, from, to, near, far), out var found))
            return found;
        found = [];
        Along(some, from, (to, near, far), (0, 0), found);
        strips.Add((some, from, to, near, far), found);
        return found;
    }

    private void Along(
        int left,
        int ready,
        (int To, int Near, int Far) strip,
        (int Cuts, int Marks) sum,
        HashSet<(int, int)> found
    )
    {
        if (left == 0)
        {
            found.Add((sum.Cuts, sum.Marks));
            return;
        }

        for (var i = 0; i < blanks.Length; i++)
        {
            if ((left >> i & 1) == 0)
                continue;
            var last = isClear ? ready : strip.To;
            for (var at = ready; at <= last && at + blanks[i].Along <= strip.To; at++)
            {
                var until = at + blanks[i].Along;
                if (!IsGood(i, at, until, strip.Near, strip.Far))
                    continue;
                var before = at > ready ? 1 : 0;
                var so = sum with
                {
                    Cuts = sum.Cuts + before,
                    Marks = before == 1 ? sum.Marks | 1 << at : sum.Marks,
                };
                var cut = so with { Cuts = so.Cuts + 1, Marks = so.Marks | 1 << until };
                if (until < strip.To)
                    Along(left & ~(1 << i), until + kerf, strip, cut, found);
                var reaches =
                    left == 1 << i
                    && strip.To - until <= leeway
                    && IsGood(i, at, strip.To, strip.Near, strip.Far);
                if (until == strip.To || reaches)
                    Along(left & ~(1 << i), strip.To + kerf, strip, so, found);
            }
        }
    }

    private bool IsGood(int blank, int from, int to, int near, int far)
    {
        var inside = bad.Where(b => b.From < to && b.To > from && b.Near < far && b.Far > near)
            .ToList();
        return inside.Count == 0
            || (
                blanks[blank].MayHide
                && inside[0].Reach is not DefectReach.Through
                && inside.All(b => b.Reach == inside[0].Reach)
            );
    }
}
