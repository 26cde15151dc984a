using ShopClass.Core.Lumber;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Drawings.Working;

/// <summary>What holds the work and where the supporting hand lies, for a right-handed student.</summary>
internal static class HandMarks
{
    public static void AddTo(Sketch sketch, Board board, WorkLine line, Step step)
    {
        if (step.Saw is null || !line.IsAcross)
            return;
        var s = sketch.Scale.PointsPerTick;
        var (t, top, at) = (sketch.Frame.TextSize, board.WidthAtStart.Ticks * s, line.At.Ticks * s);
        var isInVise = step.Support is Support.Vise;
        if (step.Support is Support.BenchHook)
            AddFence(sketch, at, top, t);
        else if (isInVise)
            AddJaws(sketch, at, top, t);
        var along = at * (isInVise ? 0.25 : 0.5);
        if (HasRoom(isInVise ? at / 2 : at, top, t))
            AddHand(sketch, along, top / 2, t);
        else
            PointToHand(sketch, along, System.Math.Min(0.3 * top, 0.7 * t), t);
    }

    // A palm and its name beside the piece's own; fingers and all between the edges.
    private static bool HasRoom(double along, double top, double t) =>
        along >= 5.5 * t && top >= 3.4 * t;

    /// <summary>The supporting hand: a palm and the tips of the fingers, with its name.</summary>
    private static void AddHand(Sketch sketch, double along, double across, double t)
    {
        var r = 0.95 * t;
        sketch.Ring(along, across, 1.25 * r, r, Ink.Accent);
        for (var finger = 0; finger < 4; finger++)
        {
            var x = along - 0.75 * r + finger * 0.5 * r;
            sketch.Line(x, across + 0.9 * r, x, across + 1.6 * r, Ink.Accent);
        }

        sketch.Words(along, across, "hand", 0.8 * t, Anchor.Middle, Ink.Lettering);
    }

    /// <summary>On a piece too small to write on, only where the hand goes; a line leads to its name outside.</summary>
    private static void PointToHand(Sketch sketch, double along, double across, double t)
    {
        sketch.Line(along, across, -0.9 * t, -0.3 * t, Ink.Accent);
        sketch.Ring(along, across, 0.3 * t, 0.3 * t, Ink.Accent);
        sketch.Words(-1.1 * t, -0.3 * t, "hand", 0.8 * t, Anchor.End, Ink.Lettering);
    }

    private static void AddFence(Sketch sketch, double at, double top, double t)
    {
        var from = at - System.Math.Max(at * 0.9, 4 * t);
        sketch.Shape(
            [
                (from, top),
                (at - 0.3 * t, top),
                (at - 0.3 * t, top + 0.8 * t),
                (from, top + 0.8 * t),
            ],
            Ink.Offcut
        );
        // The whole name only where it ends before the figure above the line.
        if (at >= 13 * t)
            sketch.Words(
                from + 0.4 * t,
                top + 1.4 * t,
                "fence of the bench hook",
                0.8 * t,
                Anchor.Start,
                Ink.Quiet
            );
        else
            AddHolder(sketch, at, top, "fence", t);
    }

    private static void AddJaws(Sketch sketch, double at, double top, double t)
    {
        foreach (var (near, far) in new[] { (-0.8 * t, 0.0), (top, top + 0.8 * t) })
            sketch.Shape(
                [
                    (at - 5.5 * t, near),
                    (at - 0.5 * t, near),
                    (at - 0.5 * t, far),
                    (at - 5.5 * t, far),
                ],
                Ink.Offcut
            );
        AddHolder(sketch, at, top, "jaws", t);
    }

    /// <summary>What holds the work, named clear of the figure above the line.</summary>
    private static void AddHolder(Sketch sketch, double at, double top, string name, double t) =>
        sketch.Words(at - 2.4 * t, top + 1.4 * t, name, 0.8 * t, Anchor.End, Ink.Quiet);
}
