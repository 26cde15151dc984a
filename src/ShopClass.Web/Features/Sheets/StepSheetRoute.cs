using System.Security.Claims;
using Microsoft.Net.Http.Headers;
using ShopClass.Data.Courses;
using ShopClass.Data.Plans;
using ShopClass.Data.Progress;
using ShopClass.Data.Students;
using ShopClass.Print.Sheets;
using ShopClass.Web.Features.Account;

namespace ShopClass.Web.Features.Sheets;

/// <summary>The steps of a plan to print: cards or one list, usual or large letters.</summary>
internal static class StepSheetRoute
{
    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapGet("/sheets/steps/{planId:guid}", StepSheetAsync).RequireAuthorization();

    private static async Task<IResult> StepSheetAsync(
        Guid planId,
        string? paper,
        string? size,
        string? layout,
        ClaimsPrincipal person,
        HttpResponse response,
        PlanStore plans,
        PaceStore paces,
        StudentStore students,
        CourseStore courses,
        TimeProvider clock,
        CancellationToken cancel
    )
    {
        if (SheetRoutes.PaperNamed(paper) is not { } format)
            return SheetRoutes.NoSuchPaper();
        if (SizeNamed(size) is not { } letters)
            return NotKnown("There is no such size. Ask for size=usual or size=large.");
        if (LayoutNamed(layout) is not { } laid)
            return NotKnown("There is no such layout. Ask for layout=cards or layout=page.");
        if (
            person.ToViewer() is not { } viewer
            || await plans.FindAsync(viewer, planId, cancel) is not { } plan
            || await paces.PacedAsync(viewer, planId, cancel) is not { } paced
            || await students.FindAsync(viewer, plan.StudentId, cancel) is not { } student
            || await courses.FindAsync(viewer, student.CourseId, cancel) is not { } course
        )
            return Results.NotFound();
        var content = new StepSheetContent(
            course.Name,
            student.Shown,
            plan.Checked,
            paced.Work,
            plan.Number,
            plan.MadeUtc,
            DateOnly.FromDateTime(clock.GetLocalNow().DateTime),
            plan.IsOutOfDate
        )
        {
            Basis = paced.Basis,
        };
        response.Headers.CacheControl = "no-store";
        response.Headers.ContentDisposition = new ContentDispositionHeaderValue("inline")
        {
            FileName =
                SheetName.Safe($"steps-{student.Shown}-{plan.Checked.Request.Project.Name}")
                + $"-{plan.Number}.pdf",
        }.ToString();
        return Results.Bytes(StepSheet.Make(content, format, letters, laid), "application/pdf");
    }

    private static PrintSize? SizeNamed(string? name) =>
        name?.ToUpperInvariant() switch
        {
            null or "USUAL" => PrintSize.Usual,
            "LARGE" => PrintSize.Large,
            _ => null,
        };

    private static StepLayout? LayoutNamed(string? name) =>
        name?.ToUpperInvariant() switch
        {
            null or "CARDS" => StepLayout.Cards,
            "PAGE" => StepLayout.Page,
            _ => null,
        };

    private static IResult NotKnown(string sentence) =>
        Results.Text(sentence, statusCode: StatusCodes.Status400BadRequest);
}
