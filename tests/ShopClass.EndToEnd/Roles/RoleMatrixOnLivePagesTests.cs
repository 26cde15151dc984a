using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopClass.Data.Access;

namespace ShopClass.EndToEnd.Roles;

/// <summary>
/// Every deed of every role, in their own class and in another, through real live circuits: pages are reached by going on
/// within an open page, and deeds are done by pressing what is on it. What is expected comes from the same table the stores
/// ask.
/// </summary>
public sealed class RoleMatrixOnLivePagesTests(StaffedApp app) : IClassFixture<StaffedApp>
{
    private static readonly string[] Visitors =
    [
        "owner",
        "helper",
        "stand-in",
        "stand-in of another day",
        "helper elsewhere",
        "other instructor",
        "self",
        "outsider",
    ];

    public static TheoryData<Deed> Deeds => [.. Enum.GetValues<Deed>()];

    [Fact]
    public void Every_deed_has_a_live_page_it_is_done_on() =>
        Assert.Equal(Enum.GetValues<Deed>().Order(), LiveDeeds.All.Keys.Order());

    [Theory]
    [MemberData(nameof(Deeds))]
    public async Task Each_role_finds_on_live_pages_what_the_table_says(Deed deed)
    {
        var live = LiveDeeds.All[deed];
        foreach (var visitor in Visitors)
        foreach (var own in new[] { true, false })
        {
            var page = await AtAnOpenPageAsync(visitor);
            await GoAsync(page, PathOf(live, own));
            var isThere = await live.Control(page).CountAsync() > 0;

            Assert.True(
                isThere == May(visitor, own, deed, live),
                $"{deed} by {visitor} in {(own ? "Ada's class" : "the other class")}: {(isThere ? "there" : "not there")}"
            );
        }
    }

    [Theory]
    [MemberData(nameof(Deeds))]
    public async Task Whose_role_ends_while_the_page_is_open_is_refused_and_writes_nothing(
        Deed deed
    )
    {
        var live = LiveDeeds.All[deed];
        LiveDeeds.ProjectFile = app.Staff.Shop.ProjectFile;
        foreach (var visitor in Visitors.Where(v => RoleOf(v, own: true) is not null))
        {
            if (!May(visitor, own: true, deed, live))
                continue;
            var page = await AtAnOpenPageAsync(visitor);
            await GoAsync(page, PathOf(live, own: true));
            await Assertions.Expect(live.Control(page).First).ToBeVisibleAsync();
            var before = await app.EverythingAsync();
            await app.TakeAwayAsync(visitor);
            try
            {
                var without = await app.EverythingAsync();
                Assert.NotEqual(before, without);
                if (live.Do is { } act)
                    await act(page, Fresh());
                else
                {
                    await GoAsync(page, StartOf(visitor));
                    await GoAsync(page, PathOf(live, own: true));
                }

                await Assertions
                    .Expect(
                        page.GetByText(
                            new Regex(
                                "no longer there|no such page|not there|not here|Yours is not saved|What you typed is still here",
                                RegexOptions.IgnoreCase
                            )
                        ).First
                    )
                    .ToBeVisibleAsync();
                Assert.Equal(without, await app.EverythingAsync());
            }
            finally
            {
                await app.GiveBackAsync(visitor);
            }

            // The same pressed by who may is written: the test would see it.
            if (live.Do is { } again)
            {
                await AtAnOpenPageAsync(visitor);
                await GoAsync(page, PathOf(live, own: true));
                await again(page, Fresh());
                await WrittenAsync(before, $"{deed} by {visitor}");
            }
        }
    }

    private async Task<IPage> AtAnOpenPageAsync(string visitor)
    {
        var person = await app.OfAsync(visitor);
        var (page, start) = (person.Page, StartOf(visitor));
        if (await page.EvaluateAsync<bool>("() => window.stillHere === true"))
            await GoAsync(page, start);
        else
            await person.Open(start);
        return person.Page;
    }

    /// <summary>Goes on within the open page to another: over the circuit, with no request for the page.</summary>
    private static async Task GoAsync(IPage page, string path)
    {
        await page.EvaluateAsync(
            """
            path => {
              window.stillHere = true;
              for (const h of document.querySelectorAll("h1")) h.dataset.before = "yes";
              Blazor.navigateTo(path);
            }
            """,
            path
        );
        await page.Locator("h1:not([data-before])")
            .First.WaitForAsync(new() { Timeout = RunningApp.Patience });
        Assert.True(
            await page.EvaluateAsync<bool>("() => window.stillHere === true"),
            $"{path} was loaded anew."
        );
    }

    private async Task WrittenAsync(string before, string what)
    {
        for (var tries = 0; tries < 100; tries++)
        {
            if (await app.EverythingAsync() != before)
                return;
            await Task.Delay(100, TestContext.Current.CancellationToken);
        }

        Assert.Fail($"{what} wrote nothing.");
    }

    private static string Fresh() => $"Walnut{Guid.NewGuid():N}"[..18];

    private string StartOf(string visitor) =>
        visitor switch
        {
            "self" => Guide(app.Staff.Shop.Course.Id, app.Staff.Shop.Project.Id),
            "outsider" => Guide(app.Staff.Shop.OtherCourse.Id, app.OtherProject),
            _ => "/courses",
        };

    private static string Guide(Guid course, Guid project) =>
        $"/courses/{course}/projects/{project}/guide";

    private string PathOf(LiveDeed live, bool own)
    {
        var shop = app.Staff.Shop;
        var path = live
            .Path.Replace(
                "{student}",
                $"{(own ? shop.Student.Id : shop.Outsider.StudentId)}",
                StringComparison.Ordinal
            )
            .Replace(
                "{project}",
                $"{(own ? shop.Project.Id : app.OtherProject)}",
                StringComparison.Ordinal
            );
        return $"/courses/{(own ? shop.Course.Id : shop.OtherCourse.Id)}{path}";
    }

    private static CourseRole? RoleOf(string visitor, bool own) =>
        (visitor, own) switch
        {
            ("owner", true) => CourseRole.Owner,
            ("helper", true) => CourseRole.Helper,
            ("stand-in", true) => CourseRole.StandIn,
            ("other instructor", false) => CourseRole.Owner,
            ("helper elsewhere", false) => CourseRole.Helper,
            _ => null,
        };

    private static bool May(string visitor, bool own, Deed deed, LiveDeed live) =>
        (visitor, own) is ("self", true) or ("outsider", false)
            ? live.ByStudents
            : RoleOf(visitor, own) is { } role && RolePolicy.May(role, deed);
}
