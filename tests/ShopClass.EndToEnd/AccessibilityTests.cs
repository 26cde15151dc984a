using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace ShopClass.EndToEnd;

/// <summary>
/// Every page against axe-core's rules for WCAG 2.2 A and AA, at a desk in light and on a phone in the dark; and on every
/// page, nothing asked of another host and nothing wrong on the console.
/// </summary>
[Collection(OneApp.Name)]
public sealed class AccessibilityTests(RunningApp app)
{
    internal static readonly AxeRunOptions WcagAa = new()
    {
        RunOnly = new()
        {
            Type = "tag",
            Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
        },
    };

    [Fact]
    public async Task Every_page_of_the_instructor_at_a_desk()
    {
        await using var instructor = await Person.AtADesk(app);
        await instructor.OpenDemoAsInstructor();
        await LookAtAll(instructor, await DemoPages.All(instructor));
    }

    [Fact]
    public async Task Every_page_of_the_instructor_on_a_phone_in_the_dark()
    {
        await using var instructor = await Person.OnAPhone(app, dark: true);
        await instructor.OpenDemoAsInstructor();
        await LookAtAll(instructor, await DemoPages.All(instructor));
    }

    [Fact]
    public async Task The_pages_before_signing_in_and_the_students_home()
    {
        await using var person = await Person.OnAPhone(app);
        await LookAtAll(
            person,
            [
                ("landing", "/"),
                ("sign-in", "/account/sign-in"),
                ("first", "/account/first"),
                ("not-found", "/not-found"),
            ]
        );
        await person.OpenDemoAsStudent("Tobi");
        await LookAtAll(person, [("my", "/my")]);
    }

    /// <summary>Pages that show bars for good, or work only when asked to: there is no quiet to wait for.</summary>
    [Fact]
    public async Task The_rooms_doors_kits_and_remakes_of_the_instructor()
    {
        await using var instructor = await Person.AtADesk(app);
        await instructor.OpenDemoAsInstructor();
        var pages = (await DemoPages.All(instructor)).ToDictionary(p => p.Name, p => p.Path);
        var course = pages["course"];
        var project = pages["project"].Split('/')[^1];
        string[] paths =
        [
            course + "/room",
            course + "/joining",
            course + "/people",
            $"{course}/materials/kits/{project}",
            $"{course}/materials/orders/{project}",
            pages["plan"] + "/remake",
        ];
        var faults = new List<string>();
        foreach (var path in paths)
        {
            await instructor.Open(path);
            await Assertions.Expect(instructor.Page.Locator("h1")).ToBeVisibleAsync();
            faults.AddRange(await FaultsOf(instructor, path[course.Length..]));
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults));
        instructor.SawNothingStrange();
    }

    private static async Task LookAtAll(
        Person person,
        IReadOnlyList<(string Name, string Path)> pages
    )
    {
        var faults = new List<string>();
        foreach (var (name, path) in pages)
        {
            await person.Open(path);
            await person.WaitUntilQuiet();
            faults.AddRange(await FaultsOf(person, name));
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults));
        person.SawNothingStrange();
    }

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
