using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing.Steps.Rehearsing;

namespace ShopClass.Core.Sawing.Steps;

/// <summary>One piece of wood as it is after a step.</summary>
/// <param name="Name">What is written on it: <c>A2</c>, <c>A2.1</c>, a board's name, the blanks still joined in it, or "offcut" and "waste".</param>
/// <param name="Thickness">Its thickness.</param>
/// <param name="Width">Its width; of a part, across its length.</param>
/// <param name="Length">Its length; of a part, the part's length.</param>
/// <param name="Use">What becomes of it.</param>
/// <param name="At">Where it lies: the station of the last step that worked on it.</param>
/// <param name="BoardId">The board it comes from; null for a glue-up.</param>
/// <param name="Rect">What it covered of that board when it was sawn free; null for a glue-up.</param>
public sealed record WorkPiece(
    string Name,
    Length Thickness,
    Length Width,
    Length Length,
    PieceUse Use,
    Station At,
    string? BoardId,
    BoardRect? Rect
);

/// <summary>All pieces after a step; step 0 is the boards before the first.</summary>
/// <param name="Step">The step just done; 0 before the first.</param>
/// <param name="Pieces">The pieces.</param>
public sealed record WorkState(int Step, IReadOnlyList<WorkPiece> Pieces);

/// <summary>What the independent replay of the steps found.</summary>
/// <param name="States">The state after each step, beginning with the boards.</param>
/// <param name="Findings">What it noticed, in the order of the rules.</param>
public sealed record StepRehearsalReport(
    IReadOnlyList<WorkState> States,
    IReadOnlyList<Finding> Findings
)
{
    /// <summary>Whether no must is broken.</summary>
    public bool Passed => Findings.All(f => f.Kind is not FindingKind.Must);
}

/// <summary>Replays the whole work, step by step. Shares no code with what writes the steps.</summary>
/// <remarks>
/// It takes nothing from the writer's word: it saws the boards itself, follows every piece, and judges what the steps say
/// they leave. Nothing in a sequence makes it throw. The rules it goes by are listed in <see cref="StepRules.All"/>.
/// </remarks>
public static class StepRehearsal
{
    /// <summary>Does every step in order and judges it against the plan, the project and the course's rules.</summary>
    public static StepRehearsalReport Replay(CheckedPlan plan, WorkSequence work)
    {
        var run = new StepRun(plan, work);
        return new(run.States(), [.. StepRules.All.SelectMany(rule => rule(run))]);
    }
}
