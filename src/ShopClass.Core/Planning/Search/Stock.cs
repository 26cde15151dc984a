using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;

namespace ShopClass.Core.Planning.Search;

/// <summary>A board as the search sees it: plain ticks, its bad places sorted along it.</summary>
internal sealed class Stock
{
    private readonly BadPlace[] bad;

    public Stock(int index, Board board, CourseRules rules)
    {
        Index = index;
        Board = board;
        Start = board.TrimStart.Ticks;
        End = Math.Max(Start, board.Length.Ticks - board.TrimEnd.Ticks);
        Width = board.SmallestWidth.Ticks;
        CrosscutKerf = rules.CrosscutKerf.Ticks;
        RipKerf = rules.RipKerf.Ticks;
        bad =
        [
            .. board
                .Defects.Select(BadPlace.Of)
                .Where(b => b.From < End && b.To > Start && b.Near < Width)
                .OrderBy(b => b.From)
                .ThenBy(b => b.Near)
                .ThenBy(b => b.To)
                .ThenBy(b => b.Far),
        ];
    }

    public int Index { get; }
    public Board Board { get; }

    /// <summary>First tick of usable wood along the board.</summary>
    public long Start { get; }

    /// <summary>Last tick of usable wood along the board.</summary>
    public long End { get; }
    public long Width { get; }
    public long CrosscutKerf { get; }
    public long RipKerf { get; }
    public IReadOnlyList<BadPlace> Bad => bad;
    public long Usable => End - Start;
    public bool IsClear => bad.Length == 0;

    /// <summary>What trimming its start costs.</summary>
    public Cost TrimCost =>
        Start == 0 ? default : new((Int128)Score.CrosscutWeight * Width * Board.Thickness.Ticks, 1);

    /// <summary>Two boards for which every layout of one is a layout of the other, at the same cost.</summary>
    public bool IsLike(Stock other) =>
        IsClear
        && other.IsClear
        && (Start, End, Width) == (other.Start, other.End, other.Width)
        && Board.Thickness == other.Board.Thickness
        && (Board.Cup, Board.Twist, Board.Length)
            == (other.Board.Cup, other.Board.Twist, other.Board.Length)
        && Board.Surfacing == other.Board.Surfacing
        && Board.Price == other.Board.Price;

    /// <summary>Whether a blank of this kind may cover the rectangle.</summary>
    public bool Allows(Kind kind, long from, long to, long near, long far) =>
        FirstClear(kind, from, to - from, near, far, to) == from;

    /// <summary>
    /// The first place at or after <paramref name="from"/> where a blank <paramref name="along"/> long lies clear of bad
    /// wood between the two edges; <see cref="long.MaxValue"/> when there is none before <paramref name="limit"/>.
    /// </summary>
    public long FirstClear(Kind kind, long from, long along, long near, long far, long limit)
    {
        var at = from;
        while (at + along <= limit)
        {
            var next = Blocked(kind, at, at + along, near, far);
            if (next is null)
                return at;
            at = next.Value;
        }

        return long.MaxValue;
    }

    /// <summary>Null when the rectangle is good; otherwise the nearest place along the board past something in its way.</summary>
    private long? Blocked(Kind kind, long from, long to, long near, long far)
    {
        long? marked = null;
        long? back = null;
        foreach (var place in bad)
        {
            if (place.From >= to)
                break;
            if (place.To <= from || place.Near >= far || place.Far <= near)
                continue;
            if (!kind.AcceptsHiddenDefect || place.Reach is DefectReach.Through)
                return place.To;
            if (place.Reach is DefectReach.MarkedFace)
                marked = Math.Min(marked ?? long.MaxValue, place.To);
            else
                back = Math.Min(back ?? long.MaxValue, place.To);
        }

        return marked is null || back is null ? null : Math.Min(marked.Value, back.Value);
    }
}

/// <summary>A bad place in ticks.</summary>
internal readonly record struct BadPlace(long From, long To, long Near, long Far, DefectReach Reach)
{
    public static BadPlace Of(Defect defect) =>
        new(
            defect.Place.From.Ticks,
            defect.Place.To.Ticks,
            defect.Place.Near.Ticks,
            defect.Place.Far.Ticks,
            defect.Reach
        );
}
