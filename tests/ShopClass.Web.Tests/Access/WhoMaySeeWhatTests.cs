using System.Net;
using ShopClass.Data.Projects;
using ShopClass.Data.Students;

namespace ShopClass.Web.Tests.Access;

public sealed class WhoMaySeeWhatTests(OpenShop shop) : IClassFixture<OpenShop>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("/courses")]
    [InlineData("/my")]
    [InlineData("/courses/{course}")]
    [InlineData("/courses/{course}/settings")]
    [InlineData("/courses/{course}/joining")]
    [InlineData("/courses/{course}/file")]
    [InlineData("/courses/{course}/projects/{project}")]
    [InlineData("/courses/{course}/projects/{project}/guide")]
    [InlineData("/courses/{course}/students/{student}")]
    [InlineData("/courses/{course}/students/{student}/projects/{project}/plan")]
    [InlineData("/courses/{course}/students/{student}/projects/{project}/boards/new")]
    [InlineData("/files/course/{course}")]
    [InlineData("/files/project/{project}")]
    public async Task Whoever_is_not_signed_in_is_asked_to_sign_in(string path)
    {
        var address = await InTheDemo(path);

        var response = await shop.Visit().Get(address);

        Assert.Equal(HttpStatusCode.Redirect, response.StatusCode);
        Assert.StartsWith(
            $"/account/sign-in?ReturnUrl={Uri.EscapeDataString(address)}",
            response.Headers.Location!.PathAndQuery,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("/courses/{course}")]
    [InlineData("/courses/{course}/settings")]
    [InlineData("/courses/{course}/joining")]
    [InlineData("/courses/{course}/projects/{project}")]
    [InlineData("/courses/{course}/projects/{project}/guide")]
    [InlineData("/courses/{course}/file")]
    [InlineData("/courses/{course}/students/{student}")]
    [InlineData("/courses/{course}/students/{student}/projects/{project}/plan")]
    [InlineData("/courses/{course}/students/{student}/projects/{project}/boards/new")]
    [InlineData("/files/course/{course}")]
    [InlineData("/files/project/{project}")]
    public async Task Another_instructor_does_not_find_the_course(string path)
    {
        var name = $"other-{Guid.NewGuid():N}";
        await shop.AddInstructorAsync(name);
        var other = await shop.Visit().SignIn(name);

        var response = await other.Get(await InTheDemo(path));

        Assert.Equal(HttpStatusCode.NotFound, response.StatusCode);
        var page = await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.DoesNotContain("Eight Evenings", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/courses/{course}")]
    [InlineData("/courses/{course}/settings")]
    [InlineData("/courses/{course}/joining")]
    [InlineData("/courses/{course}/file")]
    [InlineData("/courses/{course}/projects/{project}")]
    [InlineData("/courses/{course}/projects/{project}/guide")]
    [InlineData("/courses/{course}/students/{student}")]
    [InlineData("/files/course/{course}")]
    [InlineData("/files/project/{project}")]
    public async Task The_course_s_instructor_finds_it(string path)
    {
        var owner = await shop.Visit().OpenDemo();

        var response = await owner.Get(await InTheDemo(path));

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
    }

    [Fact]
    public async Task A_student_sees_their_own_pages_and_nobody_else_s()
    {
        var (_, course, students) = await shop.DemoAsync();
        var (me, other) = (students[0], students[1]);
        var student = await shop.Visit().OpenDemoAs(me.Id);

        var overview = await student.Read($"/courses/{course.Id}");
        var own = await student.Get($"/courses/{course.Id}/students/{me.Id}");
        var others = await student.Get($"/courses/{course.Id}/students/{other.Id}");

        Assert.Contains(me.Shown, overview.Body!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(other.Shown, overview.Body!.TextContent, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, own.StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, others.StatusCode);
    }

    [Theory]
    [InlineData("/courses/{course}/settings")]
    [InlineData("/courses/{course}/joining")]
    [InlineData("/courses/{course}/file")]
    [InlineData("/files/course/{course}")]
    public async Task What_is_the_instructor_s_is_not_there_for_a_student(string path)
    {
        var (_, _, students) = await shop.DemoAsync();
        var student = await shop.Visit().OpenDemoAs(students[0].Id);

        var response = await student.Get(await InTheDemo(path));

        Assert.Equal(HttpStatusCode.NotFound, response.StatusCode);
    }

    [Fact]
    public async Task A_course_file_comes_as_a_download_that_nobody_keeps_a_copy_of()
    {
        var owner = await shop.Visit().OpenDemo();

        var response = await owner.Get(await InTheDemo("/files/course/{course}"));

        Assert.Equal("application/json", response.Content.Headers.ContentType!.MediaType);
        Assert.Equal(
            "eight-evenings-with-a-handsaw.course.json",
            response.Content.Headers.ContentDisposition!.FileName
        );
        Assert.True(response.Headers.CacheControl!.NoStore);
    }

    [Fact]
    public async Task A_removed_student_is_out_within_a_minute_or_so()
    {
        var (owner, course, _) = await shop.DemoAsync();
        var card = new StudentCard("Short Stay", "", IsLeftHanded: false);
        var students = shop.Get<StudentStore>();
        var added = (await students.AddAsync(owner, course.Id, card, Cancel)).Value!;
        var student = await shop.Visit().OpenDemoAs(added.Id);

        await students.RemoveAsync(owner, added.Id, Cancel);
        shop.Clock.Advance(TimeSpan.FromMinutes(2));
        var response = await student.Get($"/courses/{course.Id}");

        Assert.Equal(HttpStatusCode.Redirect, response.StatusCode);
    }

    private async Task<string> InTheDemo(string path)
    {
        var (owner, course, students) = await shop.DemoAsync();
        var projects = await shop.Get<ProjectStore>().ListAsync(owner, course.Id, Cancel);
        return path.Replace("{course}", course.Id.ToString(), StringComparison.Ordinal)
            .Replace("{project}", projects[0].Id.ToString(), StringComparison.Ordinal)
            .Replace("{student}", students[0].Id.ToString(), StringComparison.Ordinal);
    }
}
