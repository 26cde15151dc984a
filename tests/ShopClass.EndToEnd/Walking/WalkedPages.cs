using ShopClass.Web.Features.Logging;

namespace ShopClass.EndToEnd.Walking;

/// <summary>Who walks a page.</summary>
public enum Walker
{
    /// <summary>Nobody is signed in.</summary>
    Anybody,

    /// <summary>A phone waits at the door.</summary>
    Waiting,

    Student,

    Instructor,
}

/// <summary>An address of a route, and who walks it.</summary>
/// <param name="Route">The route as its page declares it.</param>
/// <param name="Walker">Who opens it.</param>
/// <param name="Path">The address.</param>
internal sealed record WalkedPage(string Route, Walker Walker, string Path);

/// <summary>An address for every route of the app. A new page without a row here fails.</summary>
internal static class WalkedPages
{
    private const string Course = "/courses/{CourseId:guid}";
    private const string Student = Course + "/students/{StudentId:guid}";
    private const string Project = Course + "/projects/{ProjectId:guid}";
    private const string Theirs = Student + "/projects/{ProjectId:guid}";

    public static IReadOnlyList<WalkedPage> Of(WalkedApp app)
    {
        var course = $"/courses/{app.Course}";
        var project = $"{course}/projects/{app.Project}";
        var student = $"{course}/students/{app.Student}";
        var theirs = $"{student}/projects/{app.Project}";
        return
        [
            new("/", Walker.Anybody, "/"),
            new("/account/first", Walker.Anybody, "/account/first"),
            new("/account/invited", Walker.Anybody, "/account/invited"),
            new("/account/sign-in", Walker.Anybody, "/account/sign-in"),
            new("/join", Walker.Anybody, "/join"),
            new("/join", Walker.Anybody, $"/join?code={app.Code}"),
            new("/not-found", Walker.Anybody, "/not-found"),
            new("/not-found", Walker.Anybody, "/not-found?code=400"),
            new("/error", Walker.Anybody, "/error"),
            new("/join/waiting", Walker.Waiting, "/join/waiting"),
            new("/my", Walker.Student, "/my"),
            new("/my/board", Walker.Student, "/my/board"),
            .. EntryScreens.All.Select(s => new WalkedPage(
                "/my/board/new/{ProjectId:guid}/{Slug}",
                Walker.Student,
                EntryScreens.Address(app.Project, s)
            )),
            new("/my/leave", Walker.Student, "/my/leave"),
            new("/my/steps", Walker.Student, "/my/steps"),
            new("/my/steps/{PlanId:guid}/{Number:int}", Walker.Student, $"/my/steps/{app.Plan}/1"),
            new("/my/steps/{PlanId:guid}/{Number:int}", Walker.Student, $"/my/steps/{app.Plan}/9"),
            new("/my/steps/{PlanId:guid}/all", Walker.Student, $"/my/steps/{app.Plan}/all"),
            new("/my/steps/{PlanId:guid}/paper", Walker.Student, $"/my/steps/{app.Plan}/paper"),
            new("/courses", Walker.Instructor, "/courses"),
            new(Course, Walker.Instructor, course),
            new(Course + "/settings", Walker.Instructor, course + "/settings"),
            new(Course + "/techniques", Walker.Instructor, course + "/techniques"),
            new(Course + "/file", Walker.Instructor, course + "/file"),
            new(Course + "/print", Walker.Instructor, course + "/print"),
            new(Course + "/joining", Walker.Instructor, course + "/joining"),
            new(Course + "/people", Walker.Instructor, course + "/people"),
            new(Course + "/room", Walker.Instructor, course + "/room"),
            new(Course + "/state", Walker.Instructor, course + "/state"),
            new(
                Course + "/catch-up/{StudentId:guid}",
                Walker.Instructor,
                $"{course}/catch-up/{app.Student}"
            ),
            new(Course + "/paper/{PlanId:guid}", Walker.Instructor, $"{course}/paper/{app.Plan}"),
            new(Course + "/lessons", Walker.Instructor, course + "/lessons"),
            new(
                Course + "/lessons/{PlanId:guid}/{Number:int}",
                Walker.Instructor,
                $"{course}/lessons/{app.LessonPlan}/1"
            ),
            new(
                Course + "/lessons/{PlanId:guid}/students/{StudentId:guid}",
                Walker.Instructor,
                $"{course}/lessons/{app.LessonPlan}/students/{app.Student}"
            ),
            new(Course + "/materials", Walker.Instructor, course + "/materials"),
            new(Course + "/materials/tools", Walker.Instructor, course + "/materials/tools"),
            new(
                Course + "/materials/sellers/{SellerId:guid}",
                Walker.Instructor,
                $"{course}/materials/sellers/{app.Seller}"
            ),
            new(
                Course + "/materials/orders/{ProjectId:guid}",
                Walker.Instructor,
                $"{course}/materials/orders/{app.Project}"
            ),
            new(
                Course + "/materials/kits/{ProjectId:guid}",
                Walker.Instructor,
                $"{course}/materials/kits/{app.Project}"
            ),
            new(Project, Walker.Instructor, project),
            new(Project + "/guide", Walker.Instructor, project + "/guide"),
            new(Student, Walker.Instructor, student),
            new(Theirs + "/boards/new", Walker.Instructor, theirs + "/boards/new"),
            new(
                Theirs + "/boards/{BoardId:guid}",
                Walker.Instructor,
                $"{theirs}/boards/{app.Board}"
            ),
            new(Theirs + "/plan", Walker.Instructor, theirs + "/plan"),
            new(Theirs + "/plan/remake", Walker.Instructor, theirs + "/plan/remake"),
        ];
    }
}
