using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Plans;
using ShopClass.Data.Projects;
using ShopClass.Data.Students;
using ShopClass.Web.Features.Shell;

namespace ShopClass.Web.Features.Courses;

/// <summary>Everything the course page shows, read together.</summary>
/// <param name="Course">The course and its settings.</param>
/// <param name="Projects">Its projects.</param>
/// <param name="Students">Its students; for a student, only themselves.</param>
/// <param name="States">Where each of them stands with each project.</param>
public sealed record ClassBoard(
    CourseView Course,
    IReadOnlyList<ProjectSummary> Projects,
    IReadOnlyList<StudentView> Students,
    IReadOnlyList<PlanState> States
)
{
    /// <summary>The asked-for project, else the one with most boards, else the first; null where there is none.</summary>
    public ProjectSummary? Main(Guid? asked) =>
        Projects.FirstOrDefault(p => p.Id == asked)
        ?? Projects.MaxBy(p => States.Where(s => s.ProjectId == p.Id).Sum(s => s.Boards));

    /// <summary>The class's line-up for one project, in the order of the class list.</summary>
    public IReadOnlyList<(StudentView Student, PlanState State)> LineUp(Guid projectId) =>
        [
            .. from student in Students
            from state in States
            where state.StudentId == student.Id && state.ProjectId == projectId
            select (student, state),
        ];

    /// <summary>Who has boards for the project and no plan that is up to date.</summary>
    public IReadOnlyList<(StudentView Student, PlanState State)> Waiting(Guid projectId) =>
        [.. LineUp(projectId).Where(l => l.State.Boards > 0 && !IsUpToDate(l.State))];

    /// <summary>What goes when a project is removed, as a sentence.</summary>
    public string WhatGoesWith(ProjectSummary project)
    {
        var states = States.Where(s => s.ProjectId == project.Id).ToList();
        string[] goes =
        [
            project.Parts.Count("row") + " of parts",
            .. Some(states.Sum(s => s.Boards), "board"),
            .. Some(
                states.Count(s => s.PlanNumber is not null),
                "student's plans",
                "students' plans"
            ),
        ];
        return $"{project.Name} goes with its {string.Join(", ", goes)}. This cannot be undone.";
    }

    private static string[] Some(int count, string one, string? many = null) =>
        count == 0 ? [] : [count.Count(one, many)];

    private static bool IsUpToDate(PlanState state) =>
        state is { PlanNumber: not null, IsOutOfDate: false };

    public static async Task<ClassBoard?> ReadAsync(
        Viewer viewer,
        Guid courseId,
        CourseStore courses,
        ProjectStore projects,
        StudentStore students,
        PlanStore plans
    )
    {
        if (await courses.FindAsync(viewer, courseId) is not { } course)
            return null;
        return new(
            course,
            await projects.ListAsync(viewer, courseId),
            await students.ListAsync(viewer, courseId),
            await plans.StatesAsync(viewer, courseId)
        );
    }
}
