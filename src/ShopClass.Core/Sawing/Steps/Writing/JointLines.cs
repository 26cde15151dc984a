using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>What is marked for a joint, line by line, and what the gauges are set to for its place across.</summary>
internal sealed class JointLines(Job job)
{
    /// <summary>
    /// Distances from the reference edge that are gauged for its place across, nearest first: where it begins and ends, or
    /// the middle of a hole that is bored. None for what goes right across, or is marked from its mate.
    /// </summary>
    public static IReadOnlyList<Length> SettingsAcross(JointCut cut)
    {
        if (cut.Stage.OnMate || Reach(cut) is not var (near, far))
            return [];
        if (cut.Joint.Kind is JointKind.ThroughPeg)
            return [Middle(near, far)];
        return [.. new[] { near, far }.Where(a => a > Length.Zero && a < WidthOf(cut))];
    }

    /// <summary>The lines of a joint's own part, or of what enters it.</summary>
    public IEnumerable<string> Of(JointCut cut)
    {
        var joint = cut.Joint;
        if (!cut.Stage.OnMate && joint.Positions.Count > 0)
            yield return $"{Words.List([.. joint.Positions.Select(job.Say)])} from the reference end";
        if (!cut.Stage.FromMate && !cut.Stage.OnMate)
            yield return joint.Width is { } wide && wide != cut.MateThickness
                ? $"{job.Say(wide)} wide"
                : $"as wide as {Mate(cut)} is thick, about {job.Say(cut.MateThickness)}: taken from {Mate(cut)} itself with the knife";
        if (Across(cut) is { } across)
            yield return across;
        if (!cut.Stage.OnMate && SideOf(joint) is { } side)
            yield return side;
        if (Depth(cut) is { } depth)
            yield return depth;
        if (joint.Note.Length > 0 && cut.Stage.Word is not "shoulder")
            yield return joint.Note;
        if (cut.Own[0].Part.JointNotes.Length > 0)
            yield return cut.Own[0].Part.JointNotes;
    }

    private string? Depth(JointCut cut) =>
        cut.Joint switch
        {
            { Depth.Ticks: 0 } => null,
            { Kind: JointKind.ThroughPeg } => cut.Stage.OnMate
                ? $"{job.Say(cut.Joint.Depth)} of it stands in the hole, which goes right through"
                : $"right through, {job.Say(cut.Joint.Depth)}",
            _ => $"{job.Say(cut.Joint.Depth)} deep, by the gauge",
        };

    private string? Across(JointCut cut)
    {
        if (cut.Stage.Word is "shoulder")
            return Corner(cut);
        if (cut.Stage.OnMate)
            return null;
        if (Reach(cut) is not var (near, far))
            return cut.Joint.Across is { } written ? $"{job.Say(written)} across" : null;
        var middle = cut.Joint.FromEdge is null ? ", which is the middle of the width" : "";
        if (cut.Joint.Kind is JointKind.ThroughPeg)
            return $"the middle of the hole {job.Say(Middle(near, far))} from the reference edge{middle}, by the gauge; {job.Say(far - near)} across";
        if (near == Length.Zero)
            return $"from the reference edge on to a line {job.Say(far)} from it, by the gauge; knife no further";
        return far >= WidthOf(cut)
            ? $"from a line {job.Say(near)} from the reference edge, by the gauge, on to the other edge"
            : $"between lines {job.Say(near)} and {job.Say(far)} from the reference edge{middle}, each by the gauge";
    }

    /// <summary>What a stopped dado leaves no room for, on what enters it.</summary>
    private string Corner(JointCut cut)
    {
        var (near, far) = cut.Joint.Reach(cut.Other[0].Part, cut.Own[0].Part)!.Value;
        var stays = job.Say(far - near);
        if (near == Length.Zero)
            return $"{stays} from the reference edge enters the dado; the corner beyond it comes off, so that it passes the end";
        return far >= cut.Other[0].Part.Finished.Width
            ? $"{stays} from the edge opposite the reference edge enters the dado; the corner at the reference edge comes off, so that it passes the end"
            : $"{stays} enters the dado; a corner comes off on either side of it";
    }

    /// <summary>From where to where it reaches across its part; null where that is right across.</summary>
    private static (Length Near, Length Far)? Reach(JointCut cut) =>
        cut.Joint.Reach(cut.Own[0].Part, cut.Other.Count > 0 ? cut.Other[0].Part : null)
            is { } reach
        && (reach.Near > Length.Zero || reach.Far < WidthOf(cut))
            ? reach
            : null;

    private static Length WidthOf(JointCut cut) => cut.Own[0].Part.Finished.Width;

    private static Length Middle(Length near, Length far) =>
        Length.FromTicks((near + far).Ticks / 2);

    private static string? SideOf(Joint joint)
    {
        var where = joint.Kind is JointKind.Notch ? "edge" : "face";
        return joint.Side switch
        {
            JointSide.Opposite => $"in the {where} opposite the reference {where}",
            JointSide.Both => $"in both {where}s, at the same places",
            _ when joint.Kind is JointKind.Dovetail => null,
            _ => $"in the reference {where}",
        };
    }

    private static string Mate(JointCut cut) =>
        cut.Other.Count > 0 ? cut.Other[0].Name : "the piece that goes in";
}
