using ShopClass.Core.Measure;

namespace ShopClass.Core.Sawing.Steps.Rehearsing;

/// <summary>No mark before there is something true to mark it from.</summary>
internal static class ReferenceRules
{
    public static IEnumerable<Finding> ReferencesMustBeMarkedOnTrueWood(StepRun run)
    {
        foreach (var done in run.Done.Where(d => d.Step.Kind is StepKind.MarkReference))
        foreach (var piece in done.Before)
        {
            if (!piece.HasTrueFace)
                yield return Noticed.Must(done.Step, $"no face of {piece.Name} is true yet.");
            if (!piece.HasStraightEdge)
                yield return Noticed.Must(done.Step, $"no edge of {piece.Name} is straight yet.");
        }
    }

    public static IEnumerable<Finding> KnifeAndGaugeLinesMustHaveAReference(StepRun run)
    {
        foreach (var done in run.Done.Where(d => d.Step.Line is LineKind.Knife or LineKind.Gauge))
        foreach (var piece in done.Before)
        {
            // Thickness is gauged from a true face, before there is a reference edge.
            var isThere =
                done.Step.Kind is StepKind.PlaneToThickness
                    ? piece.HasTrueFace
                    : piece.IsReferenced || (done.Step.Cut is not null && piece.HasTrueLines);
            if (!isThere)
                yield return Noticed.Must(
                    done.Step,
                    $"its line on {piece.Name} has nothing true to be marked from."
                );
        }
    }

    public static IEnumerable<Finding> LengthsMustBeMeasuredFromASquaredEnd(StepRun run) =>
        from done in run.Done
        where done.Step.Kind is StepKind.CutToLength or StepKind.GangMark
        from piece in done.Before
        where !piece.IsSquared
        select Noticed.Must(done.Step, $"no end of {piece.Name} is square yet.");

    public static IEnumerable<Finding> GaugesMustBeSetOnceAndBeforeTheyAreUsed(StepRun run)
    {
        var set = run.Work.Steps.Where(s => s.Kind is StepKind.SetGauge).ToList();
        foreach (var step in run.Work.Steps)
        {
            if (step.Kind is StepKind.SetGauge || step.IsPrepared)
                continue;
            IEnumerable<Length> struck = step.Gauge is { } one
                ? step.GaugesAcross.Prepend(one)
                : step.GaugesAcross;
            foreach (
                var gauge in struck.Where(g =>
                    !set.Exists(s => s.Gauge == g && run.IsAlwaysBefore(s.Number, step))
                )
            )
                yield return Noticed.Must(
                    step,
                    $"it strikes a line at {LengthWriter.WriteWithUnit(gauge, run.Rules.Precision)}, but does not wait for a gauge to be set to it."
                );
        }

        foreach (var again in set.GroupBy(s => s.Title).Where(g => g.Count() > 1))
            yield return Noticed.Must(
                again.Last(),
                $"this gauge was set in step {again.First().Number} already."
            );
    }
}
