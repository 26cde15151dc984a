using ShopClass.Core.Progress;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Lessons;

/// <summary>Where a student stands against the plan of lessons.</summary>
/// <param name="Overdue">Steps planned in lessons that are over, still open, in order.</param>
/// <param name="Today">Steps planned in the lesson of the day, in order; empty when there is none.</param>
/// <param name="TodayDone">How many of those are done.</param>
/// <param name="Early">Steps planned for later, or not at all, that are done already.</param>
public sealed record PlanStanding(
    IReadOnlyList<Step> Overdue,
    IReadOnlyList<Step> Today,
    int TodayDone,
    IReadOnlyList<Step> Early
)
{
    /// <summary>Whole minutes of work that should be done and are not.</summary>
    public int Behind => Minutes(Overdue);

    /// <summary>Whole minutes of work done before its lesson.</summary>
    public int Ahead => Minutes(Early);

    /// <summary>Whether everything of today is done, and nothing is overdue.</summary>
    public bool IsFreeToday => Overdue.Count == 0 && TodayDone == Today.Count;

    /// <summary>
    /// Where they stand on a day. A step counts for the lesson in which its last share is planned. Steps their plan in
    /// hand no longer has are left out.
    /// </summary>
    /// <param name="request">What the plan of lessons was made for.</param>
    /// <param name="plan">The plan of lessons.</param>
    /// <param name="studentId">Whose work.</param>
    /// <param name="progress">How their steps stand.</param>
    /// <param name="day">The day.</param>
    /// <param name="paced">A step as it stands now with its time by the pace learned since; null for the times the plan was made with.</param>
    /// <returns>Null for a student the plan has no work of.</returns>
    public static PlanStanding? Of(
        LessonRequest request,
        LessonPlan plan,
        string studentId,
        WorkProgress progress,
        DateOnly day,
        Func<Step, Step>? paced = null
    )
    {
        if (request.Students.FirstOrDefault(s => s.StudentId == studentId)?.Work is not { } work)
            return null;
        var lessonOf = LessonOfEach(plan, studentId);
        List<Step> overdue = [];
        List<Step> today = [];
        List<Step> early = [];
        var todayDone = 0;
        foreach (var planned in work.Steps)
        {
            if (progress.Find(planned.Id) is not { } state)
                continue;
            var step = paced is null ? planned : paced(state.Step);
            var date = lessonOf.TryGetValue(planned.Number, out var lesson)
                ? request.Lessons[lesson].Date
                : DateOnly.MaxValue;
            if (date == day)
            {
                today.Add(step);
                todayDone += state.IsDone ? 1 : 0;
            }
            else if (date < day && !state.IsDone)
                overdue.Add(step);
            else if (date > day && state.IsDone)
                early.Add(step);
        }

        return new(overdue, today, todayDone, early);
    }

    /// <summary>In a few words, for a list: "12 min behind", "3 of 5 today".</summary>
    public string InWords()
    {
        if (Behind > 0)
            return $"{Behind} min behind: {Overdue[0].Title}";
        if (Ahead > 0)
            return $"{Ahead} min ahead";
        return Today.Count > 0 ? $"{TodayDone} of {Today.Count} of today" : "as planned";
    }

    internal static SortedDictionary<int, int> LessonOfEach(LessonPlan plan, string studentId)
    {
        var lessonOf = new SortedDictionary<int, int>();
        for (var l = 0; l < plan.Lessons.Count; l++)
        {
            foreach (var turn in plan.Lessons[l].Turns.Where(t => t.Turn.StudentId == studentId))
            foreach (var number in turn.Turn.Steps)
                lessonOf[number] = l;
        }

        // A share that falls off the end keeps its step from counting as planned.
        foreach (
            var number in plan.Left.Where(t => t.StudentId == studentId).SelectMany(t => t.Steps)
        )
            lessonOf.Remove(number);
        return lessonOf;
    }

    private static int Minutes(IReadOnlyList<Step> steps) =>
        steps.Count == 0 ? 0 : (int)((steps.Sum(s => (long)s.Time.Busy) + 59) / 60);
}
