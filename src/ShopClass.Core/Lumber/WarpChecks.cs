using ShopClass.Core.Measure;

namespace ShopClass.Core.Lumber;

/// <summary>What is wrong with what was measured of a board's cup and twist.</summary>
internal static class WarpChecks
{
    /// <summary>More than this is no board to plane flat by hand but one to refuse: 1 in, our proposal.</summary>
    public static Length Most { get; } = Length.FromInches(1);

    public static IEnumerable<(string Field, string Sentence)> ProblemsIn(
        Board board,
        UnitSystem unit
    )
    {
        if (Problem("cup", board.Cup, unit) is { } cup)
            yield return ("Cup", cup);
        if (Problem("twist", board.Twist, unit) is { } twist)
            yield return ("Twist", twist);
    }

    private static string? Problem(string what, Length value, UnitSystem unit)
    {
        if (value < Length.Zero)
            return $"The {what} is {Said.Exactly(value, unit)}. Write how much it is, or nothing for a flat board.";
        return value > Most
            ? $"The {what} is {Said.Exactly(value, unit)}. The most taken here is {Said.AtMost(Most, unit)}; a board worse than that is better left."
            : null;
    }
}
