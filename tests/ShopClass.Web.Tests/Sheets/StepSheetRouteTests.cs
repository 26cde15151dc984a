using System.Net;
using ShopClass.Core.Planning;
using ShopClass.Data.Plans;
using ShopClass.Data.Students;
using ShopClass.Web.Tests.Access;
using UglyToad.PdfPig;

namespace ShopClass.Web.Tests.Sheets;

public sealed class StepSheetRouteTests(OpenShop shop) : IClassFixture<OpenShop>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("")]
    [InlineData("?paper=letter&size=large&layout=page")]
    [InlineData("?paper=a4&size=usual&layout=cards")]
    public async Task A_student_gets_their_own_steps(string query)
    {
        var (plan, student, _) = await PlannedAsync();
        var me = await shop.Visit().OpenDemoAs(student.Id);

        var response = await me.Get($"/sheets/steps/{plan.Id}{query}");

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal("application/pdf", response.Content.Headers.ContentType!.MediaType);
        Assert.True(response.Headers.CacheControl!.NoStore);
        using var pdf = PdfDocument.Open(await response.Content.ReadAsByteArrayAsync(Cancel));
        Assert.Contains(student.Shown, pdf.GetPage(1).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("paper=foolscap")]
    [InlineData("size=huge")]
    [InlineData("layout=scroll")]
    public async Task What_there_is_not_is_refused_in_words(string query)
    {
        var (plan, _, _) = await PlannedAsync();
        var instructor = await shop.Visit().OpenDemo();

        var response = await instructor.Get($"/sheets/steps/{plan.Id}?{query}");

        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
        Assert.StartsWith("There is no such", await response.Content.ReadAsStringAsync(Cancel));
    }

    [Fact]
    public async Task Another_student_of_the_same_course_does_not_find_them()
    {
        var (plan, _, other) = await PlannedAsync();
        var stranger = await shop.Visit().OpenDemoAs(other.Id);

        Assert.Equal(
            HttpStatusCode.NotFound,
            (await stranger.Get($"/sheets/steps/{plan.Id}")).StatusCode
        );
    }

    [Fact]
    public async Task Whoever_is_not_signed_in_is_asked_to_sign_in()
    {
        var (plan, _, _) = await PlannedAsync();

        var response = await shop.Visit().Get($"/sheets/steps/{plan.Id}");

        Assert.Equal(HttpStatusCode.Redirect, response.StatusCode);
    }

    private async Task<(StoredPlan Plan, StudentView Student, StudentView Other)> PlannedAsync()
    {
        var (owner, course, students) = await shop.DemoAsync();
        var plans = shop.Get<PlanStore>();
        var states = await plans.StatesAsync(owner, course.Id, Cancel);
        var state = states.First(s => s.Boards > 0);
        var plan = await plans.NewestAsync(owner, state.StudentId, state.ProjectId, Cancel);
        if (plan is null)
        {
            var request = await plans.RequestAsync(owner, state.StudentId, state.ProjectId, Cancel);
            var made = CheckedPlan.Make(request!, cancel: Cancel);
            plan = (
                await plans.SaveAsync(owner, state.StudentId, state.ProjectId, made, Cancel)
            ).Value!;
        }

        return (
            plan,
            students.First(s => s.Id == state.StudentId),
            students.First(s => s.Id != state.StudentId)
        );
    }
}
