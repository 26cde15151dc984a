using System.Security.Claims;
using ShopClass.Data.Access;

namespace ShopClass.Web.Features.Account;

/// <summary>Who is behind a request or a circuit, read from what the cookie claims.</summary>
public static class Viewers
{
    public const string StudentClaim = "student";
    public const string CourseClaim = "course";

    /// <summary>Null for somebody who is not signed in. A student's claims win: a cookie never means both.</summary>
    public static Viewer? ToViewer(this ClaimsPrincipal person)
    {
        if (person.Identity?.IsAuthenticated is not true)
            return null;
        if (person.FindFirst(StudentClaim) is { } student)
            return
                Guid.TryParse(student.Value, out var id)
                && Guid.TryParse(person.FindFirst(CourseClaim)?.Value, out var course)
                ? new StudentViewer(id, course)
                : null;
        return person.FindFirst(ClaimTypes.NameIdentifier) is { } account
            ? new InstructorViewer(account.Value)
            : null;
    }
}
