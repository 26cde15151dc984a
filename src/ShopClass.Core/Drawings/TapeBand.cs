using ShopClass.Core.Measure;

namespace ShopClass.Core.Drawings;

/// <summary>The tape laid along a board's near edge, hooked on its start.</summary>
internal static class TapeBand
{
    private static readonly long[] InchSteps = [1, 2, 3, 6, 12, 24, 48, 96];
    private static readonly long[] MillimetreSteps = [10, 20, 50, 100, 200, 500, 1000, 2000];

    /// <summary>The tape with its hook and divisions, without figures.</summary>
    public static void Add(Sketch sketch, Length length, Precision precision)
    {
        var t = sketch.Frame.TextSize;
        var end = sketch.Scale.LengthDrawn;
        var (top, bottom) = (-0.3 * t, -0.75 * t);
        sketch.Line(0, top, end, top, Ink.Dimension);
        sketch.Line(0, bottom, end, bottom, Ink.Dimension);
        sketch.Line(end, top, end, bottom, Ink.Dimension);
        sketch.Line(-0.12 * t, bottom, -0.12 * t, 0.4 * t, Ink.PencilLine);
        foreach (var at in Every(Step(sketch, precision, 0.45 * t), length))
            sketch.Line(
                Points(sketch, at),
                bottom,
                Points(sketch, at),
                bottom + 0.2 * t,
                Ink.Dimension
            );
    }

    /// <summary>Figures at even distances, and the board's full length at its end.</summary>
    public static void AddFigures(Sketch sketch, Length length, Precision precision)
    {
        var t = sketch.Frame.TextSize;
        var room = sketch.Scale.IsUpright ? 2.4 * t : 3.4 * t;
        var step = Step(sketch, precision, room);
        foreach (var at in Every(step, length).Prepend(Length.Zero))
        {
            var along = Points(sketch, at);
            sketch.Line(along, -0.3 * t, along, -0.75 * t, Ink.Dimension);
            AddFigure(sketch, along, LengthWriter.Write(at, precision));
        }
    }

    private static void AddFigure(Sketch sketch, double along, string text)
    {
        var t = sketch.Frame.TextSize;
        var upright = sketch.Scale.IsUpright;
        sketch.Words(
            along,
            upright ? -1.1 * t : -1.45 * t,
            text,
            t * 0.9,
            upright ? Anchor.End : Anchor.Middle,
            Ink.Dimension
        );
    }

    private static IEnumerable<Length> Every(Length step, Length length)
    {
        for (var at = step; at <= length; at += step)
            yield return at;
    }

    /// <summary>The finest usual step whose marks stand at least so many points apart.</summary>
    private static Length Step(Sketch sketch, Precision precision, double apart)
    {
        var steps =
            precision.Unit() is UnitSystem.Inch
                ? InchSteps.Select(i => Length.FromInches(i))
                : MillimetreSteps.Select(Length.FromMillimetres);
        var all = steps.ToList();
        return all.Find(s => Points(sketch, s) >= apart) is { Ticks: > 0 } found ? found : all[^1];
    }

    private static double Points(Sketch sketch, Length length) =>
        length.Ticks * sketch.Scale.PointsPerTick;
}
