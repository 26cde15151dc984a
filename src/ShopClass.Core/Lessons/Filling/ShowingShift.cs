using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Lessons.Filling;

/// <summary>Tries demonstrations in other lessons, one at a time, for as long as the plan gets better.</summary>
internal static class ShowingShift
{
    private const int Passes = 3;

    private static readonly int[] Shifts = [-1, 1, -2, 2];

    /// <summary>The plan with its demonstrations where they serve best. What the instructor put into a lesson stays there.</summary>
    public static LessonPlan Improve(
        Roster roster,
        Habit habit,
        LessonPlan plan,
        CancellationToken cancel
    )
    {
        var wished = roster.Request.Lessons.SelectMany(l => l.Shows).ToHashSet();
        for (var pass = 0; pass < Passes; pass++)
        {
            var before = plan;
            foreach (
                var skill in SkillBook.Entries.Select(e => e.Skill).Where(s => !wished.Contains(s))
            )
            {
                cancel.ThrowIfCancellationRequested();
                plan = Shifted(roster, habit, plan, skill);
            }

            if (plan == before)
                break;
        }

        return plan;
    }

    private static LessonPlan Shifted(Roster roster, Habit habit, LessonPlan plan, Skill skill)
    {
        List<Skill>[] shows =
        [
            .. plan.Lessons.Select(l =>
                l.Showings.Where(s => s.StudentId is null).Select(s => s.Skill).ToList()
            ),
        ];
        var at = Array.FindIndex(shows, s => s.Contains(skill));
        var best = plan;
        foreach (
            var to in Shifts.Select(s => at + s).Where(l => at >= 0 && l >= 0 && l < shows.Length)
        )
        {
            List<Skill>[] moved = [.. shows.Select(s => s.ToList())];
            moved[at].Remove(skill);
            moved[to].Add(skill);
            var tried = CourseFill.Run(roster, habit, plan.LeastLeft, moved);
            if (tried.Score < best.Score)
                best = tried;
        }

        return best;
    }
}
