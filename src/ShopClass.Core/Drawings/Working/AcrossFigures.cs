using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Drawings.Working;

/// <summary>Where a joint begins and ends across, as distances from the reference edge at the right of the piece.</summary>
internal static class AcrossFigures
{
    /// <param name="sketch">The piece's sketch.</param>
    /// <param name="piece">The piece as it lies.</param>
    /// <param name="on">The joint.</param>
    /// <param name="from">Where along the piece the lines start.</param>
    /// <param name="figure">Writes a length.</param>
    public static void AddTo(
        Sketch sketch,
        PieceLeft piece,
        JointOnPiece on,
        Length from,
        Func<Length, string> figure
    )
    {
        if (on.Reach is not { } reach)
            return;
        Length[] lines =
            on.Joint.Kind is JointKind.ThroughPeg
                ? [Length.FromTicks((reach.Near + reach.Far).Ticks / 2)]
                :
                [
                    .. new[] { reach.Near, on.GoesToTheEdge ? Length.Zero : reach.Far }.Where(l =>
                        l > Length.Zero
                    ),
                ];
        var (s, t) = (sketch.Scale.PointsPerTick, sketch.Frame.TextSize);
        var (start, end) = (from.Ticks * s, piece.Length.Ticks * s);
        var heights = Apart([.. lines.Select(l => l.Ticks * s)], 1.1 * t);
        for (var i = 0; i < lines.Length; i++)
        {
            var y = lines[i].Ticks * s;
            sketch.Line(start, y, end + 0.4 * t, y, Ink.Dimension);
            sketch.Line(end + 0.4 * t, y, end + 0.9 * t, heights[i], Ink.Dimension);
            sketch.Words(end + 1.1 * t, heights[i], figure(lines[i]), t, Anchor.Start, Ink.Accent);
        }
    }

    /// <summary>Two figures that would stand in each other are moved apart by as much as it takes.</summary>
    private static double[] Apart(double[] heights, double least)
    {
        if (heights.Length < 2 || heights[1] - heights[0] >= least)
            return heights;
        var middle = (heights[0] + heights[1]) / 2;
        return [middle - least / 2, middle + least / 2];
    }
}
