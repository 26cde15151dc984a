using System.Security.Claims;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Store;
using ShopClass.Data.Students;

namespace ShopClass.Web.Features.Account;

/// <summary>A student somebody may look over the shoulder of.</summary>
public sealed record DemoStudent(StudentViewer Viewer, string Shown, string Course);

/// <summary>
/// Opens the demo course without a password, to look around or to work on the app. In Production the door is never
/// built: no address, no mention.
/// </summary>
public static class DemoDoor
{
    public const string Address = "/account/demo";
    public const string Claim = "demo";
    public const string AsInstructor = "instructor";

    public static void MapDemoDoor(this WebApplication app)
    {
        if (app.Environment.IsProduction())
            return;
        app.MapPost(Address, OpenAsync).AllowAnonymous().ChecksAntiforgery();
    }

    /// <summary>The students of the demo's courses, in the order a class list has.</summary>
    public static async Task<IReadOnlyList<DemoStudent>> StudentsAsync(
        InstructorViewer owner,
        CourseStore courses,
        StudentStore students,
        CancellationToken cancel = default
    )
    {
        List<DemoStudent> found = [];
        foreach (var course in await courses.ListAsync(owner, cancel))
        {
            if (course.IsArchived)
                continue;
            foreach (var student in await students.ListAsync(owner, course.Id, cancel))
                found.Add(new(new(student.Id, course.Id), student.Shown, course.Name));
        }
        return found;
    }

    private static async Task<IResult> OpenAsync(
        [FromForm] string? who,
        HttpContext http,
        InstructorAccounts accounts,
        SignInManager<Instructor> signIn,
        CourseStore courses,
        StudentStore students
    )
    {
        if (await accounts.DemoAsync() is not { } demo)
            return TypedResults.NotFound();
        if (who == AsInstructor)
        {
            var account = (await signIn.UserManager.FindByIdAsync(demo))!;
            await signIn.SignInWithClaimsAsync(account, isPersistent: false, [new(Claim, "yes")]);
            return TypedResults.LocalRedirect("/courses");
        }
        var all = await StudentsAsync(new(demo), courses, students);
        if (all.FirstOrDefault(s => s.Viewer.StudentId.ToString() == who) is not { } student)
            return TypedResults.NotFound();
        await http.SignInAsync(IdentityConstants.ApplicationScheme, PrincipalOf(student));
        return TypedResults.LocalRedirect("/my");
    }

    private static ClaimsPrincipal PrincipalOf(DemoStudent student) =>
        new(
            new ClaimsIdentity(
                [
                    new(ClaimTypes.Name, student.Shown),
                    new(Viewers.StudentClaim, student.Viewer.StudentId.ToString()),
                    new(Viewers.CourseClaim, student.Viewer.CourseId.ToString()),
                    new(Claim, "yes"),
                ],
                IdentityConstants.ApplicationScheme
            )
        );
}
