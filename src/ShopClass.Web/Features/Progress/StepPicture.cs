using ShopClass.Core.Drawings;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Web.Features.Progress;

/// <summary>
/// The picture of a step: the wood just before its cut, or the board as it is marked out. Without the grain, which is half of
/// its weight: what is to be done stands out the better.
/// </summary>
public static class StepPicture
{
    public static Drawing? Of(CheckedPlan plan, Step step, DrawingFrame frame) =>
        Whole(plan, step, frame) is { } whole
            ? whole with
            {
                Shapes = [.. whole.Shapes.Where(s => s.Ink is not Ink.Grain)],
            }
            : null;

    private static Drawing? Whole(CheckedPlan plan, Step step, DrawingFrame frame)
    {
        if (step.Cut is { } cut)
            return PlanDrawing.AtCut(plan, cut.Number, frame);
        return
            step.Kind is StepKind.CheckBoard or StepKind.MarkOut && BoardOf(plan, step) is { } board
            ? PlanDrawing.Of(plan, board, frame)
            : null;
    }

    private static string? BoardOf(CheckedPlan plan, Step step) =>
        plan.Request.Boards.FirstOrDefault(b => step.Pieces.Contains(b.Name))?.Id is { } named
        && plan.Plan.Boards.Any(b => b.BoardId == named)
            ? named
        : plan.Plan.Boards is [var only] ? only.BoardId
        : null;
}
