using ShopClass.Core.Measure;

namespace ShopClass.Core.Projects;

/// <summary>What is wrong with how far a joint reaches across its part, and with where it begins.</summary>
internal static class AcrossChecks
{
    /// <summary>How far it reaches, as a sentence where that is too far; null when it is right.</summary>
    public static string? ReachProblem(Joint joint, Part part, Part? mate, UnitSystem unit)
    {
        if (joint.Across is { } written && written <= Length.Zero)
            return "Write how far it reaches across, more than zero, or leave it empty.";
        if (joint.Kind.MayGoThrough() && mate is not null)
            return TongueProblem(joint, part, mate, unit);
        return joint.Across > part.Finished.Width
            ? $"It reaches {Said.Exactly(joint.Across.Value, unit)} across, but {part.Letter} is only {Said.Exactly(part.Finished.Width, unit)} wide."
            : null;
    }

    /// <summary>A tenon or peg is no bigger than the part it is cut from, and leaves wood beside it in the part it enters.</summary>
    private static string? TongueProblem(Joint joint, Part part, Part mate, UnitSystem unit)
    {
        if (joint.Along(mate) is not { } along)
            return null;
        var across = joint.TongueAcross(mate);
        var (thin, wide) = (Length.Min(along, across), Length.Max(along, across));
        var (_, width, _) = mate.Finished;
        var (least, most) = (
            Length.Min(mate.Finished.Thickness, width),
            Length.Max(mate.Finished.Thickness, width)
        );
        var tongue = joint.Kind is JointKind.ThroughPeg ? "peg" : "tenon";
        if (thin > least || wide > most)
            return $"The {tongue} is {Said.Exactly(along, unit)} by {Said.Exactly(across, unit)}, more than {mate.Letter} has: {Said.Exactly(least, unit)} by {Said.Exactly(most, unit)}.";
        return across >= part.Finished.Width
            ? $"The {joint.Kind.CutWords()} reaches {Said.Exactly(across, unit)} across, but {part.Letter} is only {Said.Exactly(part.Finished.Width, unit)} wide: no wood is left beside it."
            : null;
    }

    /// <summary>Where it begins across, as a sentence where that is off the part; null when it is right.</summary>
    public static string? PlaceProblem(Joint joint, Part part, Part? mate, UnitSystem unit)
    {
        if (joint.FromEdge is not { } begins)
            return null;
        if (!joint.Kind.HasPlaceAcross())
            return joint.Kind.IsInEdge()
                ? "A notch begins at its edge. Choose the edge, and leave the place across empty."
                : "This joint has no place across the part. Leave it empty.";
        if (begins < Length.Zero)
            return $"{Said.Exactly(begins, unit)} is before the reference edge of {part.Letter}.";
        if (joint.LiesAcross(part, mate) || joint.Reach(part, mate) is not { } reach)
            return null;
        var (word, width) = (joint.Kind.CutWords(), Said.Exactly(part.Finished.Width, unit));
        if (begins >= part.Finished.Width)
            return $"{Said.Exactly(begins, unit)} from the reference edge is off {part.Letter}, which is {width} wide.";
        return reach.Far > part.Finished.Width
            ? $"The {word} would reach from {Said.Exactly(begins, unit)} to {Said.Exactly(reach.Far, unit)} across, but {part.Letter} is only {width} wide."
            : $"The {word} would break out at the edge of {part.Letter}, which is {width} wide. Leave wood on both sides of it.";
    }
}
