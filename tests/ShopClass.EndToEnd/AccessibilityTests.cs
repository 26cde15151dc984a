using System.Reflection;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.AspNetCore.Components;
using Microsoft.Playwright;
using ShopClass.EndToEnd.Walking;

namespace ShopClass.EndToEnd;

/// <summary>
/// Every page there is against axe-core's rules for WCAG 2.2 A and AA, its keyboard path walked, at a desk in light and on a
/// phone in the dark; and on every page, nothing asked of another host, nothing wrong on the console, nothing over the edge.
/// </summary>
public sealed class AccessibilityTests(WalkedApp app) : IClassFixture<WalkedApp>
{
    internal static readonly AxeRunOptions WcagAa = new()
    {
        RunOnly = new()
        {
            Type = "tag",
            Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
        },
    };

    public static TheoryData<Walker, bool> Walks =>
        new(
            from walker in Enum.GetValues<Walker>()
            from onAPhone in (bool[])[false, true]
            select (walker, onAPhone)
        );

    [Fact]
    public void Every_route_of_the_app_is_walked_by_somebody() =>
        Assert.Equal(
            typeof(Program)
                .Assembly.GetTypes()
                .SelectMany(t => t.GetCustomAttributes<RouteAttribute>(inherit: false))
                .Select(r => r.Template)
                .Order(StringComparer.Ordinal),
            WalkedPages.Of(app).Select(p => p.Route).Distinct().Order(StringComparer.Ordinal)
        );

    [Theory]
    [MemberData(nameof(Walks))]
    public async Task Every_page_passes_the_rules_and_is_walked_by_keyboard(
        Walker walker,
        bool onAPhoneInTheDark
    )
    {
        await using var person = onAPhoneInTheDark
            ? await Person.OnAPhone(app, dark: true)
            : await Person.AtADesk(app);
        await app.ComeInAsync(person, walker);
        var faults = new List<string>();
        foreach (var (_, _, path) in WalkedPages.Of(app).Where(p => p.Walker == walker))
        {
            await person.Open(path);
            await Assertions.Expect(person.Page.Locator("h1").First).ToBeVisibleAsync();
            // The room shows bars for good.
            if (!path.EndsWith("/room", StringComparison.Ordinal))
                await person.WaitUntilQuiet();
            faults.AddRange(await FaultsOf(person, path));
            faults.AddRange(await KeyboardPath.FaultsOfAsync(person.Page, path));
            faults.AddRange(await OverTheEdgeAsync(person.Page, path));
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults));
        person.SawNothingStrange();
    }

    /// <summary>What only shows once something was pressed.</summary>
    [Fact]
    public async Task What_opens_on_a_page_passes_the_rules_too()
    {
        await using var instructor = await Person.OnAPhone(app);
        var page = instructor.Page;
        await app.ComeInAsync(instructor, Walker.Instructor);
        var course = $"/courses/{app.Course}";
        var student = $"{course}/students/{app.Student}";
        ILocator Button(string name) => page.GetByRole(AriaRole.Button, new() { Name = name });
        var faults = new List<string>();
        async Task LookAsync(string path, Func<Task> open, string shows)
        {
            await instructor.Open(path);
            await open();
            await Assertions.Expect(page.Locator(shows).First).ToBeVisibleAsync();
            await instructor.WaitUntilQuiet();
            faults.AddRange(await FaultsOf(instructor, shows));
            faults.AddRange(await KeyboardPath.FaultsOfAsync(page, shows));
            faults.AddRange(await OverTheEdgeAsync(page, shows));
        }

        await LookAsync(
            student,
            async () =>
            {
                await Button("Change card").ClickAsync();
                await page.GetByLabel("Agrees to what is kept about them").SelectOptionAsync("yes");
            },
            "#student-consent-on"
        );
        await LookAsync(
            student,
            () => Button("Remove student").ClickAsync(),
            $"button:has-text('Remove {WalkedApp.StudentName}')"
        );
        await LookAsync(
            $"{student}/projects/{app.Project}/plan/remake",
            async () =>
            {
                await page.GetByLabel("Which part is spoiled")
                    .SelectOptionAsync(new SelectOptionValue { Index = 1 });
                await Button("What can be done").ClickAsync();
            },
            "#ways-out"
        );
        await LookAsync(
            course + "/people",
            () => Button("Invite a helper").ClickAsync(),
            ".invitation-code"
        );
        await LookAsync(
            course + "/joining",
            () => Button($"Code for a phone of {WalkedApp.StudentName}").ClickAsync(),
            ".note .door-code"
        );
        Assert.True(faults.Count == 0, string.Join('\n', faults));
        instructor.SawNothingStrange();
    }

    [Fact]
    public async Task A_broken_keyboard_path_is_found_out()
    {
        await using var person = await Person.AtADesk(app);
        await person.Page.SetContentAsync(
            """
            <style>#blind { outline: none } #over { position: fixed; inset: 0 } #over, #false { cursor: pointer }</style>
            <main><button id="good">good</button><button id="blind">blind</button>
            <button id="hidden" tabindex="-1">hidden</button><div id="false">press me</div></main>
            <div id="over"></div><a class="skip-link" href="#nowhere">past</a>
            """
        );

        var faults = string.Join('\n', await KeyboardPath.FaultsOfAsync(person.Page, "page"));

        Assert.Contains("page: the link past the top is not first", faults);
        Assert.Contains("page: the link past the top does not lead to the page", faults);
        Assert.Contains("""page: no sign of the focus: <button id="blind">""", faults);
        Assert.DoesNotContain("""no sign of the focus: <button id="good">""", faults);
        Assert.Contains("""page: under something else: <button id="good">""", faults);
        Assert.Contains("""page: not reached: <button id="hidden" """, faults);
        Assert.Contains(
            """page: looks clickable, and no key reaches it: <div id="false">""",
            faults
        );
    }

    private static async Task<IEnumerable<string>> OverTheEdgeAsync(IPage page, string name) =>
        (
            await page.EvaluateAsync<string[]>(
                """
                () => document.documentElement.scrollWidth <= document.documentElement.clientWidth
                  ? []
                  : ["wider than the screen", ...[...document.querySelectorAll("body *")]
                      .filter(e => e.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5)
                      .map(e => "over the edge: " + e.outerHTML.slice(0, 120)).slice(0, 5)]
                """
            )
        ).Select(f => $"{name}: {f}");

    /// <summary>What axe finds wrong with the page as it stands.</summary>
    internal static async Task<IReadOnlyList<string>> FaultsOf(Person person, string name)
    {
        var result = await person.Page.RunAxe(WcagAa);
        return
        [
            .. from fault in result.Violations
            from node in fault.Nodes
            select $"{name}: {fault.Id}: {fault.Help} at {node.Target} {node.Html}",
        ];
    }
}
