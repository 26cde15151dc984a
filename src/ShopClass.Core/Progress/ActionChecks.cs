using ShopClass.Core.Measure;
using ShopClass.Core.Paces;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Progress;

/// <summary>Whether something can be said about a step as the work stands.</summary>
public static class ActionChecks
{
    /// <summary>What stands in the way, as a sentence; null when nothing does.</summary>
    public static string? ProblemWith(WorkProgress progress, StepAction action)
    {
        if (progress.Find(action.StepId) is not { } state)
            return "This step is not in the plan. Open your steps again.";
        return action.Kind switch
        {
            StepActionKind.Tick or StepActionKind.CheckedOff => NotBefore(progress, state),
            StepActionKind.Untick => NotUnder(progress, state),
            StepActionKind.Note when action.Text.Length == 0 =>
                "The note is empty. Write a few words.",
            StepActionKind.Measured => SizeProblem(state.Step, action),
            StepActionKind.Spoiled or StepActionKind.Settled => PieceProblem(state.Step, action),
            _ => TypedText.NotesProblem(action.Text),
        };
    }

    /// <summary>Why the minutes said with it cannot be, as a sentence; null where they can or none were said.</summary>
    public static string? MinutesProblem(StepAction action) =>
        action.Minutes switch
        {
            null => null,
            _ when action.Kind is not StepActionKind.Tick =>
                "Minutes are said when a step is ticked. Say them there.",
            var minutes => TimedSteps.ProblemWith(minutes.Value),
        };

    /// <summary>The pieces a step is about: those it works on and those it leaves to go on with.</summary>
    public static IReadOnlyList<string> PiecesOf(Step step) =>
        [
            .. step
                .Pieces.Concat(step.Leaves.Where(l => l.Use is PieceUse.Work).Select(l => l.Name))
                .Distinct(),
        ];

    private static string? NotBefore(WorkProgress progress, StepState state)
    {
        if (state.IsDone)
            return null;
        return progress.OpenBefore(state.Step) is [var first, ..]
            ? $"Step {state.Step.Number} comes after step {first.Step.Number}: {first.Step.Title}. Do that one first."
            : null;
    }

    private static string? NotUnder(WorkProgress progress, StepState state)
    {
        if (state.Check is CheckState.Passed)
            return "Your instructor has checked this step off. Ask them if it is not done after all.";
        return progress.DoneAfter(state.Step) is [var later, ..]
            ? $"Step {later.Step.Number} is done and builds on this one. Take that tick back first."
            : null;
    }

    private static string? SizeProblem(Step step, StepAction action)
    {
        if (action.Size is not { } size)
            return "A size is missing. Write what you measured.";
        return MeasuredSize.AskedOf(step, action.Text) is not { } asked
            ? "This step leaves no such piece to measure."
            : MeasuredSize.ProblemWith(asked, size);
    }

    private static string? PieceProblem(Step step, StepAction action) =>
        PiecesOf(step).Contains(action.Text)
            ? null
            : "This step is not about that piece. Choose one of its pieces.";
}
