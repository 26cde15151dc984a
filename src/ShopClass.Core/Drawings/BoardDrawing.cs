using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Drawings;

/// <summary>A measured board as it lies: grain, end trim, defects, its three widths and its length.</summary>
public static class BoardDrawing
{
    /// <summary>
    /// Draws it; a selected defect (an index, from 0) is marked in the accent. Defect boxes carry the tag
    /// <c>defect N</c>, from 1.
    /// </summary>
    public static Drawing Of(
        Board board,
        Precision precision,
        DrawingFrame frame,
        int? selectedDefect = null
    )
    {
        var words = BoardWords.Of(board, precision);
        board = Drawable.Settled(board);
        var sketch = new Sketch(frame, BoardScale.For(board, frame));
        WoodSketch.AddWood(sketch, board);
        WoodSketch.AddTrims(sketch, board);
        DefectMarks.AddTo(sketch, board);
        WoodSketch.AddDefectFrames(sketch, board, selectedDefect);
        TapeBand.Add(sketch, board.Length, precision);
        TapeBand.AddFigures(sketch, board.Length, precision);
        Margins.AddFarNotes(sketch, DefectNotes.Of(board, sketch.Scale), sketch.Scale.WidthDrawn);
        BoardDimensions.AddTo(sketch, board, precision, withMiddle: true);
        return new(frame.Width, BoardDimensions.HeightOf(sketch), board.Name, words, sketch.Shapes);
    }
}
