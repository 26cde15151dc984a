using ShopClass.Core.Planning;

namespace ShopClass.Core.Drawings;

/// <summary>A board with its plan: blanks named and dimensioned, kerfs, offcuts and waste, running tape positions from its start.</summary>
public static class PlanDrawing
{
    /// <summary>One board of a checked plan, all cuts marked out. Blank boxes carry the blank's name as tag.</summary>
    /// <exception cref="ArgumentException">The request has no such board.</exception>
    public static Drawing Of(CheckedPlan plan, string boardId, DrawingFrame frame) =>
        MarkedBoard.Draw(PlanOnBoard.Of(plan, boardId), frame);

    /// <summary>
    /// The board as it lies just before cut <paramref name="cutNumber"/>, that cut's line in the accent and its waste
    /// hatched; pieces already sawn apart are drawn apart. A number past the last cut shows the finished pieces.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is less than 1.</exception>
    public static Drawing AtCut(CheckedPlan plan, int cutNumber, DrawingFrame frame)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(cutNumber, 1);
        var cuts = plan.Sequence.Cuts;
        return cutNumber <= cuts.Count
            ? CutScene.Before(plan, cuts[cutNumber - 1], frame)
            : CutScene.AfterTheLast(plan, frame);
    }

    /// <summary>Tape positions along a board, in order, each hooked from its start: where to mark, and what for.</summary>
    /// <exception cref="ArgumentException">The request has no such board.</exception>
    public static IReadOnlyList<TapeMark> TapeMarks(CheckedPlan plan, string boardId) =>
        PlanOnBoard.Of(plan, boardId).TapeMarks();
}

/// <summary>A place to mark along a board with the tape hooked on its start.</summary>
/// <param name="At">Where, from the start.</param>
/// <param name="Meaning">What the line is: "end trim", "end of A1 and A2".</param>
public sealed record TapeMark(Measure.Length At, string Meaning);
