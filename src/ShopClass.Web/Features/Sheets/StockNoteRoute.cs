using System.Security.Claims;
using Microsoft.Net.Http.Headers;
using ShopClass.Core.Planning.Guide;
using ShopClass.Data.Courses;
using ShopClass.Data.Projects;
using ShopClass.Print.Sheets;
using ShopClass.Web.Features.Account;
using ShopClass.Web.Features.Guide;

namespace ShopClass.Web.Features.Sheets;

/// <summary>The note for the seller. Whoever may see the project may have it.</summary>
internal static class StockNoteRoute
{
    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapGet("/sheets/guide/{projectId:guid}", NoteAsync).RequireAuthorization();

    private static async Task<IResult> NoteAsync(
        Guid projectId,
        string? paper,
        ClaimsPrincipal person,
        HttpResponse response,
        ProjectStore projects,
        CourseStore courses,
        GuideShelf shelf,
        TimeProvider clock,
        CancellationToken cancel
    )
    {
        if (SheetRoutes.PaperNamed(paper) is not { } format)
            return SheetRoutes.NoSuchPaper();
        if (
            person.ToViewer() is not { } viewer
            || await projects.FindAsync(viewer, projectId, cancel) is not { } project
            || await courses.FindAsync(viewer, project.CourseId, cancel) is not { } course
        )
            return Results.NotFound();
        var wanted = project.ToProject();
        var guide =
            shelf.Find(wanted, course.Rules)
            ?? StockGuide.Make(wanted, course.Rules, cancel: cancel);
        shelf.Keep(guide);
        var today = DateOnly.FromDateTime(clock.GetLocalNow().DateTime);
        response.Headers.CacheControl = "no-store";
        response.Headers.ContentDisposition = new ContentDispositionHeaderValue("inline")
        {
            FileName = $"{SheetName.Safe($"stock-guide-{project.Name}")}.pdf",
        }.ToString();
        return Results.Bytes(
            StockNote.Make(new(course.Name, guide, today), format),
            "application/pdf"
        );
    }
}
