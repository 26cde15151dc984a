using System.Globalization;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning.Reasons;

/// <summary>
/// The proof by area: each blank takes its own area with a kerf along one edge and one end, and a board yields at most
/// its own with the same kerfs added (the area law).
/// </summary>
internal static class TooLittleArea
{
    /// <summary>Proofs for parts that must come from the same boards by their thickness; those to the fewest boards first.</summary>
    public static IEnumerable<Impossibility> Of(
        PlanningRequest request,
        IReadOnlyList<PartOnBoards> parts
    )
    {
        var groups = parts
            .Where(p => p.Boards.Count > 0)
            .Select(p => p.Boards)
            .DistinctBy(
                boards => string.Join('\n', boards.Select(b => b.Id)),
                StringComparer.Ordinal
            )
            .OrderBy(boards => boards.Count);
        return groups.Select(boards => On(request, parts, boards)).OfType<Impossibility>().Take(1);
    }

    private static Impossibility? On(
        PlanningRequest request,
        IReadOnlyList<PartOnBoards> parts,
        IReadOnlyList<Board> boards
    )
    {
        PartOnBoards[] these =
        [
            .. parts.Where(p => p.Boards.Count > 0 && p.Boards.All(boards.Contains)),
        ];
        var there = Sum(boards.Select(Usable));
        var needed =
            Sum(these.Select(p => With(p) * p.Part.Quantity))
            - Sum(boards.Select(b => Kerfs(request, b)));
        // Written to tenths, each rounded to the cautious side, the two must still differ.
        var (need, has) = (Tenths(request, needed), Tenths(request, there) + 1);
        if (need <= has)
            return null;
        var names =
            boards.Count == 1
                ? $"{boards[0].Name} has"
                : $"{Say.List([.. boards.Select(b => b.Name)])} have";
        return new(
            ImpossibilityKind.Area,
            [.. these.Select(p => p.Part.Letter)],
            $"{Whose(parts, these)} and the kerfs between them take at least {Words(request, need)}; between the end trims {names} less than {Words(request, has)}."
        );
    }

    private static string Whose(IReadOnlyList<PartOnBoards> all, PartOnBoards[] these) =>
        these.Length == all.Count
            ? "All blanks"
            : $"The blanks of {Say.List([.. these.Select(p => p.Part.Letter)])}";

    private static Int128 Usable(Board board) =>
        (Int128)Along(board).Ticks * board.SmallestWidth.Ticks;

    private static Length Along(Board board) =>
        Length.Max(Length.Zero, board.Length - board.TrimStart - board.TrimEnd);

    /// <summary>What the area law adds to a board.</summary>
    private static Int128 Kerfs(PlanningRequest request, Board board) =>
        (Int128)(Along(board) + request.Rules.CrosscutKerf).Ticks
            * (board.SmallestWidth + request.Rules.RipKerf).Ticks
        - Usable(board);

    /// <summary>The least area of one blank with its kerfs.</summary>
    private static Int128 With(PartOnBoards part)
    {
        var rules = part.Request.Rules;
        var (along, across) = (part.Along, part.LeastWidthAnywhere);
        var straight = (Int128)(along + rules.CrosscutKerf).Ticks * (across + rules.RipKerf).Ticks;
        var turned = (Int128)(across + rules.CrosscutKerf).Ticks * (along + rules.RipKerf).Ticks;
        return part.MayTurn ? Int128.Min(straight, turned) : straight;
    }

    private static Int128 Sum(IEnumerable<Int128> areas) =>
        areas.Aggregate((Int128)0, (a, b) => a + b);

    /// <summary>Tenths of a square inch or square centimetre, rounded down.</summary>
    private static Int128 Tenths(PlanningRequest request, Int128 area)
    {
        Int128 side =
            request.Rules.Unit is UnitSystem.Inch
                ? Length.TicksPerInch
                : 10 * Length.TicksPerMillimetre;
        return area * 10 / (side * side);
    }

    private static string Words(PlanningRequest request, Int128 tenths) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{(decimal)tenths / 10:0.0} {(request.Rules.Unit is UnitSystem.Inch ? "sq in" : "cm²")}"
        );
}
