using System.Net;
using ShopClass.Data.Projects;
using ShopClass.Web.Tests.Access;
using UglyToad.PdfPig;

namespace ShopClass.Web.Tests.Sheets;

public sealed class StockNoteRouteTests(OpenShop shop) : IClassFixture<OpenShop>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    // ISO 216: A4 is 210 x 297 mm, 595 x 842 points. ANSI Letter is 8 1/2 x 11 in, 612 x 792 points.
    [Theory]
    [InlineData("", 595, 842)]
    [InlineData("?paper=letter", 612, 792)]
    public async Task A_student_gets_the_note_on_the_paper_asked_for(
        string query,
        int width,
        int height
    )
    {
        var (_, _, students) = await shop.DemoAsync();
        var me = await shop.Visit().OpenDemoAs(students[0].Id);

        var response = await me.Get(await AddressAsync() + query);

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal("application/pdf", response.Content.Headers.ContentType!.MediaType);
        Assert.True(response.Headers.CacheControl!.NoStore);
        Assert.Matches(
            "^stock-guide-[a-z0-9-]+\\.pdf$",
            response.Content.Headers.ContentDisposition!.FileName!.Trim('"')
        );
        using var pdf = PdfDocument.Open(await response.Content.ReadAsByteArrayAsync(Cancel));
        var page = Assert.Single(pdf.GetPages());
        Assert.Equal((width, height), ((int)Math.Round(page.Width), (int)Math.Round(page.Height)));
    }

    [Fact]
    public async Task The_instructor_gets_it_too()
    {
        var instructor = await shop.Visit().OpenDemo();

        Assert.Equal(HttpStatusCode.OK, (await instructor.Get(await AddressAsync())).StatusCode);
    }

    [Fact]
    public async Task Another_instructor_does_not_find_it()
    {
        await shop.AddInstructorAsync("note-seeker");
        var stranger = await shop.Visit().SignIn("note-seeker");

        Assert.Equal(
            HttpStatusCode.NotFound,
            (await stranger.Get(await AddressAsync())).StatusCode
        );
    }

    [Fact]
    public async Task Whoever_is_not_signed_in_is_asked_to_sign_in()
    {
        var response = await shop.Visit().Get(await AddressAsync());

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
        var instructor = await shop.Visit().OpenDemo();

        var response = await instructor.Get(await AddressAsync() + "?paper=foolscap");

        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
    }

    private async Task<string> AddressAsync()
    {
        var (owner, course, _) = await shop.DemoAsync();
        var projects = await shop.Get<ProjectStore>().ListAsync(owner, course.Id, Cancel);
        return $"/sheets/guide/{projects[0].Id}";
    }
}
