using ShopClass.Core.Courses;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Lumber;

/// <summary>What is wrong with a board's end trims.</summary>
internal static class TrimChecks
{
    public static IEnumerable<(string Field, string Sentence)> ProblemsIn(
        Board board,
        CourseRules rules
    )
    {
        var start = Problem(board.TrimStart, rules);
        var end = Problem(board.TrimEnd, rules);
        if (start is not null)
            yield return ("TrimStart", start);
        if (end is not null)
            yield return ("TrimEnd", end);
        if (start is null && end is null && Eaten(board, rules.Unit) is { } eaten)
            yield return (board.TrimEnd > board.TrimStart ? "TrimEnd" : "TrimStart", eaten);
    }

    private static string? Problem(Length trim, CourseRules rules)
    {
        if (trim < Length.Zero)
            return $"The trim is {Said.Exactly(trim, rules.Unit)}. Write zero to leave the end as it is, or how much to saw off.";
        return trim > Length.Zero && trim < rules.CrosscutKerf
            ? $"A trim of {Said.Exactly(trim, rules.Unit)} is less than the saw turns to dust, {Said.Exactly(rules.CrosscutKerf, rules.Unit)}. Write zero to leave the end as it is, or at least that much."
            : null;
    }

    private static string? Eaten(Board board, UnitSystem unit)
    {
        var trims = Sum(board.TrimStart, board.TrimEnd);
        return board.Length > Length.Zero && trims >= board.Length
            ? $"The trims take {Said.Exactly(trims, unit)}, and the board is {Said.Exactly(board.Length, unit)} long. Nothing would be left; trim less."
            : null;
    }

    // Either trim alone may be longer than any board; the sum of two such must not overflow.
    private static Length Sum(Length a, Length b) =>
        Length.FromTicks((long)Int128.Min((Int128)a.Ticks + b.Ticks, long.MaxValue));
}
