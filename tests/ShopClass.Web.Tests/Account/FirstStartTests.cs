using System.Net;
using ShopClass.Data.Store;
using ShopClass.Web.Tests.Access;

namespace ShopClass.Web.Tests.Account;

public sealed class FirstStartTests : IAsyncDisposable
{
    private readonly OpenShop shop = new();

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public async Task The_first_start_offers_the_account_once_and_signs_its_owner_in()
    {
        var visitor = shop.Visit();
        var front = await visitor.Read("/");
        Assert.NotNull(front.QuerySelector("main a[href='/account/first']"));

        var made = await Make(visitor, "ines", OpenShop.Password, OpenShop.Password);
        var courses = await visitor.Get("/courses");
        var again = await shop.Visit().Get("/account/first");
        var later = await shop.Visit().Read("/");

        Assert.EndsWith(
            "/courses",
            made.Headers.Location!.OriginalString,
            StringComparison.Ordinal
        );
        Assert.Equal(HttpStatusCode.OK, courses.StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, again.StatusCode);
        Assert.Null(later.QuerySelector("a[href='/account/first']"));
    }

    [Theory]
    [InlineData(
        "",
        OpenShop.Password,
        OpenShop.Password,
        "Type the name you want to sign in with."
    )]
    [InlineData("ines", "short", "short", "A password has 10 to 200 characters.")]
    [InlineData("ines", "aaaaaaaaaaaa", "aaaaaaaaaaaa", "Four different ones are the least.")]
    [InlineData("ines", OpenShop.Password, "something else", "The two passwords differ.")]
    public async Task What_is_not_right_is_said_and_no_account_is_made(
        string name,
        string password,
        string again,
        string sentence
    )
    {
        var response = await Make(shop.Visit(), name, password, again);

        var page = await Visitor.Parse(response);
        Assert.Contains(
            sentence,
            page.QuerySelector("main")!.TextContent,
            StringComparison.Ordinal
        );
        Assert.False(
            await shop.Get<InstructorAccounts>().AnyAsync(TestContext.Current.CancellationToken)
        );
    }

    [Fact]
    public async Task Of_two_who_come_first_at_once_one_gets_the_account()
    {
        Visitor[] visitors = [shop.Visit(), shop.Visit()];

        var answers = await Task.WhenAll(
            visitors.Select((v, i) => Make(v, $"first{i}", OpenShop.Password, OpenShop.Password))
        );

        Assert.Single(
            answers,
            a =>
                a.Headers.Location?.OriginalString.EndsWith("/courses", StringComparison.Ordinal)
                    is true
        );
    }

    private static Task<HttpResponseMessage> Make(
        Visitor visitor,
        string name,
        string password,
        string again
    ) =>
        visitor.Submit(
            "/account/first",
            "Create the account",
            ("name", name),
            ("password", password),
            ("again", again)
        );
}
