using System.Security.Claims;
using ShopClass.Data.Keeping;
using ShopClass.Web.Features.Account;

namespace ShopClass.Web.Features.Keeping;

/// <summary>Everything kept about one student, as a file for them.</summary>
public static class KeepingRoutes
{
    public static void AddKeeping(this IServiceCollection services) =>
        services.AddHostedService<Forgetting>();

    public static void MapKeeping(this IEndpointRouteBuilder routes) =>
        routes.MapGet("/files/student/{studentId:guid}", ExportAsync).RequireAuthorization();

    private static async Task<IResult> ExportAsync(
        Guid studentId,
        ClaimsPrincipal person,
        HttpResponse response,
        StudentExport export,
        CancellationToken cancel
    )
    {
        if (
            person.ToViewer() is not { } viewer
            || await export.WriteAsync(viewer, studentId, cancel) is not { } text
        )
            return Results.NotFound();
        response.Headers.CacheControl = "no-store";
        // No name in the file's name: it shows up in lists of downloads.
        return Results.File(
            System.Text.Encoding.UTF8.GetBytes(text),
            "application/json",
            "student.json"
        );
    }
}
