using System.Security.Claims;
using System.Text;
using ShopClass.Data.CourseFiles;
using ShopClass.Data.Courses;
using ShopClass.Data.Projects;
using ShopClass.Web.Features.Account;

namespace ShopClass.Web.Features.CourseFiles;

/// <summary>Course files out of the app, for who may see what is in them.</summary>
public static class FileDownloads
{
    public static void MapFileDownloads(this WebApplication app)
    {
        var files = app.MapGroup("/files").RequireAuthorization();
        files.MapGet("/course/{id:guid}", CourseAsync);
        files.MapGet("/project/{id:guid}", ProjectAsync);
    }

    /// <summary>A file name made of the name's plain letters and digits: "evening-class.course.json".</summary>
    public static string NameOf(string name, string kind)
    {
        var plain = new StringBuilder();
        foreach (var c in name.ToLowerInvariant())
        {
            if (char.IsAsciiLetterOrDigit(c))
                plain.Append(c);
            else if (plain.Length > 0 && plain[^1] != '-')
                plain.Append('-');
        }
        var stem = plain.ToString().Trim('-');
        return stem.Length == 0 ? $"{kind}.json" : $"{stem}.{kind}.json";
    }

    private static async Task<IResult> CourseAsync(
        Guid id,
        ClaimsPrincipal person,
        HttpResponse response,
        CourseFileStore files,
        CourseStore courses
    )
    {
        if (person.ToViewer() is not { } viewer)
            return TypedResults.NotFound();
        var course = await courses.FindAsync(viewer, id);
        return File(response, course?.Name, "course", await files.ExportCourseAsync(viewer, id));
    }

    private static async Task<IResult> ProjectAsync(
        Guid id,
        ClaimsPrincipal person,
        HttpResponse response,
        CourseFileStore files,
        ProjectStore projects
    )
    {
        if (person.ToViewer() is not { } viewer)
            return TypedResults.NotFound();
        var project = await projects.FindAsync(viewer, id);
        return File(response, project?.Name, "project", await files.ExportProjectAsync(viewer, id));
    }

    private static IResult File(HttpResponse response, string? name, string kind, string? text)
    {
        if (name is null || text is null)
            return TypedResults.NotFound();
        response.Headers.CacheControl = "no-store";
        return TypedResults.File(
            Encoding.UTF8.GetBytes(text),
            "application/json; charset=utf-8",
            NameOf(name, kind)
        );
    }
}
