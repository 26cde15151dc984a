using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Orders;

/// <summary>What is to become of a piece on the rack.</summary>
public enum RackState
{
    /// <summary>There for whoever needs it.</summary>
    Free,

    /// <summary>Kept for something; no order counts on it.</summary>
    SetAside,
}

/// <summary>Boards or offcuts of one kind already in the shop.</summary>
public sealed record RackPiece
{
    /// <summary>A key that stays the same while the piece is listed.</summary>
    public required string Id { get; init; }

    /// <summary>What it measures.</summary>
    public required Board Board { get; init; }

    /// <summary>Where it lies: "rack 2, top". The preparation list walks places in the order of their names.</summary>
    public string Place { get; init; } = "";

    /// <summary>How many there are that measure this. At least 1.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Whether an order may count on it.</summary>
    public RackState State { get; init; }
}

/// <summary>What is wrong with a piece on the rack: the fields of <see cref="BoardChecks"/>, Place and Count.</summary>
public static class RackChecks
{
    /// <summary>Most entries on a rack.</summary>
    public const int MostPieces = 300;

    /// <summary>Most characters in a place.</summary>
    public const int LongestPlace = 40;

    /// <summary>Problems as field and sentence; empty when it is right.</summary>
    public static IReadOnlyList<(string Field, string Sentence)> ProblemsIn(
        RackPiece piece,
        CourseRules rules
    ) =>
        [
            .. BoardChecks.ProblemsIn(piece.Board, rules),
            .. piece.Place.Length == 0 || TypedText.NameProblem(piece.Place, LongestPlace) is null
                ? Array.Empty<(string, string)>()
                : [("Place", $"A place has at most {LongestPlace} letters on one line.")],
            .. piece.Count is >= 1 and <= StockChecks.MostBoards
                ? Array.Empty<(string, string)>()
                : [("Count", $"Write how many there are, from 1 to {StockChecks.MostBoards:N0}.")],
        ];
}
