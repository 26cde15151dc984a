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
        if (step.Support is Support.BenchHook)
            AddFence(sketch, at, top, t);
        else if (step.Support is Support.Vise)
            AddJaws(sketch, at, top, t);
        AddHand(sketch, at * (step.Support is Support.Vise ? 0.25 : 0.5), top / 2, t);
    }

    /// <summary>The supporting hand: a palm and the tips of the fingers, with its name.</summary>
    public static void AddHand(Sketch sketch, double along, double across, double t)
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

    private static void AddFence(Sketch sketch, double at, double top, double t)
    {
        sketch.Shape(
            [
                (at - System.Math.Max(at * 0.9, 4 * t), top),
                (at - 0.3 * t, top),
                (at - 0.3 * t, top + 0.8 * t),
                (at - System.Math.Max(at * 0.9, 4 * t), top + 0.8 * t),
            ],
            Ink.Offcut
        );
        sketch.Words(
            at - System.Math.Max(at * 0.9, 4 * t) + 0.4 * t,
            top + 1.4 * t,
            "fence of the bench hook",
            0.8 * t,
            Anchor.Start,
            Ink.Quiet
        );
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
        sketch.Words(at - 5.5 * t, top + 1.4 * t, "jaws", 0.8 * t, Anchor.Start, Ink.Quiet);
    }
}
