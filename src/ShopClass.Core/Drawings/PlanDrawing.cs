using ShopClass.Core.Planning;

namespace ShopClass.Core.Drawings;

/// <summary>A board with its plan: blanks named and dimensioned, kerfs, offcuts and waste, running tape positions from its start.</summary>
public static class PlanDrawing
{
    /// <summary>One board of a checked plan, all cuts marked out. Blank boxes carry the blank's name as tag.</summary>
    public static Drawing Of(CheckedPlan plan, string boardId, DrawingFrame frame) =>
        throw new NotImplementedException();

    /// <summary>
    /// The board as it lies just before cut <paramref name="cutNumber"/>, that cut's line in the accent and its waste
    /// hatched; pieces already sawn apart are drawn apart. A number past the last cut shows the finished pieces.
    /// </summary>
    public static Drawing AtCut(CheckedPlan plan, int cutNumber, DrawingFrame frame) =>
        throw new NotImplementedException();

    /// <summary>Tape positions along a board, in order, each hooked from its start: where to mark, and what for.</summary>
    public static IReadOnlyList<TapeMark> TapeMarks(CheckedPlan plan, string boardId) =>
        throw new NotImplementedException();
}

/// <summary>A place to mark along a board with the tape hooked on its start.</summary>
/// <param name="At">Where, from the start.</param>
/// <param name="Meaning">What the line is: "end trim", "end of A1 and A2".</param>
public sealed record TapeMark(Measure.Length At, string Meaning);
