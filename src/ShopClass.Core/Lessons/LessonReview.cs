using ShopClass.Core.Lessons.Reviewing;

namespace ShopClass.Core.Lessons;

/// <summary>
/// Judges a plan of lessons against the steps it is made for. It shares nothing with what makes plans: it goes by the
/// students' steps, the lessons and the shop alone.
/// </summary>
public static class LessonReview
{
    /// <summary>Everything that is wrong, in sentences; none when the plan can be carried out.</summary>
    public static IReadOnlyList<string> Findings(LessonRequest request, LessonPlan plan)
    {
        if (plan.Lessons.Count != request.Lessons.Count)
            return
            [
                $"There are {request.Lessons.Count} lessons and a plan for {plan.Lessons.Count}.",
            ];
        var days = new Days(request, plan);
        List<string> strangers = [.. StepRules.KnownSteps(days)];
        if (strangers.Count > 0)
            return strangers;
        return
        [
            .. StepRules.EveryStepOnce(days),
            .. StepRules.LongEnough(days),
            .. StepRules.InOrder(days),
            .. StepRules.PractiseFirst(days),
            .. RoomRules.WithinTheLesson(days),
            .. RoomRules.OneThingAtATime(days),
            .. RoomRules.PlacesEnough(days),
            .. ShowingRules.WhereAskedFor(days),
            .. ShowingRules.SeenBeforeUse(days),
            .. ShowingRules.OneAtATime(days),
        ];
    }
}
