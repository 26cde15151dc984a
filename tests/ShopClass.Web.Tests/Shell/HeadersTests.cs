using System.Net;
using System.Text.RegularExpressions;
using ShopClass.Web.Tests.Access;

namespace ShopClass.Web.Tests.Shell;

public sealed class HeadersTests(OpenShop shop) : IClassFixture<OpenShop>
{
    [Theory]
    [InlineData("/")]
    [InlineData("/account/sign-in")]
    [InlineData("/nowhere")]
    [InlineData("/styles/shop.css")]
    [InlineData("/health")]
    public async Task Every_answer_says_what_a_browser_may_do_with_it(string path)
    {
        var response = await shop.Visit().Get(path);

        var policy = response.Headers.GetValues("Content-Security-Policy").Single();
        Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.Contains("script-src 'self';", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", response.Headers.GetValues("X-Content-Type-Options").Single());
        Assert.Equal("same-origin", response.Headers.GetValues("Referrer-Policy").Single());
    }

    [Fact]
    public async Task Personal_pages_are_kept_by_nobody()
    {
        var visitor = await shop.Visit().OpenDemo();

        var response = await visitor.Get("/courses");

        Assert.True(response.Headers.CacheControl!.NoStore);
    }

    [Fact]
    public async Task A_page_that_is_not_there_says_so_kindly()
    {
        var response = await shop.Visit().Get("/nowhere");

        Assert.Equal(HttpStatusCode.NotFound, response.StatusCode);
        var page = await Visitor.Parse(response);
        Assert.Equal("There is no such page", page.QuerySelector("h1")!.TextContent);
    }

    [Fact]
    public async Task A_post_that_is_refused_is_explained_with_its_status_kept()
    {
        var response = await shop.Visit()
            .Post("/account/sign-out", new Dictionary<string, string>(StringComparer.Ordinal));

        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
        var page = await Visitor.Parse(response);
        Assert.Equal("That form had grown old", page.QuerySelector("h1")!.TextContent);
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/account/sign-in")]
    [InlineData("/account/first")]
    [InlineData("/courses")]
    public async Task No_page_fetches_from_another_host_or_runs_an_inline_script(string path)
    {
        var visitor = path == "/courses" ? await shop.Visit().OpenDemo() : shop.Visit();

        var page = await visitor.Read(path);

        var fetched = page.QuerySelectorAll("[src], link[href], form[action], use[href]")
            .Select(e =>
                e.GetAttribute("src") ?? e.GetAttribute("href") ?? e.GetAttribute("action")
            );
        Assert.DoesNotContain(fetched, a => Regex.IsMatch(a!, "^([a-z]+:)?//"));
        Assert.All(page.Scripts, s => Assert.True(s.HasAttribute("src")));
        Assert.NotNull(page.QuerySelector("main#main"));
        Assert.Equal("en", page.DocumentElement.GetAttribute("lang"));
    }

    [Fact]
    public async Task No_style_sheet_fetches_from_another_host()
    {
        var visitor = await shop.Visit().OpenDemo();
        var page = await visitor.Read("/courses");
        var sheets = page.QuerySelectorAll("link[rel=stylesheet]")
            .Select(l => l.GetAttribute("href")!);

        foreach (var sheet in sheets)
        {
            var response = await visitor.Get("/" + sheet);
            Assert.Equal(HttpStatusCode.OK, response.StatusCode);
            var css = await response.Content.ReadAsStringAsync(
                TestContext.Current.CancellationToken
            );
            Assert.DoesNotMatch(@"(url\(\s*[""']?|@import\s+[""'])([a-z]+:)?//", css);
        }
    }

    [Theory]
    [InlineData("dark")]
    [InlineData("light")]
    public async Task A_remembered_theme_is_in_the_page_before_any_script_runs(string theme)
    {
        var client = shop.CreateClient(new() { HandleCookies = false });
        client.DefaultRequestHeaders.Add("Cookie", $"shop-theme={theme}");

        var page = await new Visitor(client).Read("/");

        Assert.Equal(theme, page.DocumentElement.GetAttribute("data-theme"));
    }

    [Fact]
    public async Task Style_sheets_travel_compressed_and_pages_with_tokens_do_not()
    {
        var client = shop.CreateClient(new() { HandleCookies = true });
        client.DefaultRequestHeaders.Add("Accept-Encoding", "br");
        var visitor = new Visitor(client);

        var css = await visitor.Get("/styles/shop.css");
        var page = await visitor.Get("/account/sign-in");

        Assert.Equal(["br"], css.Content.Headers.ContentEncoding);
        Assert.Empty(page.Content.Headers.ContentEncoding);
    }
}
