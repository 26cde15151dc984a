using ShopClass.Core.Lumber;

namespace ShopClass.Core.Drawings.Working;

/// <summary>The reference marks as they are drawn on the wood: a loop on the face whose tail runs to the edge, and a V on the edge.</summary>
internal static class ReferenceMarks
{
    public static void AddTo(Sketch sketch, Board board)
    {
        var t = sketch.Frame.TextSize;
        var middle = board.Length.Ticks * sketch.Scale.PointsPerTick * 0.62;
        var size = System.Math.Min(
            1.5 * t,
            board.WidthAtStart.Ticks * sketch.Scale.PointsPerTick * 0.6
        );
        sketch.Through(
            [
                (middle, 0),
                (middle + 0.1 * size, 0.45 * size),
                (middle + 0.35 * size, 0.85 * size),
                (middle + 0.05 * size, size),
                (middle - 0.15 * size, 0.7 * size),
                (middle + 0.25 * size, 0.4 * size),
            ],
            Ink.PencilLine
        );
        sketch.Line(middle - 0.35 * t, -0.7 * t, middle, 0, Ink.PencilLine);
        sketch.Line(middle + 0.35 * t, -0.7 * t, middle, 0, Ink.PencilLine);
    }
}
