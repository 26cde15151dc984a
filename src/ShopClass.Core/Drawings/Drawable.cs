using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Drawings;

/// <summary>
/// Boards that can be drawn whatever was typed: while a board is being logged, its figures may not be right yet, and the
/// drawing beside them must stand all the same.
/// </summary>
internal static class Drawable
{
    private static readonly Length Least = Length.FromTicks(1);

    /// <summary>The board with every size above zero, and trims and defects kept within it.</summary>
    public static Board Settled(Board board)
    {
        var sized = board with
        {
            Length = Length.Max(board.Length, Least),
            WidthAtStart = Length.Max(board.WidthAtStart, Least),
            WidthAtMiddle = Length.Max(board.WidthAtMiddle, Least),
            WidthAtEnd = Length.Max(board.WidthAtEnd, Least),
        };
        var width = BoardScale.GreatestWidth(sized);
        return sized with
        {
            TrimStart = Within(board.TrimStart, sized.Length),
            TrimEnd = Within(board.TrimEnd, sized.Length),
            Defects =
            [
                .. board.Defects.Select(d =>
                    d with
                    {
                        Place = Within(d.Place, sized.Length, width),
                    }
                ),
            ],
        };
    }

    private static BoardRect Within(BoardRect place, Length length, Length width)
    {
        var (from, near) = (Within(place.From, length), Within(place.Near, width));
        return new(
            from,
            Length.Max(from, Within(place.To, length)),
            near,
            Length.Max(near, Within(place.Far, width))
        );
    }

    private static Length Within(Length length, Length most) =>
        Length.Max(Length.Zero, Length.Min(length, most));
}
