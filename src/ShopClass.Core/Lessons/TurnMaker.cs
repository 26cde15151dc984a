using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Lessons;

/// <summary>Cuts a student's steps into turns.</summary>
public static class TurnMaker
{
    /// <summary>
    /// Steps on end at one station are one turn up to so many minutes; a longer step is cut into shares no longer than this
    /// (our proposal: long enough to get going, short enough to share a saw bench).
    /// </summary>
    public const int LongestTurn = 20;

    /// <summary>The turns of all students, student by student, in the order of their steps.</summary>
    /// <param name="students">The students.</param>
    /// <param name="isDoneBefore">Steps that somebody has done before the course; null for none.</param>
    public static IReadOnlyList<TurnToPlace> Of(
        IReadOnlyList<StudentWork> students,
        Func<Step, bool>? isDoneBefore = null
    )
    {
        var turns = new List<TurnToPlace>();
        foreach (var student in students)
        {
            if (student.Work is { } work)
                Add(student.StudentId, work.Steps, isDoneBefore ?? (_ => false), turns);
        }

        return turns;
    }

    /// <summary>Minutes of work in some seconds, rounded up, never none.</summary>
    public static int MinutesOf(int seconds) => Math.Max(1, (seconds + 59) / 60);

    private static void Add(
        string student,
        IReadOnlyList<Step> steps,
        Func<Step, bool> isDoneBefore,
        List<TurnToPlace> turns
    )
    {
        // For each step, the turns after which it is done; a step done before the course passes on what it waited for.
        var doneBy = new SortedSet<int>[steps.Count + 1];
        // A skill may be practised more than once, at different stations: every practice comes before the real cut.
        var practised = new SortedDictionary<Skill, SortedSet<int>>();
        foreach (var group in Groups(steps, isDoneBefore))
        {
            var after = new SortedSet<int>(
                group.SelectMany(s => s.After).SelectMany(n => doneBy[n] ?? [])
            );
            if (NeededBy(group[0], steps) is { } user)
                after.UnionWith(user.After.SelectMany(n => doneBy[n] ?? []));
            if (isDoneBefore(group[0]))
            {
                doneBy[group[0].Number] = after;
                continue;
            }

            var isPractice = group[0].Kind is StepKind.Practise;
            if (!isPractice && practised.TryGetValue(group[0].Skill, out var practices))
                after.UnionWith(practices);
            var parts = PartsOf(group);
            for (var part = 1; part <= parts; part++)
            {
                turns.Add(TurnOf(student, group, part, parts, [.. after]));
                after = [turns.Count - 1];
            }

            foreach (var step in group)
                doneBy[step.Number] = after;
            if (isPractice)
            {
                practised.TryAdd(group[0].Skill, []);
                practised[group[0].Skill].Add(turns.Count - 1);
            }
        }
    }

    // A gauge is set, and a cut practised, just before it is needed, not weeks ahead: it waits for what its user waits for.
    private static Step? NeededBy(Step step, IReadOnlyList<Step> steps) =>
        step.Kind is not (StepKind.Practise or StepKind.SetGauge)
            ? null
            : steps.FirstOrDefault(s => s.After.Contains(step.Number))
                ?? steps.FirstOrDefault(s =>
                    s.Number > step.Number
                    && s.Skill == step.Skill
                    && s.Kind is not StepKind.Practise
                );

    private static TurnToPlace TurnOf(
        string student,
        List<Step> group,
        int part,
        int parts,
        IReadOnlyList<int> after
    )
    {
        var seconds = group.Sum(s => s.Time.Busy);
        var share = (seconds * part / parts) - (seconds * (part - 1) / parts);
        return new(
            new(
                student,
                [.. group.Select(s => s.Number)],
                group[0].Skill,
                group[0].Station,
                MinutesOf(share),
                part,
                parts
            ),
            after,
            part == parts ? (group[^1].Time.Waiting + 59) / 60 : 0
        );
    }

    // Glue does not wait, and what is being put together cannot be put down halfway.
    private static int PartsOf(List<Step> group) =>
        group.Count > 1 || group[0].Kind is StepKind.GlueUp or StepKind.Assemble
            ? 1
            : (MinutesOf(group[0].Time.Busy) + LongestTurn - 1) / LongestTurn;

    private static IEnumerable<List<Step>> Groups(
        IReadOnlyList<Step> steps,
        Func<Step, bool> isDoneBefore
    )
    {
        var group = new List<Step>();
        foreach (var step in steps)
        {
            if (
                group.Count > 0
                && (isDoneBefore(step) || isDoneBefore(group[0]) || !Joins(group, step))
            )
            {
                yield return group;
                group = [];
            }

            group.Add(step);
        }

        if (group.Count > 0)
            yield return group;
    }

    private static bool Joins(List<Step> group, Step step) =>
        group[^1].Time.Waiting == 0
        && group[0].Station == step.Station
        && group[0].Skill == step.Skill
        && (group[0].Kind is StepKind.Practise) == (step.Kind is StepKind.Practise)
        && MinutesOf(group.Sum(s => s.Time.Busy) + step.Time.Busy) <= LongestTurn;
}
