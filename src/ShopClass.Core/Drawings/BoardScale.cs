using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Drawings;

/// <summary>How places on a board and points on its drawing belong together, for drawing and for pointing.</summary>
/// <remarks>
/// One scale both ways. A board that lies has its start to the left and its near edge below, as one stands before it; a
/// board on end has its start at the top and its near edge to the left.
/// </remarks>
public sealed record BoardScale
{
    private readonly Board board;
    private readonly bool upright;

    private BoardScale(Board board, bool upright, double pointsPerTick, Point start)
    {
        this.board = board;
        this.upright = upright;
        PointsPerTick = pointsPerTick;
        Start = start;
    }

    /// <summary>Points on the drawing for one tick of the board, along and across alike.</summary>
    internal double PointsPerTick { get; }

    /// <summary>Where the board's start meets its near edge.</summary>
    internal Point Start { get; }

    /// <summary>Whether the board stands on end.</summary>
    internal bool IsUpright => upright;

    /// <summary>The board's length on the drawing.</summary>
    internal double LengthDrawn => board.Length.Ticks * PointsPerTick;

    /// <summary>The board's greatest width on the drawing.</summary>
    internal double WidthDrawn => GreatestWidth(board).Ticks * PointsPerTick;

    /// <summary>The scale at which this board is drawn in this frame.</summary>
    public static BoardScale For(Board board, DrawingFrame frame)
    {
        board = Drawable.Settled(board);
        var room = BoardRoom.In(frame);
        var scale = Fitting(board, frame, room);
        var above = DefectNotes.RoomFor(board, scale, frame);
        return scale.StartingAt(room.StartOf(scale, above));
    }

    /// <summary>A scale for a board that starts at a given point, for drawings that set it out their own way.</summary>
    internal static BoardScale At(Board board, bool upright, double pointsPerTick, Point start) =>
        new(board, upright, pointsPerTick, start);

    /// <summary>The biggest scale at which the board fits, not yet put in its place.</summary>
    internal static BoardScale Fitting(Board board, DrawingFrame frame, BoardRoom room)
    {
        var along = room.Along / Math.Max(1, board.Length.Ticks);
        var across = room.Across / Math.Max(1, GreatestWidth(board).Ticks);
        return new(board, frame.Upright, Math.Min(along, across), room.StartOf(null, 0));
    }

    /// <summary>The same scale, the board elsewhere on the drawing.</summary>
    internal BoardScale StartingAt(Point start) => new(board, upright, PointsPerTick, start);

    /// <summary>Where a place on the board is on the drawing.</summary>
    public Point PointAt(Length along, Length across) =>
        At(along.Ticks * PointsPerTick, across.Ticks * PointsPerTick);

    /// <summary>The place on the board under a point of the drawing, kept within the board.</summary>
    public (Length Along, Length Across) PlaceAt(Point point)
    {
        var (along, across) = upright
            ? (point.Y - Start.Y, point.X - Start.X)
            : (point.X - Start.X, Start.Y - point.Y);
        var alongTicks = Within(along / PointsPerTick, board.Length);
        var width = WidthAt(board, Length.FromTicks(alongTicks));
        return (
            Length.FromTicks(alongTicks),
            Length.FromTicks(Within(across / PointsPerTick, width))
        );
    }

    /// <summary>The rectangle of the drawing that a rectangle of the board takes.</summary>
    public (double X, double Y, double Width, double Height) BoxFor(BoardRect rect)
    {
        var a = PointAt(rect.From, rect.Near);
        var b = PointAt(rect.To, rect.Far);
        return (Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Abs(b.X - a.X), Math.Abs(b.Y - a.Y));
    }

    /// <summary>The point so many drawing points along and across the board.</summary>
    internal Point At(double along, double across) =>
        upright ? new(Start.X + across, Start.Y + along) : new(Start.X + along, Start.Y - across);

    /// <summary>The board's width at a place, straight between the three places it was measured.</summary>
    internal static Length WidthAt(Board board, Length along)
    {
        var half = board.Length.Ticks / 2;
        if (half == 0)
            return board.SmallestWidth;
        return along.Ticks <= half
            ? Between(board.WidthAtStart, board.WidthAtMiddle, along.Ticks, half)
            : Between(
                board.WidthAtMiddle,
                board.WidthAtEnd,
                along.Ticks - half,
                board.Length.Ticks - half
            );
    }

    /// <summary>The greatest of the three widths.</summary>
    internal static Length GreatestWidth(Board board) =>
        Length.Max(board.WidthAtStart, Length.Max(board.WidthAtMiddle, board.WidthAtEnd));

    private static Length Between(Length from, Length to, long part, long whole) =>
        Length.FromTicks(from.Ticks + (to.Ticks - from.Ticks) * part / whole);

    private static long Within(double ticks, Length most) =>
        (long)Math.Round(Math.Clamp(ticks, 0, Math.Max(0, most.Ticks)));
}
