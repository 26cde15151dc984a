using ShopClass.Core.Planning;
using ShopClass.Data.Access;
using ShopClass.Data.Plans;
using ShopClass.Data.Projects;
using ShopClass.Data.Students;
using ShopClass.Data.Students.Logging;

namespace ShopClass.Web.Features.Students;

/// <summary>What a student has for one project: the boards, what a plan would be asked now, and the newest plan.</summary>
public sealed record StudentWork(
    IReadOnlyList<ProjectSummary> Projects,
    ProjectSummary? Project,
    IReadOnlyList<BoardView> Boards,
    PlanningRequest? Request,
    StoredPlan? Plan
)
{
    /// <summary>How the boards stand with the instructor.</summary>
    public IReadOnlyList<BoardYes> Yes { get; init; } = [];

    /// <summary>The plan made for just these boards, this project and these settings, where there is one.</summary>
    public StoredPlan? CurrentPlan => Plan is { IsOutOfDate: false } ? Plan : null;

    public bool HasSomethingToJudge => Request is { Boards.Count: > 0, Project.Parts.Count: > 0 };
}

/// <summary>Fetches a student's work, the same for the instructor's page and the student's own.</summary>
public sealed class StudentShelf(
    ProjectStore projects,
    BoardStore boards,
    PlanStore plans,
    BoardYesStore yes
)
{
    /// <summary>The work for the project asked for, else for the first that has boards, else for the first.</summary>
    public async Task<StudentWork> LookAsync(Viewer viewer, StudentView student, Guid? projectId)
    {
        var all = await projects.ListAsync(viewer, student.CourseId);
        var chosen =
            all.FirstOrDefault(p => p.Id == projectId) ?? await BegunAsync(viewer, student, all);
        if (chosen is null)
            return new(all, null, [], null, null);
        return new(
            all,
            chosen,
            await boards.ListAsync(viewer, student.Id, chosen.Id),
            await plans.RequestAsync(viewer, student.Id, chosen.Id),
            await plans.NewestAsync(viewer, student.Id, chosen.Id)
        )
        {
            Yes = await yes.OfAsync(viewer, student.Id, chosen.Id),
        };
    }

    private async Task<ProjectSummary?> BegunAsync(
        Viewer viewer,
        StudentView student,
        IReadOnlyList<ProjectSummary> all
    )
    {
        foreach (var project in all)
        {
            if ((await boards.ListAsync(viewer, student.Id, project.Id)).Count > 0)
                return project;
        }
        return all.Count > 0 ? all[0] : null;
    }
}
