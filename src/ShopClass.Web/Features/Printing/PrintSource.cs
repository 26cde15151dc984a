using ShopClass.Core.Paces;
using ShopClass.Core.Planning.Guide;
using ShopClass.Core.Tools;
using ShopClass.Data.Courses;
using ShopClass.Data.Lessons;
using ShopClass.Data.Orders;
using ShopClass.Data.Plans;
using ShopClass.Data.Progress;
using ShopClass.Data.Projects;
using ShopClass.Data.Students;
using ShopClass.Web.Features.Tools;

namespace ShopClass.Web.Features.Printing;

/// <summary>Everything a print set is made from, read once.</summary>
/// <param name="Course">The course.</param>
/// <param name="Project">What the class builds.</param>
/// <param name="Students">The class.</param>
/// <param name="States">How far each student's plan is.</param>
/// <param name="Order">The newest order kept; null when there is none.</param>
/// <param name="Kits">Supplies and kits.</param>
/// <param name="Desk">How the course prints.</param>
public sealed record PrintSource(
    CourseView Course,
    ProjectView Project,
    IReadOnlyList<StudentView> Students,
    IReadOnlyList<PlanState> States,
    StoredOrder? Order,
    KitsView Kits,
    PrintDeskView Desk
)
{
    /// <summary>The newest plan of lessons; null when there is none.</summary>
    public StoredLessonPlan? Lessons { get; init; }

    /// <summary>The pace the class works at, for the minutes on step cards.</summary>
    public ClassPace Pace { get; init; } =
        new(CoursePace.Usual, new Dictionary<string, PaceFactor>());

    /// <summary>The shop's tools.</summary>
    public ToolChest Tools { get; init; } = ToolChest.Empty;

    /// <summary>How near the saws are to being sharpened.</summary>
    public IReadOnlyList<SawState> Saws { get; init; } = [];

    /// <summary>The stock guide, worked out when it is asked for.</summary>
    public Func<StockGuide> Guide { get; init; } =
        () => throw new InvalidOperationException("No stock guide is at hand.");
}

/// <summary>Reads what print sets are made from.</summary>
public sealed class PrintShelf(
    CourseStore courses,
    ProjectStore projects,
    StudentStore students,
    PlanStore plans,
    OrderStore orders,
    KitStore kits,
    LessonPlanStore lessons,
    PaceStore paces,
    Data.Tools.ToolStore tools,
    Guide.GuideShelf guides,
    TimeProvider clock
)
{
    /// <summary>All of it; null when the project is not the viewer's to run.</summary>
    public async Task<PrintSource?> ReadAsync(
        Data.Access.Viewer viewer,
        Guid courseId,
        Guid projectId
    )
    {
        if (
            await courses.FindAsync(viewer, courseId) is not { } course
            || await projects.FindAsync(viewer, projectId) is not { } project
            || await kits.FindAsync(viewer, projectId) is not { } kit
            || await kits.DeskAsync(viewer, courseId) is not { } desk
            || await tools.FindAsync(viewer, courseId) is not { } chest
        )
            return null;
        var planned = await lessons.NewestAsync(viewer, courseId, projectId);
        var log = await tools.LogAsync(viewer, courseId);
        var wanted = project.ToProject();
        return new(
            course,
            project,
            await students.ListAsync(viewer, courseId),
            await plans.StatesAsync(viewer, courseId),
            await orders.NewestAsync(viewer, projectId),
            kit,
            desk
        )
        {
            Lessons = planned,
            Pace =
                await paces.FindAsync(viewer, courseId)
                ?? new(CoursePace.Usual, new Dictionary<string, PaceFactor>()),
            Tools = chest.Chest,
            Saws = log is null
                ? []
                : SawsOf.Now(chest.Chest, log, planned is null ? [] : [planned], clock),
            Guide = () =>
            {
                var guide =
                    guides.Find(wanted, course.Rules) ?? StockGuide.Make(wanted, course.Rules);
                guides.Keep(guide);
                return guide;
            },
        };
    }
}
