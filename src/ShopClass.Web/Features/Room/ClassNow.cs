using ShopClass.Core.Lessons;
using ShopClass.Core.Progress;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Lessons;
using ShopClass.Data.Plans;
using ShopClass.Data.Progress;
using ShopClass.Web.Features.Lessons;
using ShopClass.Web.Features.Shell;

namespace ShopClass.Web.Features.Room;

/// <summary>The plans of lessons of what the class works at, as they stand on a day.</summary>
/// <param name="Plans">The newest plan of lessons of each project.</param>
/// <param name="Shop">Its stations and lessons; null where there are none for the viewer.</param>
/// <param name="Day">The day.</param>
public sealed record ClassPlans(
    IReadOnlyDictionary<Guid, StoredLessonPlan> Plans,
    LessonsView? Shop,
    DateOnly Day
)
{
    /// <summary>Places at each station today: the lesson's own, or the shop's.</summary>
    public StationCounts? Stations =>
        Shop?.Lessons.FirstOrDefault(l => l.Lesson.Date == Day)?.Lesson.Stations
        ?? Shop?.Shop.Stations;

    /// <summary>Where a student stands against the plan; null where there is no plan of lessons for their work.</summary>
    public PlanStanding? Of(StudentAtWork who) =>
        PlanFor(who) is { } plan
            ? PlanStanding.Of(
                plan.Request,
                plan.Plan,
                who.StudentId.ToString(),
                who.InHand!.Progress,
                Day,
                who.InHand.Paced
            )
            : null;

    /// <summary>The plan of lessons for what a student works at.</summary>
    public StoredLessonPlan? PlanFor(StudentAtWork who) =>
        who.InHand is { } inHand ? Plans.GetValueOrDefault(inHand.Plan.ProjectId) : null;
}

/// <summary>A class as it stands: who is how far, and against which plan.</summary>
public sealed record ClassNow(
    CourseView Course,
    IReadOnlyList<StudentAtWork> Students,
    ClassPlans Plans
)
{
    /// <summary>What minutes ahead, behind and to do rest on, in a sentence; empty where nobody has work in hand.</summary>
    public string Basis => RoomWords.Basis(Students);

    /// <summary>What a student would have done by the end of a lesson of the plan, and has not.</summary>
    /// <param name="who">Who, with work in hand.</param>
    /// <param name="plan">The plan of lessons for it.</param>
    /// <param name="lesson">The lesson, from 0.</param>
    public static IReadOnlyList<MissedStep> MissedBy(
        StudentAtWork who,
        StoredLessonPlan plan,
        int lesson
    ) =>
        CatchUp.For(
            plan.Request,
            plan.Plan,
            who.StudentId.ToString(),
            who.InHand!.Progress,
            lesson,
            who.InHand.Paced
        );

    /// <summary>The student, or null when there is none of that key.</summary>
    public StudentAtWork? Find(Guid studentId) =>
        Students.FirstOrDefault(s => s.StudentId == studentId);

    /// <summary>The lesson of the day, else the last that is over, else the first; as a place in the plan, from 0.</summary>
    public int LessonNow(StoredLessonPlan plan)
    {
        var last = plan.Request.Lessons.Count(l => l.Date <= Plans.Day) - 1;
        return Math.Max(0, last);
    }

    /// <summary>The state of the class on a page.</summary>
    public ClassState State()
    {
        var main = Plans
            .Plans.Values.OrderByDescending(p =>
                Students.Count(s => s.InHand?.Plan.ProjectId == p.ProjectId)
            )
            .ThenBy(p => p.ProjectId)
            .FirstOrDefault();
        var at = main is null ? -1 : IndexOfNext(main);
        var lines = Students.Select(LineOf).ToList();
        var state =
            main is null || at < 0
                ? new ClassState("", [], [], lines)
                : new(
                    $"{main.Request.Lessons[at].Title}, {LessonLines.Date(main.Request.Lessons[at].Date)}",
                    LessonWords.Prepare(main.Request, main.Plan, at),
                    LessonWords.Demonstrate(main.Request, main.Plan, at),
                    lines
                );
        return state with { Basis = main is null ? "" : Basis };
    }

    private int IndexOfNext(StoredLessonPlan plan) =>
        plan
            .Request.Lessons.Select((l, i) => (l.Date, i))
            .Where(l => l.Date >= Plans.Day)
            .Select(l => l.i)
            .DefaultIfEmpty(-1)
            .First();

    private ClassStateLine LineOf(StudentAtWork who)
    {
        var next = who.InHand?.Progress.Next?.Step;
        return new(
            who.Shown,
            who.InHand is { } inHand
                ? string.Join(", ", inHand.Plan.Checked.Request.Boards.Select(b => b.Name))
                : "",
            who.InHand?.Progress.Done ?? 0,
            who.InHand?.Progress.Steps.Count ?? 0,
            next is null ? "" : $"{next.Number}. {next.Title}",
            next is null ? "" : RoomWords.Of(next.Station),
            Plans.Of(who)?.InWords() ?? "",
            [.. Open(who)]
        );
    }

    private static IEnumerable<string> Open(StudentAtWork who)
    {
        foreach (var help in who.Help)
            yield return $"needs help at {help.State.Step.Number}";
        foreach (var check in who.Checks)
            yield return $"check {check.State.Step.Number}";
        foreach (var spoiled in who.Spoiled)
            yield return $"{string.Join(", ", spoiled.State.Spoiled)} spoiled";
        foreach (
            var back in who.InHand?.Progress.Steps.Where(s => s.Check is CheckState.SentBack) ?? []
        )
            yield return $"{back.Step.Number} sent back: {back.Fault}";
    }
}

/// <summary>Reads a class as it stands.</summary>
public sealed class ClassDesk(
    CourseStore courses,
    ProgressStore progress,
    LessonStore lessons,
    LessonPlanStore lessonPlans,
    TimeProvider clock
)
{
    /// <summary>The class; null where the viewer may not work its room.</summary>
    public async Task<ClassNow?> ReadAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    )
    {
        if (
            await courses.FindForAsync(viewer, courseId, Deed.WorkTheRoom, cancel) is not { } course
        )
            return null;
        var students = await progress.RoomAsync(viewer, courseId, cancel);
        return new(course, students, await PlansAsync(viewer, courseId, students, cancel));
    }

    /// <summary>The plans of lessons of what these students work at.</summary>
    public async Task<ClassPlans> PlansAsync(
        Viewer viewer,
        Guid courseId,
        IReadOnlyList<StudentAtWork> students,
        CancellationToken cancel = default
    )
    {
        var plans = new Dictionary<Guid, StoredLessonPlan>();
        foreach (
            var project in students.Select(s => s.InHand?.Plan.ProjectId).OfType<Guid>().Distinct()
        )
        {
            if (await lessonPlans.NewestAsync(viewer, courseId, project, cancel) is { } plan)
                plans[project] = plan;
        }

        return new(
            plans,
            await lessons.FindAsync(viewer, courseId, cancel),
            DateOnly.FromDateTime(clock.GetLocalNow().DateTime)
        );
    }
}
