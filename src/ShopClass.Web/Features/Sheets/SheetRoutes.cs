using System.Security.Claims;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Plans;
using ShopClass.Data.Students;
using ShopClass.Print.Sheets;
using ShopClass.Web.Features.Account;

namespace ShopClass.Web.Features.Sheets;

/// <summary>Sheets to print. What the viewer may not see does not exist.</summary>
public static class SheetRoutes
{
    public static void MapSheets(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/sheets/kit/{planId:guid}", KitSheetAsync).RequireAuthorization();
        StockNoteRoute.Map(routes);
        LessonSheetRoutes.Map(routes);
        StepSheetRoute.Map(routes);
        ClassSheetRoutes.Map(routes);
    }

    private static async Task<IResult> KitSheetAsync(
        Guid planId,
        string? paper,
        ClaimsPrincipal person,
        HttpResponse response,
        PlanStore plans,
        StudentStore students,
        CourseStore courses,
        TimeProvider clock,
        CancellationToken cancel
    )
    {
        if (PaperNamed(paper) is not { } format)
            return NoSuchPaper();
        if (
            person.ToViewer() is not { } viewer
            || await plans.FindAsync(viewer, planId, cancel) is not { } plan
            || await students.FindAsync(viewer, plan.StudentId, cancel) is not { } student
            || await courses.FindAsync(viewer, student.CourseId, cancel) is not { } course
        )
            return Results.NotFound();
        var content = Content(course, student, plan, clock);
        response.Headers.CacheControl = "no-store";
        response.Headers.ContentDisposition = SheetName.Inline(content);
        return Results.Bytes(KitSheet.Make(content, format), "application/pdf");
    }

    private static KitSheetContent Content(
        CourseView course,
        StudentView student,
        StoredPlan plan,
        TimeProvider clock
    ) =>
        new(
            course.Name,
            student.Shown,
            student.Card.IsLeftHanded,
            plan.Checked,
            plan.Number,
            plan.MadeUtc,
            DateOnly.FromDateTime(clock.GetLocalNow().DateTime),
            plan.IsOutOfDate
        );

    internal static IResult NoSuchPaper() =>
        Results.Text(
            "There is no such paper. Ask for paper=a4 or paper=letter.",
            statusCode: StatusCodes.Status400BadRequest
        );

    internal static Paper? PaperNamed(string? name) =>
        name?.ToUpperInvariant() switch
        {
            null or "A4" => Paper.A4,
            "LETTER" => Paper.Letter,
            _ => null,
        };
}
