using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Lessons.Reviewing;

/// <summary>Every step is done once, in whole, in its order, after what it waits for.</summary>
internal static class StepRules
{
    /// <summary>Each step is placed or left over: once, or in shares that make it whole.</summary>
    public static IEnumerable<string> EveryStepOnce(Days days)
    {
        foreach (var student in days.Working)
        {
            var turns = days
                .Plan.Lessons.SelectMany(l => l.Turns)
                .Select(t => t.Turn)
                .Concat(days.Plan.Left)
                .Where(t => t.StudentId == student.StudentId)
                .ToList();
            foreach (var step in student.Work!.Steps)
            {
                var own = turns.Where(t => t.Steps.Contains(step.Number)).ToList();
                var isWhole =
                    own.Count > 0
                    && own.TrueForAll(t => t.Parts == own.Count)
                    && own.Select(t => t.Part)
                        .Order()
                        .SequenceEqual(Enumerable.Range(1, own.Count));
                if (!isWhole)
                    yield return $"{Days.Name(student, step)} is in the plan {own.Count} times.";
            }
        }
    }

    /// <summary>Every turn is a known student's, and for steps there are.</summary>
    public static IEnumerable<string> KnownSteps(Days days)
    {
        foreach (var turn in days.Plan.Lessons.SelectMany(l => l.Turns).Select(t => t.Turn))
        {
            var work = days
                .Request.Students.FirstOrDefault(s => s.StudentId == turn.StudentId)
                ?.Work;
            if (work is null || turn.Steps.Any(n => n < 1 || n > work.Steps.Count))
                yield return $"{days.Name(turn.StudentId)} has a turn for a step that does not exist.";
        }
    }

    /// <summary>A turn is as long as its steps take, and all of them are done at its station with its skill.</summary>
    public static IEnumerable<string> LongEnough(Days days)
    {
        foreach (var student in days.Working)
        foreach (var doing in days.Of(student.StudentId))
        {
            var turn = doing.Placed.Turn;
            var steps = turn.Steps.Select(student.Step).ToList();
            var seconds = steps.Sum(s => s.Time.Busy);
            // A share may be rounded; the shares together are looked at below.
            var least = (seconds / turn.Parts) - (turn.Parts > 1 ? 60 : 0);
            if (turn.Minutes < 1 || turn.Minutes * 60 < least)
                yield return $"{Days.Name(student, steps[0])} gets {turn.Minutes} minutes and takes {seconds} seconds.";
            if (steps.Exists(s => s.Station != turn.Station || s.Skill != turn.Skill))
                yield return $"{Days.Name(student, steps[0])} is not done where the plan says.";
        }

        foreach (var (student, step, given) in Given(days))
        {
            if (given * 60 < step.Time.Busy)
                yield return $"{Days.Name(student, step)} gets {given} minutes in all and takes {step.Time.Busy} seconds.";
        }
    }

    /// <summary>Nothing begins before what it comes after is done and has been left alone long enough.</summary>
    public static IEnumerable<string> InOrder(Days days)
    {
        foreach (var student in days.Working)
        {
            var own = days.Of(student.StudentId);
            foreach (var step in student.Work!.Steps)
            foreach (var before in step.After.Select(student.Step))
            {
                foreach (var doing in own.Where(d => d.Placed.Turn.Steps.Contains(step.Number)))
                {
                    if (!IsBefore(own, before, doing))
                        yield return $"{Days.Name(student, step)} begins before step {before.Number} is done and has been left alone.";
                }
            }

            foreach (var pair in own.Zip(own.Skip(1)))
            {
                var (one, two) = (pair.First.Placed.Turn, pair.Second.Placed.Turn);
                if (one.Parts > 1 && one.Steps.SequenceEqual(two.Steps) && two.Part < one.Part)
                    yield return $"{student.Name}: the shares of step {one.Steps[0]} are out of order.";
            }
        }
    }

    /// <summary>Practice on the student's own waste comes before the real cut of the same skill that follows it.</summary>
    public static IEnumerable<string> PractiseFirst(Days days)
    {
        foreach (var student in days.Working)
        {
            var own = days.Of(student.StudentId);
            foreach (var practice in student.Work!.Steps.Where(s => s.Kind is StepKind.Practise))
            foreach (
                var doing in own.Where(d =>
                    d.Placed.Turn.Steps.Select(student.Step)
                        .Any(s =>
                            s.Number > practice.Number
                            && s.Skill == practice.Skill
                            && s.Kind is not StepKind.Practise
                        )
                )
            )
            {
                if (!IsBefore(own, practice, doing))
                    yield return $"{Days.Name(student, practice)} is practice, and the real cut comes first.";
            }
        }
    }

    private static bool IsBefore(IReadOnlyList<Doing> own, Step before, Doing after)
    {
        var turn = after.Placed.Turn;
        if (turn.Steps.Contains(before.Number))
            return before.Time.Waiting == 0;
        var doings = own.Where(d => d.Placed.Turn.Steps.Contains(before.Number)).ToList();
        return doings.Count > 0
            && doings.Count == doings[0].Placed.Turn.Parts
            && doings.TrueForAll(d => d.Ends * 60 + before.Time.Waiting <= after.Begins * 60);
    }

    private static IEnumerable<(StudentWork Student, Step Step, int Minutes)> Given(Days days) =>
        from student in days.Working
        from step in student.Work!.Steps
        let own = days.Of(student.StudentId)
            .Select(d => d.Placed.Turn)
            .Where(t => t.Steps.Contains(step.Number))
            .ToList()
        where own.Count > 0 && own.Count == own[0].Parts
        select (student, step, own.Sum(t => t.Minutes));
}
