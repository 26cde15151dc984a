using ShopClass.Core.Measure;
using ShopClass.Core.Progress;
using ShopClass.Data.Access;
using ShopClass.Data.Store;
using ShopClass.Data.Students.Logging;

namespace ShopClass.Data.Progress;

/// <summary>What stands in the way of what somebody says about a step.</summary>
internal static class SayChecks
{
    /// <summary>One mark stands for one thing said.</summary>
    public static readonly FieldProblem SaidAlready = new(
        "",
        "Something else was said under the same mark before. Say it once more."
    );

    private static readonly FieldProblem NotYours = new(
        "",
        "Only the instructor can say that about a step."
    );

    private static readonly StepActionKind[] OfInstructors =
    [
        StepActionKind.CheckedOff,
        StepActionKind.SentBack,
        StepActionKind.Helped,
        StepActionKind.Settled,
    ];

    /// <summary>Why it cannot be said as the work stands; null where it can.</summary>
    public static FieldProblem? ProblemWith(Viewer viewer, WorkProgress progress, StepAction action)
    {
        if (viewer is not InstructorViewer && OfInstructors.Contains(action.Kind))
            return NotYours;
        if (TypedText.NotesProblem(action.Text) is { } text)
            return new("Text", text);
        if (ActionChecks.MinutesProblem(action) is { } minutes)
            return new("Minutes", minutes);
        return ActionChecks.ProblemWith(progress, action) is { } sentence
            ? new(action.Kind is StepActionKind.Measured ? "Size" : "", sentence)
            : null;
    }

    /// <summary>Nothing is sawn from a board before the instructor has said yes to it, where the course wants that.</summary>
    public static async Task<FieldProblem?> WaitsForYesAsync(
        ShopContext shop,
        PlanInHand work,
        StepAction action,
        CancellationToken cancel
    )
    {
        if (
            action.Kind is not StepActionKind.Tick
            || work.Progress.Find(action.StepId)?.Step.Saw is null
        )
            return null;
        var boards = work
            .Plan.Checked.Request.Boards.Where(b => Guid.TryParse(b.Id, out _))
            .Select(b => Guid.Parse(b.Id))
            .ToList();
        return await BoardYesStore.WaitingAsync(shop, boards, cancel) is [var name, ..]
            ? new(
                "",
                $"Your instructor has not said yes to {name} yet, and nothing is sawn before that. Show them the board."
            )
            : null;
    }
}
