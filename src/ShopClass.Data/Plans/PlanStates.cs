using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Planning;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Projects;
using ShopClass.Data.Store;
using ShopClass.Data.Students;

namespace ShopClass.Data.Plans;

/// <summary>Where every student of a course stands with every project.</summary>
internal static class PlanStates
{
    public static async Task<IReadOnlyList<PlanState>> ReadAsync(
        ShopContext shop,
        Viewer viewer,
        Guid courseId,
        Deed deed,
        CancellationToken cancel
    )
    {
        var course = await shop
            .Courses.AsNoTracking()
            .SeenBy(viewer, deed)
            .Include(c => c.Projects)
                .ThenInclude(p => p.Parts)
            .SingleOrDefaultAsync(c => c.Id == courseId, cancel);
        if (course is null)
            return [];
        var students = await shop
            .Students.AsNoTracking()
            .SeenBy(viewer, deed)
            .Where(s => s.CourseId == courseId)
            .Include(s => s.Boards)
            .ToListAsync(cancel);
        var newest = await NewestAsync(shop, viewer, courseId, deed, cancel);
        return
        [
            .. from student in students
                .OrderBy(s => s.ToView().Shown, Ordering.OfNames)
                .ThenBy(s => s.Id)
            from project in course.Projects.OrderBy(p => p.Position).ThenBy(p => p.Id)
            select StateOf(
                course,
                student,
                project,
                newest.GetValueOrDefault((student.Id, project.Id))
            ),
        ];
    }

    private static PlanState StateOf(
        CourseRow course,
        StudentRow student,
        ProjectRow project,
        NewestPlan? plan
    )
    {
        BoardRow[] boards = [.. student.Boards.Where(b => b.ProjectId == project.Id)];
        return new(
            student.Id,
            project.Id,
            boards.Length,
            plan?.Number,
            plan is not null && !PlanSnapshot.Answers(plan.RequestFingerprint, RequestNow()),
            plan?.IsComplete ?? false,
            plan?.Sentence ?? ""
        )
        {
            PlanId = plan?.Id,
            PlanMadeUtc = plan?.MadeUtc,
        };

        PlanningRequest RequestNow() => PlanStore.RequestFor(course.Rules, project, boards);
    }

    private static async Task<Dictionary<(Guid Student, Guid Project), NewestPlan>> NewestAsync(
        ShopContext shop,
        Viewer viewer,
        Guid courseId,
        Deed deed,
        CancellationToken cancel
    )
    {
        // The snapshots stay where they are: an overview needs only the line about each.
        var plans = await shop
            .Plans.SeenBy(viewer, deed)
            .Where(p => p.Student!.CourseId == courseId)
            .Select(p => new NewestPlan(
                p.Id,
                p.StudentId,
                p.ProjectId,
                p.Number,
                p.RequestFingerprint,
                p.IsComplete,
                p.Sentence,
                p.MadeUtc
            ))
            .ToListAsync(cancel);
        return plans
            .GroupBy(p => (p.StudentId, p.ProjectId))
            .ToDictionary(g => g.Key, g => g.MaxBy(p => p.Number)!);
    }

    private sealed record NewestPlan(
        Guid Id,
        Guid StudentId,
        Guid ProjectId,
        int Number,
        string RequestFingerprint,
        bool IsComplete,
        string Sentence,
        DateTime MadeUtc
    );
}
