using System.Net;
using ShopClass.Core.Planning;
using ShopClass.Data.Access;
using ShopClass.Data.Plans;
using ShopClass.Data.Projects;
using ShopClass.Data.Students;
using ShopClass.Web.Tests.Access;
using UglyToad.PdfPig;

namespace ShopClass.Web.Tests.Sheets;

public sealed class KitSheetTests(OpenShop shop) : IClassFixture<OpenShop>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    // ISO 216: A4 is 210 x 297 mm, 595 x 842 points. ANSI Letter is 8 1/2 x 11 in, 612 x 792 points.
    [Theory]
    [InlineData("", 595, 842)]
    [InlineData("?paper=a4", 595, 842)]
    [InlineData("?paper=letter", 612, 792)]
    public async Task A_student_gets_their_own_sheet_on_the_paper_asked_for(
        string query,
        int width,
        int height
    )
    {
        var (plan, student, _) = await PlannedAsync();
        var me = await shop.Visit().OpenDemoAs(student.Id);

        var response = await me.Get($"/sheets/kit/{plan.Id}{query}");

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal("application/pdf", response.Content.Headers.ContentType!.MediaType);
        Assert.True(response.Headers.CacheControl!.NoStore);
        using var pdf = PdfDocument.Open(await response.Content.ReadAsByteArrayAsync(Cancel));
        var page = pdf.GetPage(1);
        Assert.Equal((width, height), ((int)Math.Round(page.Width), (int)Math.Round(page.Height)));
        Assert.Contains(student.Shown, page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_file_is_shown_in_place_under_a_name_of_plain_letters()
    {
        var (plan, student, _) = await PlannedAsync();
        var me = await shop.Visit().OpenDemoAs(student.Id);

        var disposition = (await me.Get($"/sheets/kit/{plan.Id}"))
            .Content
            .Headers
            .ContentDisposition!;

        Assert.Equal("inline", disposition.DispositionType);
        Assert.Matches("^kit-[a-z0-9-]+-1\\.pdf$", disposition.FileName!.Trim('"'));
    }

    [Fact]
    public async Task The_instructor_gets_it_too()
    {
        var (plan, _, _) = await PlannedAsync();
        var instructor = await shop.Visit().OpenDemo();

        Assert.Equal(
            HttpStatusCode.OK,
            (await instructor.Get($"/sheets/kit/{plan.Id}")).StatusCode
        );
    }

    [Fact]
    public async Task Another_student_of_the_same_course_does_not_find_it()
    {
        var (plan, _, other) = await PlannedAsync();
        var stranger = await shop.Visit().OpenDemoAs(other.Id);

        Assert.Equal(
            HttpStatusCode.NotFound,
            (await stranger.Get($"/sheets/kit/{plan.Id}")).StatusCode
        );
    }

    [Fact]
    public async Task Another_instructor_does_not_find_it()
    {
        var (plan, _, _) = await PlannedAsync();
        await shop.AddInstructorAsync("sheet-seeker");
        var stranger = await shop.Visit().SignIn("sheet-seeker");

        Assert.Equal(
            HttpStatusCode.NotFound,
            (await stranger.Get($"/sheets/kit/{plan.Id}")).StatusCode
        );
    }

    [Fact]
    public async Task Whoever_is_not_signed_in_is_asked_to_sign_in()
    {
        var (plan, _, _) = await PlannedAsync();

        var response = await shop.Visit().Get($"/sheets/kit/{plan.Id}");

        Assert.Equal(HttpStatusCode.Redirect, response.StatusCode);
        Assert.StartsWith(
            "/account/sign-in",
            response.Headers.Location!.PathAndQuery,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task A_paper_nobody_has_is_refused_in_words()
    {
        var (plan, _, _) = await PlannedAsync();
        var instructor = await shop.Visit().OpenDemo();

        var response = await instructor.Get($"/sheets/kit/{plan.Id}?paper=foolscap");

        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
    }

    private async Task<(StoredPlan Plan, StudentView Student, StudentView Other)> PlannedAsync()
    {
        var (owner, course, students) = await shop.DemoAsync();
        var states = await shop.Get<PlanStore>().StatesAsync(owner, course.Id, Cancel);
        var state = states.First(s => s.Boards > 0);
        var plan =
            await shop.Get<PlanStore>().NewestAsync(owner, state.StudentId, state.ProjectId, Cancel)
            ?? await MakeAsync(owner, state);
        return (
            plan,
            students.First(s => s.Id == state.StudentId),
            students.First(s => s.Id != state.StudentId)
        );
    }

    private async Task<StoredPlan> MakeAsync(Viewer owner, PlanState state)
    {
        var plans = shop.Get<PlanStore>();
        var request = await plans.RequestAsync(owner, state.StudentId, state.ProjectId, Cancel);
        var made = CheckedPlan.Make(request!, cancel: Cancel);
        return (
            await plans.SaveAsync(owner, state.StudentId, state.ProjectId, made, Cancel)
        ).Value!;
    }
}
