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
        var wide = on.Along ?? piece.Before.Thickness;
        IReadOnlyList<Length> places = joint.Positions.Count == 0 ? [Length.Zero] : joint.Positions;
        foreach (var from in places)
        {
            foreach (var (near, far) in Reach(on, piece.Before.Width))
                AddOne(sketch, new(from, from + wide, near, far), on.Stand);
            if (figure is not null && on.Stand is not JointStand.Done && from > Length.Zero)
                AddFigure(sketch, piece, from, figure(from));
        }

        if (figure is not null && on.Stand is not JointStand.Done)
            AcrossFigures.AddTo(sketch, piece.Before, on, places.Max() + wide, figure);
    }

    /// <summary>From where to where it reaches across the piece.</summary>
    private static IEnumerable<(Length Near, Length Far)> Reach(JointOnPiece on, Length width)
    {
        var joint = on.Joint;
        if (!joint.Kind.IsInEdge())
        {
            // What goes on to the far edge does so on a piece that is still over in width, too.
            var (near, far) = on.Reach ?? (Length.Zero, width);
            yield return (near, on.GoesToTheEdge ? width : far);
            yield break;
        }

        if (joint.Side is not JointSide.Opposite)
            yield return (Length.Zero, joint.Depth);
        if (joint.Side is not JointSide.Reference)
            yield return (width - joint.Depth, width);
    }

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
        var (under, over) = OffTheEdges(size.Width, on);
        var s = sketch.Scale.PointsPerTick;
        foreach (var (from, to) in new[] { (Length.Zero, deep), (size.Length - deep, size.Length) })
        {
            var ink = on.Stand is JointStand.Cutting ? Ink.Waste : Ink.Kerf;
            if (on.Stand is not JointStand.Marking && under > Length.Zero)
                sketch.Rect(new(from, to, Length.Zero, under), ink);
            if (on.Stand is not JointStand.Marking && over > Length.Zero)
                sketch.Rect(new(from, to, size.Width - over, size.Width), ink);

            var shoulder = (from == Length.Zero ? to : from).Ticks * s;
            sketch.Line(shoulder, 0, shoulder, size.Width.Ticks * s, Ink.KnifeLine);
        }
    }

    /// <summary>What comes off a tongue's piece at its reference edge and at the other: both alike, or the corner that passes the end of a dado.</summary>
    private static (Length Under, Length Over) OffTheEdges(Length width, JointOnPiece on)
    {
        if (on is { OnMate: true, IsStopped: true, Reach: { } reach })
        {
            var off = Length.Max(Length.Zero, width - (reach.Far - reach.Near));
            if (reach.Near == Length.Zero)
                return (Length.Zero, off);
            return on.GoesToTheEdge ? (off, Length.Zero) : (Half(off), off - Half(off));
        }

        var tongue =
            on.OnMate && on.Joint.Kind.MayGoThrough() && on.Joint.Width is { } wide && wide < width
                ? wide
                : width;
        return (Half(width - tongue), Half(width - tongue));
    }

    private static Length Half(Length length) => Length.FromTicks(length.Ticks / 2);

    private static void AddFigure(Sketch sketch, WorkedPiece piece, Length from, string figure)
    {
        var t = sketch.Frame.TextSize;
        var at = from.Ticks * sketch.Scale.PointsPerTick;
        var top = piece.Before.Width.Ticks * sketch.Scale.PointsPerTick;
        sketch.Words(at, top + 0.9 * t, figure, t, Anchor.Middle, Ink.Accent);
    }
}
