using System.Net;
using ShopClass.Web.Tests.Access;

namespace ShopClass.Web.Tests.Account;

public sealed class DemoDoorTests(OpenShop shop, WorkingShop working)
    : IClassFixture<OpenShop>,
        IClassFixture<WorkingShop>
{
    [Theory]
    [InlineData("/")]
    [InlineData("/account/sign-in")]
    public async Task The_door_names_every_student_of_the_demo(string path)
    {
        var (_, _, students) = await shop.DemoAsync();

        var page = await shop.Visit().Read(path);

        Assert.Equal(
            students.Select(s => s.Shown),
            page.QuerySelectorAll("#who option").Select(o => o.TextContent)
        );
    }

    [Theory]
    [InlineData("nobody")]
    [InlineData("")]
    [InlineData("8f1b3a9d-9348-4e55-84e1-5b2df43bc28d")]
    public async Task Nobody_else_comes_in_by_it(string who)
    {
        var response = await shop.Visit()
            .Submit("/account/sign-in", "Open as this student", ("who", who));

        Assert.Equal(HttpStatusCode.NotFound, response.StatusCode);
        Assert.False(response.Headers.Contains("Set-Cookie"));
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/account/sign-in")]
    [InlineData("/account/first")]
    public async Task In_Production_no_page_mentions_a_demo(string path)
    {
        var page = await working.Visit().Read(path);

        Assert.DoesNotContain("demo", page.Source.Text, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("instructor")]
    [InlineData("8f1b3a9d-9348-4e55-84e1-5b2df43bc28d")]
    public async Task In_Production_the_door_does_not_exist(string who)
    {
        var visitor = working.Visit();
        var page = await visitor.Read("/account/sign-in");
        var token = page.QuerySelector("input[name=__RequestVerificationToken]")!;

        var response = await visitor.Post(
            "/account/demo",
            new Dictionary<string, string>(StringComparer.Ordinal)
            {
                ["who"] = who,
                ["__RequestVerificationToken"] = token.GetAttribute("value")!,
            }
        );

        Assert.Equal(HttpStatusCode.NotFound, response.StatusCode);
    }
}
