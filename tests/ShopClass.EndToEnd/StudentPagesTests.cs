using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace ShopClass.EndToEnd;

/// <summary>Every page of a student on a phone: axe-core, targets for a thumb, nothing over the edge, the keyboard; and signals that go.</summary>
[Collection(OneApp.Name)]
public sealed class StudentPagesTests(RunningApp app)
{
    [Fact]
    public async Task Every_page_of_a_student_in_light_and_dark()
    {
        foreach (var dark in (bool[])[false, true])
        {
            await using var student = await Person.OnAPhone(app, dark);
            var phone = student.Page;
            await student.OpenDemoAsStudent("Priya Ramanathan");
            await PlanAsync(student);
            await student.Open("/my/steps");
            var plan = await phone.Locator("[data-steps]").GetAttributeAsync("data-plan");
            foreach (
                var (name, path) in (IEnumerable<(string, string)>)
                    [
                        ("steps", "/my/steps"),
                        ("steps-all", $"/my/steps/{plan}/all"),
                        ("paper", $"/my/steps/{plan}/paper"),
                        ("board", "/my/board"),
                        ("leave", "/my/leave"),
                        ("my", "/my"),
                    ]
            )
            {
                await student.Open(path);
                await student.WaitUntilQuiet();
                await LookAsync(student, $"student-{name}-{(dark ? "dark" : "light")}");
            }

            await student.Open("/my/steps");
            foreach (var summary in await phone.Locator("main summary").AllAsync())
                await summary.ClickAsync();
            await LookAsync(student, $"student-step-open-{(dark ? "dark" : "light")}");
            student.SawNothingStrange();
        }
    }

    [Fact]
    public async Task A_step_is_ticked_with_the_keyboard_alone()
    {
        await using var student = await Person.OnAPhone(app);
        var phone = student.Page;
        await student.OpenDemoAsStudent("Inés Calderón");
        await PlanAsync(student);
        await student.Open("/my/steps");
        var before = await phone.Locator("[data-step]").GetAttributeAsync("data-step");
        for (var tabs = 0; tabs < 40; tabs++)
        {
            await phone.Keyboard.PressAsync("Tab");
            if (
                await phone.EvaluateAsync<string>("document.activeElement.textContent.trim()")
                == "Done"
            )
                break;
        }

        await phone.Keyboard.PressAsync("Enter");
        await Assertions
            .Expect(phone.Locator("[data-step]"))
            .Not.ToHaveAttributeAsync("data-step", before!);
    }

    [Fact]
    public async Task A_live_page_shows_a_slim_bar_while_the_connection_is_away_and_keeps_what_is_typed()
    {
        await using var student = await Person.OnAPhone(app);
        var phone = student.Page;
        await student.OpenDemoAsStudent("Maren Tveit");
        await student.Open("/my");
        await student.WaitUntilQuiet();
        await phone.GetByRole(AriaRole.Link, new() { NameRegex = new("^Edit") }).First.ClickAsync();
        await student.Settle();
        var name = phone.GetByLabel("What you call it");
        await name.FillAsync("Half a na");

        await phone.Context.SetOfflineAsync(true);
        await phone.EvaluateAsync("Blazor._internal.forceCloseConnection()");
        var bar = phone.Locator("#components-reconnect-modal");
        await Assertions.Expect(bar).ToBeVisibleAsync();
        var height = (await bar.BoundingBoxAsync())!.Height;
        Assert.True(height < 844 / 4.0, $"The bar is {height} px high.");
        // What is on the page can still be read, scrolled and typed into.
        await name.FillAsync("Half a name");
        await Assertions.Expect(name).ToHaveValueAsync("Half a name");
        await phone.Context.SetOfflineAsync(false);
        await Assertions.Expect(bar).ToBeHiddenAsync();
        await Assertions.Expect(name).ToHaveValueAsync("Half a name");
    }

    private static async Task PlanAsync(Person student)
    {
        await student.Open("/my/board");
        var make = student.Page.GetByRole(
            AriaRole.Button,
            new() { NameRegex = new("^Make (my|a new) plan") }
        );
        if (await make.CountAsync() == 0)
            return;
        await make.ClickAsync();
        await student.Page.WaitForURLAsync("**/my/steps**");
    }

    private static async Task LookAsync(Person person, string name)
    {
        if (Environment.GetEnvironmentVariable("SHOPCLASS_LOOK") is { } folder)
            await person.Page.ScreenshotAsync(
                new() { Path = Path.Combine(folder, name + ".png"), FullPage = true }
            );
        var axe = await person.Page.RunAxe(AccessibilityTests.WcagAa);
        Assert.True(
            axe.Violations.Length == 0,
            string.Join(
                '\n',
                axe.Violations.Select(v => $"{name}: {v.Id}: {v.Help} {v.Nodes[0].Html}")
            )
        );
        var small = await person.Page.EvaluateAsync<string[]>(
            "() => [...document.querySelectorAll('main .button, main summary, main .step-list a, main .field input:not([type=hidden]), main .field select')].filter(e => e.offsetParent && e.closest('.bench') && !e.closest('.drawing-view') && e.getBoundingClientRect().height < 47.5).map(e => e.outerHTML.slice(0, 200))"
        );
        Assert.True(small.Length == 0, $"{name}: {string.Join('\n', small)}");
        Assert.True(
            await person.Page.EvaluateAsync<bool>(
                "document.documentElement.scrollWidth <= document.documentElement.clientWidth"
            ),
            $"{name} is wider than the phone."
        );
    }
}
