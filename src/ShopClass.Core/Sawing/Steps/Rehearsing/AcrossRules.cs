using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Steps.Rehearsing;

/// <summary>What must hold of joints that have a place across their part.</summary>
internal static class AcrossRules
{
    public static IEnumerable<Finding> JointsMustLieOnTheirPieces(StepRun run) =>
        from place in Placed(run)
        from done in run.Done
        where done.Step.Kind is StepKind.CutJoint
        from piece in done.Before
        where piece.Part?.Letter == place.Joint.Part
        let over = Length.Max(place.Far - piece.Width, Length.Zero - place.Near)
        where over > Length.Zero
        select Noticed.Must(
            done.Step,
            $"the {place.Joint.Kind.Words()} leaves {piece.Name} at its edge.",
            over
        );

    public static IEnumerable<Finding> PlacesAcrossMustBeGaugedFromTheReferenceEdge(StepRun run)
    {
        var marked = run.Work.Steps.Where(s => s.Kind is StepKind.MarkJoint).ToList();
        foreach (var place in Placed(run))
        foreach (var piece in Pieces(run, place.Joint.Part))
        {
            var struck = marked
                .Where(s => s.Pieces.Contains(piece.Name, StringComparer.Ordinal))
                .Select(s => s.GaugesAcross)
                .ToList();
            if (!struck.Exists(s => Lines(place, piece.Part!).All(s.Contains)))
                yield return Noticed.Must(
                    piece.Name,
                    $"No gauge is run along {piece.Name} for where its {place.Joint.Kind.Words()} begins and ends across."
                );
        }
    }

    public static IEnumerable<Finding> WhatEntersAStoppedDadoMustLoseItsCorner(StepRun run)
    {
        foreach (var place in Placed(run).Where(p => p.Joint.Kind is JointKind.Dado))
        foreach (var piece in Pieces(run, place.Joint.Mate))
        {
            var isWider = piece.Part!.Finished.Width > place.Far - place.Near;
            var isCut = run.Work.Steps.Any(s =>
                s.Kind is StepKind.CutJoint && s.Pieces.Contains(piece.Name, StringComparer.Ordinal)
            );
            if (isWider && !isCut)
                yield return Noticed.Must(
                    piece.Name,
                    $"{piece.Name} is wider than the dado it enters, and nothing is sawn off its corner.",
                    piece.Part.Finished.Width - (place.Far - place.Near)
                );
        }
    }

    private sealed record Place(Joint Joint, Length Near, Length Far);

    /// <summary>Joints that say where they begin across, with both parts there: how far they reach is worked out here anew.</summary>
    private static IEnumerable<Place> Placed(StepRun run)
    {
        foreach (var joint in run.Project.Joints)
        {
            var part = PartOf(run, joint.Part);
            var mate = PartOf(run, joint.Mate);
            if (
                joint.FromEdge is not { } near
                || part is null
                || !Pieces(run, joint.Part).Any()
                || (joint.Mate is not null && !Pieces(run, joint.Mate).Any())
                || joint.Kind is JointKind.Notch or JointKind.Dovetail or JointKind.Nailed
            )
                continue;
            var isTongue = joint.Kind is JointKind.MortiseAndTenon or JointKind.ThroughPeg;
            var far =
                joint.Across is { } across ? near + across
                : isTongue && mate is not null ? near + Other(mate, joint.Width)
                : part.Finished.Width;
            yield return new(joint, near, far);
        }
    }

    /// <summary>Of the two sizes of a tenon's part, the one that does not lie along the mortise.</summary>
    private static Length Other(Part mate, Length? along) =>
        along is { } taken && taken > mate.Finished.Thickness
            ? mate.Finished.Thickness
            : mate.Finished.Width;

    private static IEnumerable<Length> Lines(Place place, Part part) =>
        place.Joint.Kind is JointKind.ThroughPeg
            ? [Length.FromTicks((place.Near.Ticks + place.Far.Ticks) / 2)]
            : new[] { place.Near, place.Far }.Where(l =>
                l > Length.Zero && l < part.Finished.Width
            );

    private static IEnumerable<Wood> Pieces(StepRun run, string? letter) =>
        run.Final.Where(p => p.Part?.Letter == letter && p.Key is { Strip: 0 });

    private static Part? PartOf(StepRun run, string? letter) =>
        run.Project.Parts.FirstOrDefault(p => p.Letter == letter);
}
