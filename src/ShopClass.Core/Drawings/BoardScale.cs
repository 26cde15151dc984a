using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Drawings;

/// <summary>How places on a board and points on its drawing belong together, for drawing and for pointing.</summary>
public sealed record BoardScale
{
    /// <summary>The scale at which this board is drawn in this frame.</summary>
    public static BoardScale For(Board board, DrawingFrame frame) =>
        throw new NotImplementedException();

    /// <summary>Where a place on the board is on the drawing.</summary>
    public Point PointAt(Length along, Length across) => throw new NotImplementedException();

    /// <summary>The place on the board under a point of the drawing, kept within the board.</summary>
    public (Length Along, Length Across) PlaceAt(Point point) =>
        throw new NotImplementedException();

    /// <summary>The rectangle of the drawing that a rectangle of the board takes.</summary>
    public (double X, double Y, double Width, double Height) BoxFor(BoardRect rect) =>
        throw new NotImplementedException();
}
