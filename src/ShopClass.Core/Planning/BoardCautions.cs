using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning;

/// <summary>What to know about boards although they fit.</summary>
internal static class BoardCautions
{
    /// <summary>Cautions about the boards of the plan, or about all of them where the plan is not complete.</summary>
    public static IReadOnlyList<string> Of(PlanningRequest request, CutPlan plan)
    {
        var used = request.Boards.Where(b =>
            !plan.IsComplete || plan.Boards.Any(l => l.BoardId == b.Id)
        );
        return [.. used.SelectMany(b => On(request, b)).Distinct()];
    }

    private static IEnumerable<string> On(PlanningRequest request, Board board)
    {
        var rules = request.Rules;
        if (SpeciesTable.Find(board.SpeciesId) is { } species)
        {
            if (
                species.SpecificGravity12 is { } gravity
                && gravity.Value * 100 > rules.HardGoingAbove
            )
            {
                yield return $"{species.CommonName} is hard going by hand: specific gravity {gravity.Value:0.00}, this course's limit for beginners is {rules.HardGoingAbove / 100m:0.00}.";
            }

            if (species.IsSensitiser)
            {
                yield return $"The dust of {species.CommonName} is known to sensitise. Follow your local rules on wood dust.";
            }
        }

        if (Hollow(board, rules) is { } hollow)
            yield return hollow;
        if (board.HasPlanedFaces)
            yield break;
        var each = BlankNeeds.WriteExact(rules.PlaningPerFace, rules);
        yield return rules.PlaningTaught
            ? $"{board.Name} is rough: both faces are planed, about {each} each, before any reference mark."
            : $"{board.Name} is rough and this course teaches no planing: it has to come prepared.";
    }

    private static string? Hollow(Board board, CourseRules rules)
    {
        if (Warp.IsFlat(board, board.SmallestWidth, board.Length))
            return null;
        string Write(Length length) => BlankNeeds.WriteExact(length, rules);
        var how = (board.Cup > Length.Zero, board.Twist > Length.Zero) switch
        {
            (true, true) => $"cupped by {Write(board.Cup)} and twisted by {Write(board.Twist)}",
            (true, false) => $"cupped by {Write(board.Cup)}",
            _ => $"twisted by {Write(board.Twist)}",
        };
        return $"{board.Name} is {how}: what is still hollow when it is sawn out is planed flat, a small piece far less than a big one.";
    }
}
