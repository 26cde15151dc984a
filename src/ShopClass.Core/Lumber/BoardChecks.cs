using ShopClass.Core.Courses;

namespace ShopClass.Core.Lumber;

/// <summary>
/// What is wrong with a logged board, field by field. Field names: Name, Species, Thickness, WidthAtStart, WidthAtMiddle,
/// WidthAtEnd, Length, TrimStart, TrimEnd, Defects[0], Defects[0].From, Defects[0].To, Defects[0].Near, Defects[0].Far.
/// </summary>
public static class BoardChecks
{
    /// <summary>Most defects marked on one board.</summary>
    public const int MostDefects = 30;

    /// <summary>Problems as field and sentence; empty when the board is right.</summary>
    public static IReadOnlyList<(string Field, string Sentence)> ProblemsIn(
        Board board,
        CourseRules rules
    ) => throw new NotImplementedException();

    /// <summary>
    /// A question to ask before saving when a board's size looks like a seller's nominal size: "1 x 10 is a seller's
    /// name for about 3/4 x 9 1/4 in. Did you measure it?" Null when there is nothing to ask.
    /// </summary>
    public static string? NominalQuestion(Board board, CourseRules rules) =>
        throw new NotImplementedException();
}
