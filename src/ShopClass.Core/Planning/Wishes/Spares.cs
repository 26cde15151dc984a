using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Planning.Wishes;

/// <summary>Wood kept back for one more of the part most likely to be spoiled.</summary>
/// <param name="Risk">The part and why it is risky.</param>
/// <param name="IsTheRiskiest">Whether no part is riskier; otherwise there was no room for a riskier one.</param>
/// <param name="BoardId">The board it lies on.</param>
/// <param name="Place">Where the spare would be sawn.</param>
/// <param name="Piece">The leftover it lies in.</param>
public sealed record Spare(
    PartRisk Risk,
    bool IsTheRiskiest,
    string BoardId,
    BoardRect Place,
    BoardRect Piece
)
{
    /// <summary>The part's letter.</summary>
    public string Letter => Risk.Part.Letter;
}

/// <summary>Reserves a spare before what is left is called an offcut.</summary>
public static class Spares
{
    /// <summary>
    /// The spare of the riskiest part that finds room, in the smallest leftover that holds it; null where there is none, and
    /// for a plan that is not complete or not rehearsed.
    /// </summary>
    public static Spare? Of(CheckedPlan made)
    {
        if (!made.Plan.IsComplete || !made.Rehearsal.Passed || made.Rehearsal.Steps.Count == 0)
            return null;
        Piece[] left =
        [
            .. made
                .Rehearsal.Steps[^1]
                .Pieces.Where(p => p.Fate is PieceFate.Offcut or PieceFate.Waste)
                .OrderBy(p => p.Rect.Area.SquareTicks),
        ];
        var risks = PartRisk.Ranked(made.Request.Project);
        foreach (var risk in risks)
        {
            foreach (var piece in left)
            {
                var board = made.Request.Boards.First(b => b.Id == piece.BoardId);
                if (SparePlace.In(piece.Rect, board, risk.Part, made.Request.Rules) is { } place)
                    return new(risk, risk == risks[0], piece.BoardId, place, piece.Rect);
            }
        }

        return null;
    }

    /// <summary>Where the spare is and why that part, for the page and the kit sheet.</summary>
    public static string Sentence(Spare spare, PlanningRequest request)
    {
        string Say(Length length) => Reasons.Say.Length(request, length);
        var board = request.Boards.First(b => b.Id == spare.BoardId).Name;
        var size =
            $"{LengthWriter.Write(spare.Place.Across, request.Rules.Precision)} × {Say(spare.Place.Along)}";
        var which = spare.IsTheRiskiest
            ? $"the riskiest part{SpareOfTheRiskiest.Because(spare.Risk)}"
            : $"the riskiest part there is room for{SpareOfTheRiskiest.Because(spare.Risk)}";
        return $"Keep {size} of {board}, from {Say(spare.Place.From)} along, for one more {spare.Letter}: {which}. Do not give that piece away before {spare.Letter} is done.";
    }
}
