using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning.Classes;

/// <summary>Where boards come from: a listed size, or one board on the rack.</summary>
/// <param name="Board">One of them.</param>
/// <param name="Size">The listed size; null for a board on the rack.</param>
/// <param name="Cost">What one costs or counts for.</param>
/// <param name="Copies">How many there are; <see cref="int.MaxValue"/> for no end of them.</param>
internal sealed record Source(Board Board, StockSize? Size, long Cost, int Copies)
{
    /// <summary>Length between the end trims.</summary>
    public Length Usable => Board.Length - Board.TrimStart - Board.TrimEnd;

    /// <summary>The longest run between bad places.</summary>
    public (Length From, Length Along) Run { get; } = LongestRun(Board);

    public static Source Of(StockSize size, CourseRules rules) =>
        new(
            size.ToBoard(size.Id, size.Name, rules),
            size,
            size.Price,
            size.Available ?? int.MaxValue
        );

    public static Source Of(RackBoard rack) => new(rack.Board, null, rack.Value, 1);

    private static (Length From, Length Along) LongestRun(Board board)
    {
        var end = Length.Max(board.TrimStart, board.Length - board.TrimEnd);
        var best = (From: board.TrimStart, Along: Length.Zero);
        var from = board.TrimStart;
        foreach (var bad in board.Defects.OrderBy(d => d.Place.From).ThenBy(d => d.Place.To))
        {
            if (bad.Place.Near >= board.SmallestWidth)
                continue;
            Try(Length.Min(bad.Place.From, end));
            from = Length.Max(from, bad.Place.To);
        }

        Try(end);
        return best;

        void Try(Length to)
        {
            if (to - from > best.Along)
                best = (from, to - from);
        }
    }
}
