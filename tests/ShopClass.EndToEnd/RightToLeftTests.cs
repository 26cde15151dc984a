using Microsoft.Playwright;

namespace ShopClass.EndToEnd;

/// <summary>
/// A student whose name runs from right to left, seen in a real browser: the name does, and what stands about it stays.
/// </summary>
[Collection(OneApp.Name)]
public sealed class RightToLeftTests(RunningApp app)
{
    // Where the letters of a text stand: the name's first and last letter, and what is before and after it on its line.
    private const string Places = """
        name => {
          const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          const found = [];
          for (let node = walk.nextNode(); node; node = walk.nextNode()) {
            const at = node.data.indexOf(name);
            const box = i => {
              const range = document.createRange();
              range.setStart(node, i);
              range.setEnd(node, i + 1);
              return range.getBoundingClientRect();
            };
            if (at < 0 || !node.parentElement.checkVisibility() || node.parentElement.closest('option, script')) continue;
            const visible = i => i >= 0 && i < node.data.length && /[\p{L}\p{N}]/u.test(node.data[i]);
            let before = at - 1, after = at + name.length;
            while (before >= 0 && !visible(before)) before--;
            while (after < node.data.length && !visible(after)) after++;
            const first = box(at), last = box(at + name.length - 1);
            const sameLine = b => Math.abs(b.top - first.top) < 8;
            const [left, right] = [visible(before) ? box(before) : null, visible(after) ? box(after) : null];
            found.push([first.left - last.left,
              left && sameLine(left) ? last.left - left.left : 1,
              right && sameLine(right) && sameLine(last) ? right.left - first.left : 1,
              (left ? 1 : 0) + (right ? 1 : 0)]);
          }
          return found;
        }
        """;

    [Fact]
    public async Task A_name_that_runs_from_right_to_left_does_not_turn_its_neighbours()
    {
        const string name = "דוד כהן 3";
        await using var desk = await Person.AtADesk(app);
        await desk.OpenDemoAsInstructor();
        var course = (await DemoPages.All(desk)).Single(p => p.Name == "course").Path;
        await desk.Open(course);
        await desk.WaitUntilQuiet();
        var field = desk.Page.GetByLabel("New student");
        await field.FillAsync(name);
        await desk
            .Page.GetByRole(AriaRole.Button, new() { Name = "Add", Exact = true })
            .ClickAsync();
        var student = desk.Page.GetByRole(AriaRole.Link, new() { Name = name });
        await Assertions.Expect(student.First).ToBeVisibleAsync();
        var page = (await student.First.GetAttributeAsync("href"))!;
        await SeenAsync(desk, name, "rtl-course");

        await desk.Open(page);
        await desk.WaitUntilQuiet();
        await Assertions
            .Expect(desk.Page.GetByRole(AriaRole.Heading, new() { Level = 1 }))
            .ToContainTextAsync(name);
        await SeenAsync(desk, name, "rtl-student");

        // A sentence with the name in the middle: "no plan yet for …, Gus."
        await desk.Open(course + "/print");
        await desk.WaitUntilQuiet();
        await desk
            .Page.GetByRole(AriaRole.Button, new() { Name = "Make the print set" })
            .ClickAsync();
        await Assertions
            .Expect(desk.Page.GetByText("no plan yet for").First)
            .ToBeVisibleAsync(new() { Timeout = 60_000 });
        Assert.True(await SeenAsync(desk, name, "rtl-print") > 0);
        desk.SawNothingStrange();
        await RemoveAsync(desk, page);
    }

    // The other tests count the class.
    private static async Task RemoveAsync(Person desk, string page)
    {
        await desk.Open(page);
        await desk.WaitUntilQuiet();
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Remove student" }).ClickAsync();
        await desk
            .Page.GetByRole(AriaRole.Group, new() { Name = "Remove student" })
            .GetByRole(AriaRole.Button)
            .First.ClickAsync();
        await Assertions
            .Expect(desk.Page.GetByRole(AriaRole.Heading, new() { Level = 1 }))
            .Not.ToContainTextAsync("דוד");
    }

    /// <summary>Checks every place where the name stands; gives how many neighbours were looked at.</summary>
    private static async Task<int> SeenAsync(Person desk, string name, string look)
    {
        if (Environment.GetEnvironmentVariable("SHOPCLASS_LOOK") is { } folder)
            await desk.Page.ScreenshotAsync(
                new() { Path = Path.Combine(folder, $"{look}.png"), FullPage = true }
            );
        var places = await desk.Page.EvaluateAsync<double[][]>(Places, name);
        Assert.NotEmpty(places);
        foreach (var place in places)
            Assert.All(place[..3], distance => Assert.True(distance > 0, look));
        return (int)places.Sum(p => p[3]);
    }
}
