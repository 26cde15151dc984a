using System.Net;
using System.Security.Claims;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.People;
using ShopClass.Web.Features.Account;
using ShopClass.Web.Tests.Access;
using Instructor = ShopClass.Data.Store.Account;

namespace ShopClass.Web.Tests.Account;

public sealed class InvitedTests(OpenShop shop) : IClassFixture<OpenShop>
{
    private const string Page = "/account/invited";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Somebody_new_makes_an_account_with_the_code_and_helps()
    {
        var (_, course, code) = await InviteAsync();
        var name = $"helper-{Guid.NewGuid():N}";
        var visitor = shop.Visit();

        var came = await ComeAsync(visitor, code, name);

        Assert.EndsWith(
            "/courses",
            came.Headers.Location!.OriginalString,
            StringComparison.Ordinal
        );
        var list = await visitor.Read("/courses");
        Assert.Contains(
            "You help in this course.",
            list.Body!.TextContent,
            StringComparison.Ordinal
        );
        var page = await visitor.Read($"/courses/{course}");
        Assert.DoesNotContain("Materials", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Contains("The room", page.Body.TextContent, StringComparison.Ordinal);
        await shop.Visit().SignIn(name);
    }

    [Theory]
    [InlineData(
        "CDFG-HJKM-NPQR-TVWX",
        "oak ash elm lime",
        "oak ash elm lime",
        "not an open invitation"
    )]
    [InlineData("hello", "oak ash elm lime", "oak ash elm lime", "not an open invitation")]
    [InlineData("", "oak ash elm lime", "oak ash elm lime", "not an open invitation")]
    [InlineData(null, "short", "short", "10 to 200 characters")]
    [InlineData(null, "oak ash elm lime", "oak ash elm", "passwords differ")]
    public async Task What_is_wrong_is_said_at_the_field_and_no_account_is_made(
        string? typed,
        string password,
        string again,
        string says
    )
    {
        var (_, _, code) = await InviteAsync();
        var name = $"wrong-{Guid.NewGuid():N}";

        var response = await shop.Visit()
            .Submit(
                Page,
                "Make my account and come in",
                ("code", typed ?? code),
                ("name", name),
                ("password", password),
                ("again", again)
            );

        var page = await Visitor.Parse(response);
        Assert.Contains(
            page.QuerySelectorAll(".problem"),
            p => p.TextContent.Contains(says, StringComparison.Ordinal)
        );
        Assert.Equal(name, page.QuerySelector("#name")!.GetAttribute("value"));
        await using var scope = shop.Services.CreateAsyncScope();
        var users = scope.ServiceProvider.GetRequiredService<UserManager<Instructor>>();
        Assert.Null(await users.FindByNameAsync(name));
    }

    [Fact]
    public async Task Somebody_with_an_account_only_types_the_code()
    {
        var (_, course, code) = await InviteAsync();
        var name = $"there-{Guid.NewGuid():N}";
        await shop.AddInstructorAsync(name);
        var visitor = await shop.Visit().SignIn(name);

        await visitor.Submit(Page, "Come in", ("code", code));

        Assert.Equal(HttpStatusCode.OK, (await visitor.Get($"/courses/{course}/room")).StatusCode);
    }

    [Fact]
    public async Task Whoever_is_removed_is_out_with_the_next_request_and_with_every_open_page()
    {
        var (owner, course, code) = await InviteAsync();
        var name = $"out-{Guid.NewGuid():N}";
        var helper = await shop.AddInstructorAsync(name);
        var visitor = await shop.Visit().SignIn(name);
        await visitor.Submit(Page, "Come in", ("code", code));
        await using var circuit = shop.Services.CreateAsyncScope();
        var standing = await OpenPageAsync(circuit, helper);
        Assert.NotNull((await standing.GetAuthenticationStateAsync()).User.ToViewer());
        var people = shop.Get<PeopleStore>();
        var person = (await people.FindAsync(owner, course, Cancel))!.People.Single(p =>
            p.Name == name
        );

        await people.RemoveAsync(owner, person.Id, Cancel);

        Assert.Null((await standing.GetAuthenticationStateAsync()).User.ToViewer());
        var next = await visitor.Get($"/courses/{course}/room");
        Assert.Equal(HttpStatusCode.Redirect, next.StatusCode);
        Assert.Contains(
            "/account/sign-in",
            next.Headers.Location!.OriginalString,
            StringComparison.Ordinal
        );
        var again = await shop.Visit().SignIn(name);
        Assert.Equal(HttpStatusCode.NotFound, (await again.Get($"/courses/{course}")).StatusCode);
    }

    [Fact]
    public async Task Whoever_is_removed_while_a_page_is_on_its_way_is_out_as_it_begins()
    {
        var (owner, course, code) = await InviteAsync();
        var name = $"late-{Guid.NewGuid():N}";
        var helper = await shop.AddInstructorAsync(name);
        await (await shop.Visit().SignIn(name)).Submit(Page, "Come in", ("code", code));
        var before = await PrincipalOf(helper);
        var people = shop.Get<PeopleStore>();
        var person = (await people.FindAsync(owner, course, Cancel))!.People.Single(p =>
            p.Name == name
        );
        await people.RemoveAsync(owner, person.Id, Cancel);

        await using var circuit = shop.Services.CreateAsyncScope();
        var standing = OpenPage(circuit, before);

        async Task Ended()
        {
            while ((await standing.GetAuthenticationStateAsync()).User.ToViewer() is not null)
                await Task.Delay(10, Cancel);
        }
        await Ended().WaitAsync(TimeSpan.FromSeconds(20), Cancel);
    }

    private async Task<ClaimsPrincipal> PrincipalOf(InstructorViewer instructor)
    {
        await using var scope = shop.Services.CreateAsyncScope();
        var users = scope.ServiceProvider.GetRequiredService<UserManager<Instructor>>();
        var account = (await users.FindByIdAsync(instructor.UserId))!;
        return await scope
            .ServiceProvider.GetRequiredService<IUserClaimsPrincipalFactory<Instructor>>()
            .CreateAsync(account);
    }

    private async Task<CircuitStanding> OpenPageAsync(
        AsyncServiceScope circuit,
        InstructorViewer instructor
    ) => OpenPage(circuit, await PrincipalOf(instructor));

    private static CircuitStanding OpenPage(AsyncServiceScope circuit, ClaimsPrincipal visitor)
    {
        var standing = (CircuitStanding)
            circuit.ServiceProvider.GetRequiredService<AuthenticationStateProvider>();
        ((IHostEnvironmentAuthenticationStateProvider)standing).SetAuthenticationState(
            Task.FromResult(new AuthenticationState(visitor))
        );
        return standing;
    }

    [Fact]
    public async Task Guessing_ends_after_twenty_tries_also_with_the_right_code_after_that()
    {
        await using var alone = new OpenShop();
        var owner = await alone.AddInstructorAsync("owner");
        var (_, code) = await MakeAsync(alone, owner);
        for (var i = 0; i < Features.Joining.CodeTries.FromOneAddress; i++)
            await ComeAsync(alone.Visit(), "CDFG-HJKM-NPQR-TVWX", "guesser");

        var response = await ComeAsync(alone.Visit(), code, "guesser");

        var page = await Visitor.Parse(response);
        Assert.Contains("Too many wrong codes", page.Body!.TextContent, StringComparison.Ordinal);
    }

    private static Task<HttpResponseMessage> ComeAsync(Visitor visitor, string code, string name) =>
        visitor.Submit(
            Page,
            "Make my account and come in",
            ("code", code),
            ("name", name),
            ("password", OpenShop.Password),
            ("again", OpenShop.Password)
        );

    private async Task<(InstructorViewer Owner, Guid Course, string Code)> InviteAsync()
    {
        var owner = await shop.AddInstructorAsync($"owner-{Guid.NewGuid():N}");
        var (course, code) = await MakeAsync(shop, owner);
        return (owner, course, code);
    }

    private static async Task<(Guid Course, string Code)> MakeAsync(
        OpenShop at,
        InstructorViewer owner
    )
    {
        var course = await at.Get<CourseStore>()
            .CreateAsync(owner, "Evenings", Core.Measure.UnitSystem.Inch, Cancel);
        var made = await at.Get<PeopleStore>().InviteHelperAsync(owner, course.Value!.Id, Cancel);
        return (course.Value.Id, made.Value!.Code);
    }
}
