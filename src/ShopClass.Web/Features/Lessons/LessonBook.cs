using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Lessons;
using ShopClass.Data.Plans;
using ShopClass.Data.Projects;
using ShopClass.Data.Students;

namespace ShopClass.Web.Features.Lessons;

/// <summary>Everything the lessons page shows, read together.</summary>
/// <param name="Course">The course.</param>
/// <param name="Lessons">Its stations and lessons.</param>
/// <param name="Projects">Its projects.</param>
/// <param name="Project">The one the lessons are planned for; null where the course has none.</param>
/// <param name="Students">Its students.</param>
/// <param name="Plan">The newest plan of lessons for that project; null when none was made.</param>
public sealed record LessonBook(
    CourseView Course,
    LessonsView Lessons,
    IReadOnlyList<ProjectSummary> Projects,
    ProjectSummary? Project,
    IReadOnlyList<StudentView> Students,
    StoredLessonPlan? Plan
)
{
    public static async Task<LessonBook?> ReadAsync(
        Viewer viewer,
        Guid courseId,
        Guid? asked,
        LessonStores stores
    )
    {
        if (
            await stores.Courses.FindAsync(viewer, courseId) is not { } course
            || await stores.Lessons.FindAsync(viewer, courseId) is not { } lessons
        )
            return null;
        var projects = await stores.Projects.ListAsync(viewer, courseId);
        var project =
            projects.FirstOrDefault(p => p.Id == asked)
            ?? await MainAsync(viewer, courseId, projects, stores.Plans);
        return new(
            course,
            lessons,
            projects,
            project,
            await stores.Students.ListAsync(viewer, courseId),
            project is null
                ? null
                : await stores.LessonPlans.NewestAsync(viewer, courseId, project.Id)
        );
    }

    // The project with most boards, as on the course page.
    private static async Task<ProjectSummary?> MainAsync(
        Viewer viewer,
        Guid courseId,
        IReadOnlyList<ProjectSummary> projects,
        PlanStore plans
    )
    {
        var states = await plans.StatesAsync(viewer, courseId);
        return projects.MaxBy(p => states.Where(s => s.ProjectId == p.Id).Sum(s => s.Boards));
    }
}

/// <summary>The stores the lessons pages read from.</summary>
public sealed record LessonStores(
    CourseStore Courses,
    ProjectStore Projects,
    StudentStore Students,
    PlanStore Plans,
    LessonStore Lessons,
    LessonPlanStore LessonPlans
);
