using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning.Search;

/// <summary>Which parts may be glued up from how many strips.</summary>
/// <remarks>
/// Parts are glued up only where the part allows it and the course teaches it. A part is tried in the fewest strips that
/// the widest board can yield, which is one piece where that goes, and in one strip more: narrower strips may fit where
/// wider ones do not; never more strips than the course allows. More joints than that are no plan for a class.
/// </remarks>
internal static class GlueUpChoices
{
    /// <summary>The most choices tried for one request.</summary>
    public const int MostChoices = 64;

    /// <summary>Choices by number of joints, fewest first; letters with one strip are not listed.</summary>
    public static IReadOnlyList<IReadOnlyDictionary<string, int>> For(PlanningRequest request)
    {
        Part[] open = request.Rules.EdgeGluingTaught
            ? [.. request.Project.Parts.Where(p => p.GlueUpAllowed && p.Quantity > 0)]
            : [];
        List<SortedDictionary<string, int>> choices = [new(StringComparer.Ordinal)];
        foreach (var part in open)
        {
            var fewest = FewestStrips(part, request);
            choices =
            [
                .. choices
                    .SelectMany(c =>
                        Enumerable
                            .Range(fewest, fewest < request.Rules.MostGlueUpStrips ? 2 : 1)
                            .Select(strips => With(c, part, strips))
                    )
                    .OrderBy(c => Joints(c, open))
                    .Take(MostChoices),
            ];
        }

        return choices;
    }

    private static int FewestStrips(Part part, PlanningRequest request)
    {
        var suitable = request
            .Boards.Where(b => BlankNeeds.ThicknessProblem(part, request.Rules, b) is null)
            .ToList();
        if (suitable.Count == 0)
            return 1;
        if (suitable.Any(b => YieldsWhole(part, request, b)))
            return 1;
        var widest = suitable.Max(b => b.SmallestWidth);
        var strips = 2;
        while (
            strips < request.Rules.MostGlueUpStrips && StripWidth(part, request, strips) > widest
        )
            strips++;
        return strips;
    }

    private static bool YieldsWhole(Part part, PlanningRequest request, Board board) =>
        board.SmallestWidth
        >= (
            board.HasStraightEdges
                ? BlankNeeds.WidthBetweenStraightEdges(part)
                : BlankNeeds.OnePiece(part, request.Rules, board.Surfacing).Width
        );

    private static Length StripWidth(Part part, PlanningRequest request, int strips) =>
        BlankNeeds.GlueUpStrip(part, request.Rules, Surfacing.S4S, strips).Width;

    private static SortedDictionary<string, int> With(
        SortedDictionary<string, int> choice,
        Part part,
        int strips
    )
    {
        var next = new SortedDictionary<string, int>(choice, StringComparer.Ordinal);
        if (strips > 1)
            next[part.Letter] = strips;
        return next;
    }

    private static int Joints(SortedDictionary<string, int> choice, Part[] parts) =>
        parts.Sum(p => p.Quantity * (choice.GetValueOrDefault(p.Letter, 1) - 1));
}
