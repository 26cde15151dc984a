using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Steps.Rehearsing;

/// <summary>What must hold of dimensions that stay open until something has happened.</summary>
internal static class OpenRules
{
    public static IEnumerable<Finding> OpenDimensionsMustNotBeCutEarly(StepRun run) =>
        from done in run.Done
        from piece in done.After
        where piece.Part is not null && piece.Key is { Strip: 0 }
        from open in piece.Part!.Open
        where !run.IsClosedBy(piece.Name, open.Dimension, done.Step.Number)
        let least = StepRun.Wanted(piece.Part!, open.Dimension, isClosed: false)
        where piece.SizeOf(open.Dimension) < least
        select Noticed.Must(
            done.Step,
            $"the {open.Dimension.ToString().ToLowerInvariant()} of {piece.Name} must stay over until {open.Until}, and is cut before.",
            least - piece.SizeOf(open.Dimension)
        );

    public static IEnumerable<Finding> OpenDimensionsMustWaitForTheirEvent(StepRun run)
    {
        foreach (var step in run.Work.Steps.Where(s => s.Kind is StepKind.CloseDimension))
        foreach (var name in step.Pieces)
        {
            var part = run.Project.Parts.FirstOrDefault(p =>
                name.TrimEnd("0123456789".ToCharArray()) == p.Letter
            );
            foreach (
                var open in part?.Open.Where(o => step.Open.Any(n => n.Dimension == o.Dimension))
                    ?? []
            )
            {
                if (!HasHappened(run, step, open))
                    yield return Noticed.Must(step, $"it does not wait until {open.Until}.");
            }
        }
    }

    public static IEnumerable<Finding> OpenDimensionsMustCloseInTheirOrder(StepRun run)
    {
        var told = run
            .Work.Steps.SelectMany(s => s.Open.Select(o => (Step: s, Open: o)))
            .GroupBy(x => (x.Open.Piece, x.Open.Dimension));
        foreach (var dimension in told)
        {
            var before = OpenState.Open;
            foreach (var (step, open) in dimension)
            {
                if (open.State < before)
                    yield return Noticed.Must(
                        step,
                        $"the {open.Dimension.ToString().ToLowerInvariant()} of {open.Piece} was further on before."
                    );
                before = open.State;
            }

            if (run.Plan.Plan.IsComplete && before is not OpenState.Fitted)
                yield return Noticed.Must(
                    dimension.Key.Piece,
                    $"The {dimension.Key.Dimension.ToString().ToLowerInvariant()} of {dimension.Key.Piece} stays open to the end."
                );
        }
    }

    /// <summary>
    /// Whether a step that can be the event is always done before. Words of putting together ask for an assembly; others for
    /// a fit, or where nothing is fitted, for the length of the part it is taken from.
    /// </summary>
    private static bool HasHappened(StepRun run, Step step, OpenDimension open)
    {
        if (open.Event is { } chosen)
            return HasHappened(run, step, open, chosen);
        string[] together = ["stand", "glue", "flush", "assembl", "nailed", "screwed", "together"];
        if (together.Any(w => open.Until.Contains(w, StringComparison.OrdinalIgnoreCase)))
            return NothingElseStands(run) || Before(s => s.Kind is StepKind.Assemble);
        var others = run.Work.Steps.Any(s => IsFit(s, step) && s.Number < step.Number);
        if (others)
            return Before(s => IsFit(s, step));
        return open.TakenFrom is not { } from
            || Before(s =>
                s.Kind is StepKind.CutToLength
                && s.Pieces.Any(p => p.StartsWith(from, StringComparison.Ordinal))
            );

        bool Before(Func<Step, bool> isIt) =>
            run.Work.Steps.Any(s => isIt(s) && run.IsAlwaysBefore(s.Number, step));
    }

    /// <summary>The same for an event that was chosen: its own steps, and where the work has none such, as for words.</summary>
    private static bool HasHappened(StepRun run, Step step, OpenDimension open, OpenEvent chosen)
    {
        bool Of(Step s, string letter) =>
            s.Pieces.Any(p => p.TrimEnd("0123456789.".ToCharArray()) == letter);
        var own = chosen.Kind switch
        {
            OpenEventKind.RestStands or OpenEventKind.Together => NothingElseStands(run)
                ? []
                : run.Work.Steps.Where(s => s.Kind is StepKind.Assemble).Take(1).ToList(),
            OpenEventKind.GluedUp => run
                .Work.Steps.Where(s => s.Kind is StepKind.GlueUp && Of(s, chosen.Part))
                .ToList(),
            OpenEventKind.JointFitted => run
                .Work.Steps.Where(s =>
                    IsFit(s, step) && Of(s, chosen.Part) && Of(s, chosen.Mate) && IsOfTwo(s)
                )
                .ToList(),
            _ => [],
        };
        if (own.Count > 0)
            return own.TrueForAll(s => run.IsAlwaysBefore(s.Number, step));
        return chosen.Kind is OpenEventKind.RestStands or OpenEventKind.Together
            || HasHappened(run, step, open with { Event = null, Until = "" });
    }

    /// <summary>A fit of a joint names two parts; the dry fit of everything is told by its having no joint to cut.</summary>
    private static bool IsOfTwo(Step fit) =>
        fit.Pieces.Select(p => p.TrimEnd("0123456789".ToCharArray())).Distinct().Count() == 2
        && fit.Id != "dryfit";

    /// <summary>A single piece, or parts that all wait for the others to stand: then there is nothing to wait for.</summary>
    private static bool NothingElseStands(StepRun run) =>
        run.Project.Parts.Sum(p => p.Quantity) < 2
        || run.Project.Parts.All(p =>
            p.Open.Any(o =>
                o.Event is { } chosen
                    ? chosen.Kind is OpenEventKind.RestStands
                    : o.Until.Contains("stand", StringComparison.OrdinalIgnoreCase)
            )
        );

    /// <summary>A fit of joints, and not the trial of a dimension that was closed.</summary>
    private static bool IsFit(Step fit, Step closing) =>
        fit.Kind is StepKind.Fit
        && !fit.Open.Any(o => o.State is OpenState.Fitted)
        && fit.Number != closing.Number;
}
