using ShopClass.Core.Drawings.Working;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Drawings;

/// <summary>A step of the work as a picture: the pieces as they lie, the line to work to, what comes off, where the hand is.</summary>
/// <remarks>
/// Cuts of the breakdown are drawn on the board as it was measured, which has no mirror image; the hand and the waste take
/// the other side for a left-handed student. What is done to single pieces is drawn as a right-handed student has it before
/// them, and the whole picture is mirrored for a left-handed one.
/// </remarks>
public static class StepDrawing
{
    /// <summary>
    /// The picture of a step; null where there is nothing to see (practising on waste). Its title is the step's, its text twin
    /// says in words what it shows.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no step of that number.</exception>
    public static Drawing? Of(CheckedPlan plan, WorkSequence work, int number, DrawingFrame frame)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(number, work.Steps.Count);
        var step = work.Steps[number - 1];
        var drawing = Drawn(plan, work, step, frame);
        return drawing is null
            ? null
            : drawing with
            {
                Title = step.Title,
                TextTwin = StepWords.Of(plan, work, step, drawing.TextTwin),
            };
    }

    private static Drawing? Drawn(
        CheckedPlan plan,
        WorkSequence work,
        Step step,
        DrawingFrame frame
    )
    {
        if (step.Cut is { } cut)
            return HandOnBoard.Added(PlanDrawing.AtCut(plan, cut.Number, frame), cut, step, frame);
        if (OnBoard(plan, step, frame) is { } board)
            return board;
        if (step.Kind is StepKind.SetGauge)
            return GaugePicture.Of(step, frame);
        if (step.Kind is StepKind.Assemble or StepKind.Finish)
            return PartsDrawing.Of(plan.Request.Project, plan.Request.Rules.Precision, frame);
        var pieces = WorkedPieces.Of(plan, work, step);
        if (pieces.Count == 0)
            return null;
        var scene = new PieceScene(plan, step, pieces, frame).Drawn();
        return work.Hand is Hand.Left ? Handed.Mirrored(scene) : scene;
    }

    private static Drawing? OnBoard(CheckedPlan plan, Step step, DrawingFrame frame)
    {
        if (step.Kind is not (StepKind.CheckBoard or StepKind.MarkOut) || step.Pieces.Count == 0)
            return null;
        var board = plan.Request.Boards.FirstOrDefault(b => b.Name == step.Pieces[0]);
        if (board is null)
            return null;
        return step.Kind is StepKind.MarkOut && plan.Plan.Boards.Any(b => b.BoardId == board.Id)
            ? PlanDrawing.Of(plan, board.Id, frame)
            : BoardDrawing.Of(board, plan.Request.Rules.Precision, frame);
    }
}
