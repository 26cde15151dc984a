using System.Text.RegularExpressions;

namespace ShopClass.Web.Tests.Access;

/// <summary>
/// Every address of the app and who is answered there: with 200 over HTTP, with the page over a circuit. Whoever is not
/// named is sent away or told that it is not there.
/// </summary>
internal static class Addresses
{
    private const string Staff = "owner, helper, stand-in";
    private const string Instructors =
        Staff + ", stand-in of another day, helper elsewhere, other instructor";
    private const string Course = Staff + ", self, classmate";
    private const string AllStudents = "self, classmate, outsider";
    private const string Everybody = "nobody, " + Instructors + ", " + AllStudents;
    private const string Student = "/courses/{CourseId:guid}/students/{StudentId:guid}";
    private const string Work = Student + "/projects/{ProjectId:guid}";

    public static IReadOnlyDictionary<string, string> Answered { get; } =
        new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["/courses"] = Instructors,
            ["/courses/{CourseId:guid}"] = Course,
            ["/courses/{CourseId:guid}/file"] = "owner",
            ["/courses/{CourseId:guid}/joining"] = "owner",
            ["/courses/{CourseId:guid}/lessons"] = Course,
            ["/courses/{CourseId:guid}/lessons/{PlanId:guid}/students/{StudentId:guid}"] =
                Staff + ", self",
            ["/courses/{CourseId:guid}/lessons/{PlanId:guid}/{Number:int}"] = Staff,
            ["/courses/{CourseId:guid}/materials"] = "owner",
            ["/courses/{CourseId:guid}/materials/kits/{ProjectId:guid}"] = "owner",
            ["/courses/{CourseId:guid}/materials/orders/{ProjectId:guid}"] = "owner",
            ["/courses/{CourseId:guid}/materials/sellers/{SellerId:guid}"] = "owner",
            ["/courses/{CourseId:guid}/paper/{PlanId:guid}"] = "owner, helper",
            ["/courses/{CourseId:guid}/materials/tools"] = "owner",
            ["/courses/{CourseId:guid}/people"] = "owner",
            ["/courses/{CourseId:guid}/print"] = "owner",
            ["/courses/{CourseId:guid}/projects/{ProjectId:guid}"] = Course,
            ["/courses/{CourseId:guid}/projects/{ProjectId:guid}/guide"] = Course,
            ["/courses/{CourseId:guid}/room"] = Staff,
            ["/courses/{CourseId:guid}/settings"] = "owner",
            ["/courses/{CourseId:guid}/state"] = Staff,
            ["/courses/{CourseId:guid}/catch-up/{StudentId:guid}"] = Staff,
            [Student] = "owner, helper, self",
            [Work + "/boards/new"] = "owner, helper, self",
            [Work + "/boards/{BoardId:guid}"] = "owner, helper, self",
            [Work + "/plan"] = "owner, helper, self",
            [Work + "/plan/remake"] = "owner, helper, self",
            ["/courses/{CourseId:guid}/techniques"] = "owner",
            ["/files/board-entry/{entryId:guid}/photo"] = "owner, helper, self",
            ["/files/board/{boardId:guid}/photo"] = "owner, helper, self",
            ["/files/course/{id:guid}"] = "owner",
            ["/files/project/{id:guid}"] = "owner",
            ["/files/student/{studentId:guid}"] = "owner, self",
            ["/my"] = AllStudents,
            ["/my/board"] = AllStudents,
            ["/my/board/new/{ProjectId:guid}/{Slug}"] = "self, classmate",
            ["/my/leave"] = Instructors + ", " + AllStudents,
            ["/my/steps"] = AllStudents,
            ["/my/steps/{PlanId:guid}/all"] = "self",
            ["/my/steps/{PlanId:guid}/paper"] = "self",
            ["/my/steps/{PlanId:guid}/{Number:int}"] = "self",
            ["/orders/costs/{orderId:guid}"] = "owner",
            ["/orders/csv/{orderId:guid}"] = "owner",
            ["/orders/kits/{orderId:guid}"] = "owner",
            ["/orders/prices/{sellerId:guid}"] = "owner",
            ["/print/set/{id:guid}"] = "owner",
            ["/sheets/catch-up/{courseId:guid}/{studentId:guid}/{number:int}"] = Staff,
            ["/sheets/guide/{projectId:guid}"] = Course,
            ["/sheets/kit/{planId:guid}"] = "owner, helper, self",
            ["/sheets/lessons/{planId:guid}/lesson/{number:int}"] = Staff,
            ["/sheets/lessons/{planId:guid}/student/{studentId:guid}"] = Staff + ", self",
            ["/sheets/lessons/{planId:guid}/wall/{number:int}"] = Staff,
            ["/sheets/state/{courseId:guid}"] = Staff,
            ["/sheets/take-home/{courseId:guid}/{studentId:guid}"] = Staff,
            ["/sheets/steps/{planId:guid}"] = "owner, helper, self",
        };

    /// <summary>For everybody, and about nobody.</summary>
    public static IReadOnlyList<string> Open { get; } =
    [
        "/",
        "/account/first",
        "/account/invited",
        "/account/sign-in",
        "/error",
        "/health",
        "/join",
        "/join/waiting",
        "/not-found",
    ];

    /// <summary>They show nothing themselves and send on by who asks; tests of their own ask where to.</summary>
    public static IReadOnlyList<string> SendOn { get; } =
    ["/kit/{studentId:guid}/{projectId:guid}"];

    /// <summary>Written or listened to; tests of their own ask who may.</summary>
    public static IReadOnlyList<string> Posts { get; } =
    [
        "/account/demo",
        "/account/sign-out",
        "/my/board/new/{project:guid}/photo/send",
        "/my/news",
        "/my/steps/say",
        "{**nowhere}",
    ];

    /// <summary>Whether a page tells this visitor of the student, or one who is nobody to the course of the course.</summary>
    public static string? Leak(string page, string visitor) =>
        IsAnswered("/courses/{CourseId:guid}", visitor)
            ? Told(page, "Ada")
            : Told(page, "Ada") ?? Told(page, "Evenings");

    private static string? Told(string page, string name) =>
        Regex.IsMatch(page, $@">[^<]*\b{name}\b") ? name : null;

    public static bool IsAnswered(string pattern, string visitor) =>
        Answered[pattern].Split(", ").Contains(visitor);
}
