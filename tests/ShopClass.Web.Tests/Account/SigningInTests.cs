using System.Net;
using ShopClass.Web.Tests.Access;

namespace ShopClass.Web.Tests.Account;

public sealed class SigningInTests(OpenShop shop) : IClassFixture<OpenShop>
{
    [Fact]
    public async Task The_right_password_leads_to_the_page_that_was_asked_for()
    {
        await shop.AddInstructorAsync("right");
        var visitor = shop.Visit();

        var response = await visitor.Submit(
            "/account/sign-in?ReturnUrl=%2Fcourses%3Fx",
            "Sign in",
            ("name", "right"),
            ("password", OpenShop.Password)
        );

        Assert.Equal(HttpStatusCode.Redirect, response.StatusCode);
        Assert.EndsWith(
            "/courses?x",
            response.Headers.Location!.OriginalString,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("known", "wrong password")]
    [InlineData("nobody", "wrong password")]
    [InlineData("demo-instructor", "demo-instructor")]
    public async Task A_refusal_does_not_say_which_of_the_two_was_wrong(
        string name,
        string password
    )
    {
        if (name == "known")
            await shop.AddInstructorAsync(name);

        var response = await shop.Visit().TrySignIn(name, password);

        var page = await Visitor.Parse(response);
        Assert.Equal(
            "That name and password do not belong together. Check both and try again.",
            page.QuerySelector("[role=alert]")!.TextContent.Trim()
        );
    }

    [Fact]
    public async Task Five_tries_that_do_not_match_close_the_account_for_ten_minutes()
    {
        await shop.AddInstructorAsync("hasty");
        var visitor = shop.Visit();
        for (var i = 0; i < 5; i++)
            await visitor.TrySignIn("hasty", "not this one");

        var refused = await Visitor.Parse(await visitor.TrySignIn("hasty", OpenShop.Password));

        Assert.Contains(
            "Wait 10 minutes",
            refused.QuerySelector("[role=alert]")!.TextContent,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Signing_out_ends_it()
    {
        await shop.AddInstructorAsync("leaving");
        var visitor = await shop.Visit().SignIn("leaving");

        await visitor.Submit("/courses", "Sign out");
        var response = await visitor.Get("/courses");

        Assert.Equal(HttpStatusCode.Redirect, response.StatusCode);
    }

    [Theory]
    [InlineData("/account/sign-out")]
    [InlineData("/account/sign-in")]
    [InlineData("/account/demo")]
    public async Task A_post_without_our_token_is_refused(string path)
    {
        var response = await shop.Visit()
            .Post(
                path,
                new Dictionary<string, string>(StringComparer.Ordinal)
                {
                    ["_handler"] = "sign-in",
                    ["who"] = "instructor",
                    ["Entry.Name"] = "x",
                    ["Entry.Password"] = "y",
                }
            );

        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
    }

    [Fact]
    public async Task The_cookie_is_out_of_reach_of_scripts_and_of_other_sites()
    {
        await shop.AddInstructorAsync("cookie");

        var response = await shop.Visit().TrySignIn("cookie", OpenShop.Password);

        var cookie = response
            .Headers.GetValues("Set-Cookie")
            .Single(c => c.StartsWith("shopclass=", StringComparison.Ordinal));
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=lax", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("secure", cookie, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task A_changed_password_ends_what_was_signed_in_before()
    {
        await shop.AddInstructorAsync("changing");
        var visitor = await shop.Visit().SignIn("changing");
        Assert.Equal(HttpStatusCode.OK, (await visitor.Get("/courses")).StatusCode);

        await shop.ChangePasswordAsync("changing");
        shop.Clock.Advance(TimeSpan.FromMinutes(2));
        var response = await visitor.Get("/courses");

        Assert.Equal(HttpStatusCode.Redirect, response.StatusCode);
    }
}
