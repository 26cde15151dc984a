using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Lumber;

/// <summary>
/// What is wrong with a logged board, field by field. Field names: Name, Species, Surfacing, Thickness, WidthAtStart,
/// WidthAtMiddle, WidthAtEnd, Length, Cup, Twist, TrimStart, TrimEnd, Price, Defects[0], Defects[0].From, Defects[0].To,
/// Defects[0].Near, Defects[0].Far.
/// </summary>
public static class BoardChecks
{
    /// <summary>Most defects marked on one board.</summary>
    public const int MostDefects = 30;

    /// <summary>Problems as field and sentence; empty when the board is right.</summary>
    public static IReadOnlyList<(string Field, string Sentence)> ProblemsIn(
        Board board,
        CourseRules rules
    ) =>
        [
            .. Found("Name", TypedText.NameProblem(board.Name)),
            .. KindProblems(board),
            .. SizeProblems(board, rules.Unit),
            .. WarpChecks.ProblemsIn(board, rules.Unit),
            .. TrimChecks.ProblemsIn(board, rules),
            .. Found("Price", PriceProblem(board.Price)),
            .. DefectChecks.ProblemsIn(board, rules.Unit),
        ];

    /// <summary>
    /// A question to ask before saving when a board's size looks like a seller's nominal size: "1 x 10 is a seller's
    /// name for about 3/4 x 9 1/4 in. Did you measure it?" Null when there is nothing to ask.
    /// </summary>
    /// <remarks>
    /// Sizes are those of PS 20 (<see cref="DressedSizes"/>). It is asked of rough boards too: a rough 1 x 10 may be
    /// truly that, and the answer is then yes. Metric sizes are not asked about: sellers name them as sawn.
    /// </remarks>
    public static string? NominalQuestion(Board board, CourseRules rules)
    {
        if (
            board.WidthAtStart != board.WidthAtMiddle
            || board.WidthAtStart != board.WidthAtEnd
            || DressedSizes.TypedAsNominal(board.Thickness, board.SmallestWidth) is not { } size
        )
            return null;
        var (thickness, width) = (
            LengthWriter.Write(size.Thickness, rules.Precision),
            LengthWriter.WriteWithUnit(size.Width, rules.Precision)
        );
        return $"{size.Nominal.Replace("x", " × ", StringComparison.Ordinal)} is a seller's name for a planed board of about {thickness} × {width}. Did you measure it?";
    }

    private static IEnumerable<(string, string)> KindProblems(Board board)
    {
        if (SpeciesTable.Find(board.SpeciesId) is null)
            yield return ("Species", "Choose a species from the list.");
        if (!Enum.IsDefined(board.Surfacing))
            yield return ("Surfacing", "Choose how the board was surfaced from the list.");
    }

    private static IEnumerable<(string, string)> SizeProblems(Board board, UnitSystem unit)
    {
        var widest = PartChecks.Widest;
        return
        [
            .. Found(
                "Thickness",
                SizeSentences.Problem("thickness", board.Thickness, PartChecks.Thickest, unit)
            ),
            .. Found(
                "WidthAtStart",
                SizeSentences.Problem("width at the start", board.WidthAtStart, widest, unit)
            ),
            .. Found(
                "WidthAtMiddle",
                SizeSentences.Problem("width in the middle", board.WidthAtMiddle, widest, unit)
            ),
            .. Found(
                "WidthAtEnd",
                SizeSentences.Problem("width at the far end", board.WidthAtEnd, widest, unit)
            ),
            .. Found(
                "Length",
                SizeSentences.Problem("length", board.Length, PartChecks.Longest, unit)
            ),
        ];
    }

    private static string? PriceProblem(Money? price) =>
        price switch
        {
            null => null,
            { MinorUnits: < 0 } =>
                "The price is less than zero. Leave it empty or write what it cost.",
            { Currency: { Length: 3 } code } when code.All(char.IsAsciiLetterUpper) => null,
            _ => "The currency is missing. Write its three letters, such as USD.",
        };

    private static IEnumerable<(string, string)> Found(string field, string? sentence) =>
        sentence is null ? [] : [(field, sentence)];
}
