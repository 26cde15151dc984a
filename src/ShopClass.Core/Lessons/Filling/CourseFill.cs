using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Lessons.Filling;

/// <summary>All lessons run one after the other by one habit.</summary>
internal static class CourseFill
{
    /// <summary>One run.</summary>
    /// <param name="roster">The class.</param>
    /// <param name="habit">How it is run.</param>
    /// <param name="leastLeft">The bound that goes with the plan.</param>
    /// <param name="shows">What is shown in each lesson; null leaves that to the run.</param>
    public static LessonPlan Run(
        Roster roster,
        Habit habit,
        int leastLeft,
        IReadOnlyList<IReadOnlyList<Skill>>? shows = null
    )
    {
        var ledger = new Ledger(roster);
        var programs = new List<LessonProgram>();
        for (var l = 0; l < roster.Minutes.Length; l++)
        {
            var fill = shows is null
                ? BestFill(roster, ledger, l, habit)
                : new LessonFill(roster, ledger, l, habit, shows[l]);
            ledger = fill.Ledger;
            programs.Add(
                new(
                    fill.Showings,
                    [
                        .. fill
                            .Placed.OrderBy(p => p.Placed.Start)
                            .ThenBy(p => p.Turn)
                            .Select(p => p.Placed),
                    ]
                )
            );
        }

        List<Turn> left =
        [
            .. Enumerable
                .Range(0, roster.Turns.Count)
                .Where(t => !ledger.IsDone(t))
                .Select(t => roster.Turns[t].Turn),
        ];
        return new(programs, left, Scoring.Of(roster.Request, programs, left), leastLeft);
    }

    // Skills nobody has put into a lesson are shown where they begin to hold the class up.
    private static LessonFill BestFill(Roster roster, Ledger before, int lesson, Habit habit)
    {
        List<Skill> shows = [.. roster.Request.Lessons[lesson].Shows];
        var best = new LessonFill(roster, before, lesson, habit, shows);
        while (Held(roster, best.Ledger, lesson) is { } skill && !shows.Contains(skill))
        {
            var more = new LessonFill(roster, before, lesson, habit, [.. shows, skill]);
            var isBetter =
                more.Worked > best.Worked
                || habit.ShowsEarly
                    && more.Used > best.Used
                    && more.Placed.Exists(p => p.Placed.Turn.Skill == skill);
            if (!isBetter)
                break;
            shows.Add(skill);
            best = more;
        }

        return best;
    }

    // The skill not yet shown, and shown in no later lesson by wish, that most minutes of ready work wait for.
    private static Skill? Held(Roster roster, Ledger ledger, int lesson)
    {
        var waits = new int[Ledger.Skills];
        for (var t = 0; t < roster.Turns.Count; t++)
        {
            var turn = roster.Turns[t];
            if (
                !ledger.IsDone(t)
                && !ledger.WasShown((int)turn.Turn.Skill)
                && roster.Attends(roster.StudentOf[t], lesson)
                && ledger.ReadyAt(turn) is not null
            )
                waits[(int)turn.Turn.Skill] += turn.Turn.Minutes;
        }

        foreach (var wished in roster.Request.Lessons.SelectMany(l => l.Shows))
            waits[(int)wished] = 0;
        var most = waits.Max();
        return most == 0 ? null : (Skill)Array.IndexOf(waits, most);
    }
}
