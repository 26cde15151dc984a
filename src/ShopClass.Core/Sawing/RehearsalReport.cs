using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;

namespace ShopClass.Core.Sawing;

/// <summary>How bad a finding is.</summary>
public enum FindingKind
{
    /// <summary>A must is broken: the plan is refused.</summary>
    Must,

    /// <summary>Worth knowing; the plan stands.</summary>
    Note,
}

/// <summary>Something the rehearsal noticed.</summary>
/// <param name="Kind">Must or note.</param>
/// <param name="Rule">The rule's name, which is its whole sentence in one word: <c>PartsMustLeaveAKerfBetweenThem</c>.</param>
/// <param name="BoardId">The board, where there is one.</param>
/// <param name="Subject">The part, blank or cut: <c>A2</c>, <c>cut 4</c>.</param>
/// <param name="Amount">By how much, where it can be said.</param>
/// <param name="Sentence">All of it as a sentence.</param>
public sealed record Finding(
    FindingKind Kind,
    string Rule,
    string? BoardId,
    string? Subject,
    Length? Amount,
    string Sentence
);

/// <summary>What a piece is after a step.</summary>
public enum PieceFate
{
    /// <summary>Still to be cut.</summary>
    Stock,

    /// <summary>A blank of the project.</summary>
    Blank,

    /// <summary>Big and clear enough to keep.</summary>
    Offcut,

    /// <summary>Not worth keeping.</summary>
    Waste,
}

/// <summary>One piece of wood as it lies after a step, in the board's own coordinates.</summary>
/// <param name="BoardId">The board it comes from.</param>
/// <param name="Rect">What it covers of the board.</param>
/// <param name="Fate">What it is.</param>
/// <param name="Blank">Which blank, when it is one.</param>
public sealed record Piece(string BoardId, BoardRect Rect, PieceFate Fate, BlankKey? Blank = null);

/// <summary>All pieces after a cut; step 0 is the boards before the first.</summary>
/// <param name="CutNumber">The cut just made; 0 before the first.</param>
/// <param name="Pieces">All pieces of all boards in the plan.</param>
public sealed record RehearsalStep(int CutNumber, IReadOnlyList<Piece> Pieces);

/// <summary>Where a board's area went; the four add up to the board to the tick.</summary>
/// <param name="BoardId">The board.</param>
/// <param name="Board">Its whole area: length x smallest width.</param>
/// <param name="Blanks">Area of the blanks.</param>
/// <param name="Kerf">Area turned to sawdust.</param>
/// <param name="Offcuts">Area worth keeping.</param>
/// <param name="Waste">The rest.</param>
public sealed record AreaBalance(
    string BoardId,
    Area Board,
    Area Blanks,
    Area Kerf,
    Area Offcuts,
    Area Waste
);

/// <summary>What the independent replay of a plan found.</summary>
/// <param name="Steps">The state after each cut, beginning with the whole boards.</param>
/// <param name="Findings">What it noticed; musts first.</param>
/// <param name="Balances">One for each board in the plan.</param>
public sealed record RehearsalReport(
    IReadOnlyList<RehearsalStep> Steps,
    IReadOnlyList<Finding> Findings,
    IReadOnlyList<AreaBalance> Balances
)
{
    /// <summary>Whether no must is broken.</summary>
    public bool Passed => Findings.All(f => f.Kind is not FindingKind.Must);
}
