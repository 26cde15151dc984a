using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Drawings;

/// <summary>The wood of a board: outline as measured, grain, ends to trim, defects.</summary>
internal static class WoodSketch
{
    /// <summary>Outline and grain.</summary>
    public static void AddWood(Sketch sketch, Board board)
    {
        sketch.Shape(Outline(board, sketch.Scale), Ink.Wood);
        Grain.AddTo(sketch, board);
    }

    /// <summary>The wood of one piece of a board; what lies beyond the smallest width stays on the outermost piece.</summary>
    public static void AddWoodOf(Sketch sketch, Board board, BoardRect piece)
    {
        var s = sketch.Scale.PointsPerTick;
        var (from, to, near) = (piece.From.Ticks * s, piece.To.Ticks * s, piece.Near.Ticks * s);
        double FarAt(Length along) =>
            s
            * (
                piece.Far < board.SmallestWidth ? piece.Far : BoardScale.WidthAt(board, along)
            ).Ticks;
        var middle = Length.FromTicks(board.Length.Ticks / 2);
        List<(double Along, double Across)> corners = [(from, near), (from, FarAt(piece.From))];
        if (piece.From < middle && middle < piece.To)
            corners.Add((middle.Ticks * s, FarAt(middle)));
        corners.AddRange([(to, FarAt(piece.To)), (to, near)]);
        sketch.Shape(corners, Ink.Wood);
        Grain.AddTo(sketch, board, piece);
    }

    /// <summary>The ends to be trimmed off, hatched over the full width.</summary>
    public static void AddTrims(Sketch sketch, Board board)
    {
        AddTrim(sketch, board, Length.Zero, board.TrimStart);
        AddTrim(sketch, board, board.Length - board.TrimEnd, board.Length);
    }

    /// <summary>
    /// The frame round each defect: the wood a part must keep clear of. The selected one is in the accent.
    /// </summary>
    public static void AddDefectFrames(Sketch sketch, Board board, int? selected = null)
    {
        for (var i = 0; i < board.Defects.Count; i++)
            sketch.Rect(
                board.Defects[i].Place,
                i == selected ? Ink.Accent : Ink.Defect,
                $"defect {i + 1}"
            );
    }

    private static IEnumerable<(double Along, double Across)> Outline(Board board, BoardScale scale)
    {
        var s = scale.PointsPerTick;
        var length = board.Length.Ticks * s;
        return
        [
            (0, 0),
            (0, board.WidthAtStart.Ticks * s),
            (length / 2, board.WidthAtMiddle.Ticks * s),
            (length, board.WidthAtEnd.Ticks * s),
            (length, 0),
        ];
    }

    private static void AddTrim(Sketch sketch, Board board, Length from, Length to)
    {
        if (to <= from)
            return;
        var s = sketch.Scale.PointsPerTick;
        sketch.Shape(
            [
                (from.Ticks * s, 0),
                (from.Ticks * s, BoardScale.WidthAt(board, from).Ticks * s),
                (to.Ticks * s, BoardScale.WidthAt(board, to).Ticks * s),
                (to.Ticks * s, 0),
            ],
            Ink.Waste
        );
    }
}
