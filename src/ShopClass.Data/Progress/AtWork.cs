using ShopClass.Core.Paces;
using ShopClass.Core.Progress;
using ShopClass.Data.Plans;
using ShopClass.Data.Students;

namespace ShopClass.Data.Progress;

/// <summary>Puts together where a student is from what was said.</summary>
internal static class AtWork
{
    public static StudentAtWork Of(
        StudentView student,
        CourseOf course,
        StoredPlan? plan,
        IEnumerable<RemakeInHand> remakes,
        IReadOnlyList<StepActionRow> said,
        StepPace pace
    )
    {
        if (plan is null)
            return new(student.Id, student.Shown, null, null, [], [], [], []);
        var inHand = Standing.Of(plan, course, remakes, said) with { Pace = pace };
        var progress = inHand.Progress;
        return new(
            student.Id,
            student.Shown,
            inHand,
            said.LastOrDefault(a => !a.ByInstructor)?.StoredUtc,
            Waiting(s => s.NeedsHelp, StepActionKind.NeedHelp),
            Waiting(s => s.Check is CheckState.Waiting, StepActionKind.PleaseCheck),
            Waiting(s => s.Spoiled.Count > 0, StepActionKind.Spoiled),
            [
                .. said.Where(a => a.Kind is StepActionKind.SentBack && a.Text.Length > 0)
                    .Select(a => new FaultSaid(a.Text, a.StoredUtc)),
            ]
        );

        IReadOnlyList<StepWaiting> Waiting(Func<StepState, bool> isMeant, StepActionKind kind) =>
            [
                .. from state in progress.Steps
                where isMeant(state)
                let since = said.Last(a => a.StepId == state.Step.Id && a.Kind == kind)
                orderby since.Number
                select new StepWaiting(state, since.StoredUtc),
            ];
    }
}
