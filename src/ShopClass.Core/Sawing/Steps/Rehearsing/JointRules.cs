using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Steps.Rehearsing;

/// <summary>What must hold of joints, putting together and finishing.</summary>
internal static class JointRules
{
    public static IEnumerable<Finding> EveryJointMustBeCut(StepRun run)
    {
        var cuts = run.Work.Steps.Where(s => s.Kind is StepKind.CutJoint).ToList();
        foreach (var joint in run.Project.Joints.Where(j => j.Kind is not JointKind.Nailed))
        foreach (
            var piece in run.Final.Where(p => p.Part?.Letter == joint.Part && p.Key is { Strip: 0 })
        )
        {
            var isPossible =
                joint.Mate is null
                || run.Final.Any(p => p.Part?.Letter == joint.Mate && p.Key is { Strip: 0 });
            if (isPossible && !cuts.Exists(s => s.Pieces.Contains(piece.Name)))
                yield return Noticed.Must(
                    piece.Name,
                    $"{piece.Name} has a joint with {joint.Mate ?? "nothing else"} that no step cuts."
                );
        }
    }

    public static IEnumerable<Finding> JointsMustBeCutInPiecesAtSize(StepRun run) =>
        from done in run.Done
        where done.Step.Kind is StepKind.MarkJoint or StepKind.CutJoint
        from piece in done.Before
        where piece.Part is not null
        from dimension in new[] { PartDimension.Width, PartDimension.Length }
        let wanted = StepRun.Wanted(
            piece.Part!,
            dimension,
            run.IsClosedBy(piece.Name, dimension, done.Step.Number - 1)
        )
        where piece.SizeOf(dimension) != wanted
        select Noticed.Must(
            done.Step,
            $"{piece.Name} is not at its {dimension.ToString().ToLowerInvariant()} yet.",
            piece.SizeOf(dimension) - wanted
        );

    public static IEnumerable<Finding> JointsMustLeaveWood(StepRun run)
    {
        foreach (var joint in run.Project.Joints)
        foreach (
            var piece in run.Final.Where(p => p.Part?.Letter == joint.Part && p.Key is { Strip: 0 })
        )
        {
            var room = joint.Kind switch
            {
                JointKind.Dado or JointKind.Rabbet or JointKind.HalfLap => piece.Thickness,
                JointKind.Notch => piece.Width,
                _ => Length.FromTicks(long.MaxValue),
            };
            if (joint.Depth >= room)
                yield return Noticed.Must(
                    piece.Name,
                    $"The {joint.Kind.Words()} in {piece.Name} goes right through it.",
                    joint.Depth - room
                );
        }
    }

    public static IEnumerable<Finding> EverythingMustFitBeforeItIsPutTogether(StepRun run)
    {
        foreach (var assembly in run.Work.Steps.Where(s => s.Kind is StepKind.Assemble))
        foreach (
            var earlier in run.Work.Steps.Where(s => s.Kind is StepKind.Fit or StepKind.CutJoint)
        )
        {
            if (
                earlier.Pieces.Any(assembly.Pieces.Contains)
                && !run.IsAlwaysBefore(earlier.Number, assembly)
            )
                yield return Noticed.Must(
                    assembly,
                    $"it does not wait for step {earlier.Number} ({earlier.Title})."
                );
        }
    }

    public static IEnumerable<Finding> FinishMustComeLast(StepRun run)
    {
        if (run.Work.Steps.FirstOrDefault(s => s.Kind is StepKind.Finish) is not { } finish)
            return [];
        return run
            .Work.Steps.Where(s => s.Pieces.Any(finish.Pieces.Contains) && s != finish)
            .Where(s => !run.IsAlwaysBefore(s.Number, finish))
            .Select(s =>
                Noticed.Must(finish, $"it does not wait for step {s.Number} ({s.Title}).")
            );
    }

    public static IEnumerable<Finding> WhatIsNotTaughtMustComePrepared(StepRun run) =>
        run
            .Work.Steps.Where(s =>
                s.Skill is Skill.Planing && !run.Rules.PlaningTaught
                || s.Skill is Skill.EdgeGluing && !run.Rules.EdgeGluingTaught
            )
            .Where(s => !s.IsPrepared || s.Time.Busy > 0)
            .Select(s =>
                Noticed.Must(
                    s,
                    "the course does not teach it, and it does not say that it comes prepared."
                )
            );
}
