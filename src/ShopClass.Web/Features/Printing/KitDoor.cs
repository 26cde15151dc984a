using System.Security.Claims;
using ShopClass.Data.Access;
using ShopClass.Data.Joining;
using ShopClass.Data.Students;
using ShopClass.Web.Features.Account;

namespace ShopClass.Web.Features.Printing;

/// <summary>
/// Where the code on a kit's label leads: whoever is in comes to the kit's student as far as they may; a phone that is not
/// let in comes to the class's door with the class code filled in, to ask like everybody else.
/// </summary>
public static class KitDoor
{
    /// <summary>The path of the code on a label.</summary>
    public static string AddressOf(Guid studentId, Guid projectId) =>
        $"/kit/{studentId:N}/{projectId:N}";

    internal static void Map(IEndpointRouteBuilder routes) =>
        routes.MapGet("/kit/{studentId:guid}/{projectId:guid}", OpenAsync).AllowAnonymous();

    private static async Task<IResult> OpenAsync(
        Guid studentId,
        Guid projectId,
        ClaimsPrincipal person,
        HttpResponse response,
        StudentStore students,
        JoinDesk desk,
        CancellationToken cancel
    )
    {
        response.Headers.CacheControl = "no-store";
        if (person.ToViewer() is { } viewer)
        {
            if (await students.FindAsync(viewer, studentId, cancel) is { } student)
                return Results.LocalRedirect(
                    $"/courses/{student.CourseId}/students/{student.Id}?project={projectId}"
                );
            return viewer is StudentViewer ? Results.LocalRedirect("/my") : Results.NotFound();
        }

        return await desk.CodeOfKitAsync(studentId, cancel) is { } code
            ? Results.LocalRedirect($"/join?code={Uri.EscapeDataString(code)}")
            : Results.LocalRedirect("/join");
    }
}
