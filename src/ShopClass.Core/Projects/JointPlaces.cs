using ShopClass.Core.Measure;

namespace ShopClass.Core.Projects;

/// <summary>What a joint takes out of its receiving part, and what it leaves.</summary>
internal static class JointPlaces
{
    /// <summary>Whether nothing is cut for it.</summary>
    public static bool CutsNothing(this JointKind kind) => kind is JointKind.Nailed;

    /// <summary>Whether it is cut in an edge; all others but dovetails are cut in a face.</summary>
    public static bool IsInEdge(this JointKind kind) => kind is JointKind.Notch;

    /// <summary>Whether it may go right through to the other face.</summary>
    public static bool MayGoThrough(this JointKind kind) =>
        kind is JointKind.MortiseAndTenon or JointKind.ThroughPeg;

    /// <summary>Whether it has a place along the part; a dovetail and a butt lie at its end.</summary>
    public static bool HasPlace(this JointKind kind) =>
        kind is not (JointKind.Nailed or JointKind.Dovetail);

    /// <summary>Whether it must say where it lies; a notch or rabbet that does not lies at the reference end.</summary>
    public static bool NeedsPlace(this JointKind kind) =>
        kind.HasPlace() && kind is not (JointKind.Notch or JointKind.Rabbet);

    /// <summary>Whether it has a place across the part; a notch begins at its edge, dovetails and butts go right across.</summary>
    public static bool HasPlaceAcross(this JointKind kind) => kind.HasPlace() && !kind.IsInEdge();

    /// <summary>Whether it may take nothing of this project.</summary>
    public static bool MayStandAlone(this JointKind kind) =>
        kind is JointKind.Notch or JointKind.Rabbet;

    /// <summary>The size of the part that its depth goes into.</summary>
    public static Length GoesInto(this JointKind kind, Part part) =>
        kind switch
        {
            JointKind.Notch => part.Finished.Width,
            JointKind.Dovetail => part.Finished.Length,
            _ => part.Finished.Thickness,
        };

    /// <summary>How much of the part's length each place takes; null while the joint does not say.</summary>
    public static Length? Along(this Joint joint, Part? mate) =>
        joint.Width ?? mate?.Finished.Thickness;

    /// <summary>Size of the tongue across the receiving part: as written, or the size of the mate that is not taken along it.</summary>
    public static Length TongueAcross(this Joint joint, Part mate) =>
        joint.Across
        ?? (
            joint.Along(mate) > mate.Finished.Thickness
                ? mate.Finished.Thickness
                : mate.Finished.Width
        );

    /// <summary>
    /// From where to where it reaches across the part, from its reference edge; null for what has no place across.
    /// What is not right across and names no place lies in the middle of the finished width.
    /// </summary>
    public static (Length Near, Length Far)? Reach(this Joint joint, Part part, Part? mate)
    {
        if (!joint.Kind.HasPlaceAcross())
            return null;
        var width = part.Finished.Width;
        var across =
            joint.Kind.MayGoThrough() && mate is not null ? joint.TongueAcross(mate) : joint.Across;
        if (across is not { } far)
            return (joint.FromEdge ?? Length.Zero, width);
        var near = joint.FromEdge ?? Length.FromTicks(Math.Max(0, (width - far).Ticks / 2));
        return (near, near + far);
    }

    /// <summary>Whether it is a dado that does not reach from edge to edge.</summary>
    public static bool IsStopped(this Joint joint, Part part, Part? mate) =>
        joint.Kind is JointKind.Dado
        && joint.Reach(part, mate) is { } reach
        && (reach.Near > Length.Zero || reach.Far < part.Finished.Width);

    /// <summary>Whether the part that enters a stopped dado is wider than it, so that its corner has to come off.</summary>
    public static bool NeedsShoulder(this Joint joint, Part part, Part? mate) =>
        mate is not null
        && joint.IsStopped(part, mate)
        && joint.Reach(part, mate) is { } reach
        && mate.Finished.Width > reach.Far - reach.Near;

    /// <summary>Whether it lies within the part's width, with wood left beside a mortise or peg hole.</summary>
    public static bool LiesAcross(this Joint joint, Part part, Part? mate) =>
        joint.Reach(part, mate) is not { } reach
        || (
            reach.Near >= Length.Zero
            && reach.Near < reach.Far
            && reach.Far <= part.Finished.Width
            && (
                !joint.Kind.MayGoThrough()
                || (reach.Near > Length.Zero && reach.Far < part.Finished.Width)
            )
        );

    /// <summary>Where it lies along the part, from its reference end; empty for joints that take no place along it.</summary>
    public static IEnumerable<(Length From, Length To)> Places(this Joint joint, Part? mate)
    {
        if (!joint.Kind.HasPlace() || joint.Along(mate) is not { } along)
            return [];
        return joint.Positions is { Count: 0 } && !joint.Kind.NeedsPlace()
            ? [(Length.Zero, along)]
            : joint.Positions.Select(p => (p, p + along));
    }
}
