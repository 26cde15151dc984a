using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Drawings.Working;

/// <summary>Joints on the face of a piece: knife lines while they are marked, hatched while they are cut, shaded when they are there.</summary>
internal static class JointMarks
{
    public static void AddTo(
        Sketch sketch,
        WorkedPiece piece,
        Func<Length, string> figure,
        bool withFigures
    )
    {
        foreach (var joint in piece.Joints)
        {
            if (joint.OnMate || !joint.Joint.Kind.HasPlace())
                AddAtEnds(sketch, piece, joint);
            else
                AddAtPlaces(sketch, piece, joint, withFigures ? figure : null);
        }
    }

    private static void AddAtPlaces(
        Sketch sketch,
        WorkedPiece piece,
        JointOnPiece on,
        Func<Length, string>? figure
    )
    {
        var joint = on.Joint;
        var wide = joint.Width ?? piece.Before.Thickness;
        IEnumerable<Length> places = joint.Positions.Count == 0 ? [Length.Zero] : joint.Positions;
        foreach (var from in places)
        {
            foreach (var (near, far) in Reach(joint, piece.Before.Width))
                AddOne(sketch, new(from, from + wide, near, far), on.Stand);
            if (figure is not null && on.Stand is not JointStand.Done && from > Length.Zero)
                AddFigure(sketch, piece, from, figure(from));
        }
    }

    /// <summary>From where to where it reaches across the piece.</summary>
    private static IEnumerable<(Length Near, Length Far)> Reach(Joint joint, Length width)
    {
        if (joint.Kind.IsInEdge())
        {
            if (joint.Side is not JointSide.Opposite)
                yield return (Length.Zero, joint.Depth);
            if (joint.Side is not JointSide.Reference)
                yield return (width - joint.Depth, width);
            yield break;
        }

        var across = joint.Across ?? (joint.Kind.MayGoThrough() ? Third(width) : width);
        var over = Length.FromTicks((width - Length.Min(across, width)).Ticks / 2);
        yield return (over, width - over);
    }

    private static Length Third(Length width) => Length.FromTicks(width.Ticks / 3);

    private static void AddOne(Sketch sketch, BoardRect place, JointStand stand)
    {
        if (stand is JointStand.Done)
            sketch.Rect(place, Ink.Kerf);
        else if (stand is JointStand.Cutting)
            sketch.Rect(place, Ink.Waste);
        var s = sketch.Scale.PointsPerTick;
        var (from, to) = (place.From.Ticks * s, place.To.Ticks * s);
        var (near, far) = (place.Near.Ticks * s, place.Far.Ticks * s);
        sketch.Line(from, near, from, far, Ink.KnifeLine);
        sketch.Line(to, near, to, far, Ink.KnifeLine);
        sketch.Line(from, near, to, near, Ink.GaugeLine);
        sketch.Line(from, far, to, far, Ink.GaugeLine);
    }

    /// <summary>A tongue, or sockets and tails: the shoulder lines as far from the ends as the joint is deep.</summary>
    private static void AddAtEnds(Sketch sketch, WorkedPiece piece, JointOnPiece on)
    {
        var size = piece.Before;
        var deep = Length.Min(on.Joint.Depth, Length.FromTicks(size.Length.Ticks / 3));
        if (deep <= Length.Zero)
            return;
        var tongue =
            on.OnMate
            && on.Joint.Kind.MayGoThrough()
            && on.Joint.Width is { } wide
            && wide < size.Width
                ? wide
                : size.Width;
        var over = Length.FromTicks((size.Width - tongue).Ticks / 2);
        var s = sketch.Scale.PointsPerTick;
        foreach (var (from, to) in new[] { (Length.Zero, deep), (size.Length - deep, size.Length) })
        {
            var ink = on.Stand is JointStand.Cutting ? Ink.Waste : Ink.Kerf;
            if (over > Length.Zero && on.Stand is not JointStand.Marking)
            {
                sketch.Rect(new(from, to, Length.Zero, over), ink);
                sketch.Rect(new(from, to, size.Width - over, size.Width), ink);
            }

            var shoulder = (from == Length.Zero ? to : from).Ticks * s;
            sketch.Line(shoulder, 0, shoulder, size.Width.Ticks * s, Ink.KnifeLine);
        }
    }

    private static void AddFigure(Sketch sketch, WorkedPiece piece, Length from, string figure)
    {
        var t = sketch.Frame.TextSize;
        var at = from.Ticks * sketch.Scale.PointsPerTick;
        var top = piece.Before.Width.Ticks * sketch.Scale.PointsPerTick;
        sketch.Words(at, top + 0.9 * t, figure, t, Anchor.Middle, Ink.Accent);
    }
}
