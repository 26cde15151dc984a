using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Drawings;

/// <summary>A board's length and three widths, as dimension lines about it.</summary>
internal static class BoardDimensions
{
    /// <summary>Draws them; the width in the middle only where nothing else is written on the wood.</summary>
    public static void AddTo(Sketch sketch, Board board, Precision precision, bool withMiddle)
    {
        AddWidths(sketch, board, precision, withMiddle);
        AddLength(sketch, board, precision);
    }

    /// <summary>The height of a drawing of one board.</summary>
    public static double HeightOf(Sketch sketch)
    {
        var room = BoardRoom.In(sketch.Frame);
        var scale = sketch.Scale;
        return scale.IsUpright
            ? scale.Start.Y + scale.LengthDrawn + room.AfterEnd + 1.4 * sketch.Frame.TextSize
            : scale.Start.Y + room.NearSide;
    }

    private static void AddWidths(Sketch sketch, Board board, Precision precision, bool withMiddle)
    {
        var t = sketch.Frame.TextSize;
        var end = sketch.Scale.LengthDrawn;
        string Text(Length width) => LengthWriter.Write(width, precision);
        Margins.AddWidth(
            sketch,
            -0.9 * t,
            board.WidthAtStart,
            Text(board.WidthAtStart),
            after: false
        );
        Margins.AddWidth(
            sketch,
            end + 0.9 * t,
            board.WidthAtEnd,
            Text(board.WidthAtEnd),
            after: true
        );
        var tapers =
            board.WidthAtMiddle != board.WidthAtStart || board.WidthAtMiddle != board.WidthAtEnd;
        if (withMiddle && tapers)
            Margins.AddWidth(
                sketch,
                end / 2,
                board.WidthAtMiddle,
                Text(board.WidthAtMiddle),
                after: true
            );
    }

    private static void AddLength(Sketch sketch, Board board, Precision precision)
    {
        var t = sketch.Frame.TextSize;
        var text = LengthWriter.WriteWithUnit(board.Length, precision);
        if (sketch.Scale.IsUpright)
            sketch.Words(
                sketch.Scale.LengthDrawn + 3 * t,
                sketch.Scale.WidthDrawn / 2,
                $"{text} long",
                t,
                Anchor.Middle,
                Ink.Dimension
            );
        else
            Margins.AddLength(sketch, Length.Zero, board.Length, sketch.Scale.Start.Y - t, text);
    }
}
