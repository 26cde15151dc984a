namespace ShopClass.Core.Sawing.Steps.Rehearsing;

/// <summary>What must hold of the order of the steps.</summary>
internal static class OrderRules
{
    public static IEnumerable<Finding> StepsMustBeNumberedInOrderAndNamedOnce(StepRun run)
    {
        foreach (var (step, i) in run.Work.Steps.Select((s, i) => (s, i)))
        {
            if (step.Number != i + 1)
            {
                yield return Noticed.Must(
                    step,
                    $"it stands at place {i + 1}; steps count up from 1, one by one."
                );
                yield break;
            }
        }

        foreach (var twice in run.Work.Steps.GroupBy(s => s.Id).Where(g => g.Count() > 1))
            yield return Noticed.Must(
                twice.Last(),
                $"its name {twice.Key} is taken by step {twice.First().Number}."
            );
    }

    public static IEnumerable<Finding> StepsMustComeAfterThoseTheyWaitFor(StepRun run) =>
        from step in run.Work.Steps
        from after in step.After
        where after < 1 || after >= step.Number
        select Noticed.Must(step, $"it waits for step {after}, which does not come before it.");

    public static IEnumerable<Finding> WorkOnAPieceMustWaitForTheWorkBefore(StepRun run) =>
        from done in run.Done
        from piece in done.Before
        where piece.Touched > 0 && !run.IsAlwaysBefore(piece.Touched, done.Step)
        select Noticed.Must(
            done.Step,
            $"it works on {piece.Name}, but does not wait for step {piece.Touched}, which worked on it before."
        );
}
