using System.Security.Claims;
using Microsoft.Net.Http.Headers;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Lessons;
using ShopClass.Data.Progress;
using ShopClass.Data.Projects;
using ShopClass.Print.Sheets;
using ShopClass.Web.Features.Account;

namespace ShopClass.Web.Features.Sheets;

/// <summary>Sheets of a plan of lessons. A student may have their own checklist and no other.</summary>
internal static class LessonSheetRoutes
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        routes
            .MapGet(
                "/sheets/lessons/{planId:guid}/student/{studentId:guid}",
                (Guid planId, Guid studentId, [AsParameters] Desk desk) =>
                    desk.SheetAsync(
                        planId,
                        found =>
                            found.Request.Students.FirstOrDefault(s =>
                                s.StudentId == studentId.ToString()
                            )
                                is { } student
                                ? $"lessons-{student.Name}"
                                : null,
                        (content, paper) =>
                            LessonChecklist.Make(content, studentId.ToString(), paper)
                    )
            )
            .RequireAuthorization();
        MapLesson(routes, "lesson", InstructorSheet.Make);
        MapLesson(routes, "wall", WallSheet.Make);
    }

    // Lessons are numbered from 1 in an address, as on paper.
    private static void MapLesson(
        IEndpointRouteBuilder routes,
        string what,
        Func<LessonSheetContent, int, Paper, byte[]> make
    ) =>
        routes
            .MapGet(
                $"/sheets/lessons/{{planId:guid}}/{what}/{{number:int}}",
                (Guid planId, int number, [AsParameters] Desk desk) =>
                    desk.SheetAsync(
                        planId,
                        found =>
                            desk.IsInstructor
                            && number >= 1
                            && number <= found.Request.Lessons.Count
                                ? $"{what}-{number}-{found.Request.Lessons[number - 1].Title}"
                                : null,
                        (content, paper) => make(content, number - 1, paper)
                    )
            )
            .RequireAuthorization();

    /// <summary>What every sheet here needs.</summary>
    private sealed record Desk(
        string? Paper,
        ClaimsPrincipal Person,
        HttpResponse Response,
        LessonPlanStore Plans,
        CourseStore Courses,
        ProjectStore Projects,
        ProgressStore Progress,
        TimeProvider Clock,
        CancellationToken Cancel
    )
    {
        public bool IsInstructor => Person.ToViewer() is InstructorViewer;

        public async Task<IResult> SheetAsync(
            Guid planId,
            Func<StoredLessonPlan, string?> nameOf,
            Func<LessonSheetContent, Paper, byte[]> make
        )
        {
            if (SheetRoutes.PaperNamed(Paper) is not { } format)
                return SheetRoutes.NoSuchPaper();
            if (
                Person.ToViewer() is not { } viewer
                || await Plans.FindAsync(viewer, planId, Cancel) is not { } found
                || nameOf(found) is not { } name
                || await Courses.FindAsync(viewer, found.CourseId, Cancel) is not { } course
                || await Projects.FindAsync(viewer, found.ProjectId, Cancel) is not { } project
            )
                return Results.NotFound();
            var content = new LessonSheetContent(
                course.Name,
                project.Name,
                found.Request,
                found.Plan,
                found.Number,
                found.MadeUtc,
                DateOnly.FromDateTime(Clock.GetLocalNow().DateTime),
                found.IsOutOfDate
            )
            {
                Ticked = await TickedSteps.OfAsync(
                    Progress,
                    viewer,
                    found.CourseId,
                    found.ProjectId,
                    Cancel
                ),
            };
            Response.Headers.CacheControl = "no-store";
            Response.Headers.ContentDisposition = new ContentDispositionHeaderValue("inline")
            {
                FileName = $"{SheetName.Safe(name)}.pdf",
            }.ToString();
            return Results.Bytes(make(content, format), "application/pdf");
        }
    }
}
