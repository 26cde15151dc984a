using ShopClass.Core.Lessons;
using ShopClass.Core.Paces;
using ShopClass.Core.Progress;

namespace ShopClass.Data.Progress;

/// <summary>What is kept with a tick that says how long the step took, so that a pace is read without unpacking plans.</summary>
internal static class StepTiming
{
    /// <summary>
    /// Adds the minutes that were said, beside the table's for the step. What takes none of the student's time says nothing
    /// about their pace, and is left as it is.
    /// </summary>
    public static void Add(StepActionRow row, PlanInHand work, StepAction action)
    {
        if (
            action.Minutes is not { } minutes
            || work.Progress.Find(action.StepId)?.Step is not { Time.Busy: > 0 } step
        )
            return;
        (row.Minutes, row.StepKind) = (minutes, step.Kind);
        row.PlannedMinutes = TurnMaker.MinutesOf(step.Time.Busy);
        row.SpeciesId = TimedSteps.SpeciesOf(step, work.PlanOf(step).Request.Boards);
    }
}
