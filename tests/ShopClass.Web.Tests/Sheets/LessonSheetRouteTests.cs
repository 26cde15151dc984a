using System.Net;
using ShopClass.Core.Lessons;
using ShopClass.Data.Lessons;
using ShopClass.Data.Projects;
using ShopClass.Web.Tests.Access;
using UglyToad.PdfPig;

namespace ShopClass.Web.Tests.Sheets;

public sealed class LessonSheetRouteTests(OpenShop shop) : IClassFixture<OpenShop>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    // ISO 216: A4 is 210 x 297 mm, 595 x 842 points. ANSI Letter is 8 1/2 x 11 in, 612 x 792 points.
    [Theory]
    [InlineData("lesson/1", 595, 842)]
    [InlineData("wall/8?paper=letter", 612, 792)]
    public async Task The_instructor_gets_a_lessons_sheet_on_the_paper_asked_for(
        string which,
        int width,
        int height
    )
    {
        var (plan, _) = await PlanAsync();
        var instructor = await shop.Visit().OpenDemo();

        var response = await instructor.Get($"/sheets/lessons/{plan}/{which}");

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.True(response.Headers.CacheControl!.NoStore);
        using var pdf = PdfDocument.Open(await response.Content.ReadAsByteArrayAsync(Cancel));
        var page = pdf.GetPage(1);
        Assert.Equal((width, height), ((int)Math.Round(page.Width), (int)Math.Round(page.Height)));
    }

    [Fact]
    public async Task A_student_gets_their_own_checklist_and_no_other_sheet()
    {
        var (plan, students) = await PlanAsync();
        var me = await shop.Visit().OpenDemoAs(students[0]);

        async Task<HttpStatusCode> Ask(string which) =>
            (await me.Get($"/sheets/lessons/{plan}/{which}")).StatusCode;

        Assert.Equal(HttpStatusCode.OK, await Ask($"student/{students[0]}"));
        Assert.Equal(HttpStatusCode.NotFound, await Ask($"student/{students[1]}"));
        Assert.Equal(HttpStatusCode.NotFound, await Ask("lesson/1"));
        Assert.Equal(HttpStatusCode.NotFound, await Ask("wall/1"));
    }

    [Theory]
    [InlineData("lesson/0", HttpStatusCode.NotFound)]
    [InlineData("lesson/9", HttpStatusCode.NotFound)]
    [InlineData("lesson/1?paper=foolscap", HttpStatusCode.BadRequest)]
    public async Task A_lesson_or_a_paper_that_is_not_there_is_not_made_up(
        string which,
        HttpStatusCode status
    )
    {
        var (plan, _) = await PlanAsync();
        var instructor = await shop.Visit().OpenDemo();

        Assert.Equal(status, (await instructor.Get($"/sheets/lessons/{plan}/{which}")).StatusCode);
    }

    [Fact]
    public async Task Another_instructor_does_not_find_it_and_a_stranger_is_asked_to_sign_in()
    {
        var (plan, _) = await PlanAsync();
        await shop.AddInstructorAsync("lesson-seeker");
        var other = await shop.Visit().SignIn("lesson-seeker");

        Assert.Equal(
            HttpStatusCode.NotFound,
            (await other.Get($"/sheets/lessons/{plan}/lesson/1")).StatusCode
        );
        Assert.Equal(
            HttpStatusCode.Redirect,
            (await shop.Visit().Get($"/sheets/lessons/{plan}/lesson/1")).StatusCode
        );
    }

    private async Task<(Guid Plan, IReadOnlyList<Guid> Students)> PlanAsync()
    {
        var (owner, course, students) = await shop.DemoAsync();
        var project = (await shop.Get<ProjectStore>().ListAsync(owner, course.Id, Cancel))[0].Id;
        var plans = shop.Get<LessonPlanStore>();
        var basis = (await plans.BasisAsync(owner, course.Id, project, Cancel))!;
        var plan = LessonPlanner.Plan(basis.Request, progress: null, Cancel);
        var saved = await plans.SaveAsync(owner, course.Id, project, basis.Request, plan, Cancel);
        return (saved.Value!.Id, [.. students.Select(s => s.Id)]);
    }
}
