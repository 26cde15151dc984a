using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace ShopClass.EndToEnd;

/// <summary>The steps, the lessons and the joints of the demo course as they are used, and what is said where they cannot be.</summary>
public sealed class CraftTests(RunningApp app) : IClassFixture<RunningApp>
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task The_steps_are_walked_by_buttons_keys_and_slider_and_told_in_words(
        bool onAPhone
    )
    {
        await using var person = onAPhone ? await Person.OnAPhone(app) : await Person.AtADesk(app);
        await OpenPlan(person);
        var page = person.Page;
        var where = page.Locator(".stepper-where");
        var (next, before) = (Button(page, "Next step"), Button(page, "Previous step"));
        var count = int.Parse(
            Regex.Match(await where.InnerTextAsync(), @"of (\d+)").Groups[1].Value
        );

        await Expect(where).ToHaveTextAsync($"Step 1 of {count}");
        await Expect(before).ToHaveAttributeAsync("aria-disabled", "true");
        await next.ClickAsync();
        await Expect(where).ToHaveTextAsync($"Step 2 of {count}");
        await before.ClickAsync();
        await Expect(where).ToHaveTextAsync($"Step 1 of {count}");

        await next.FocusAsync();
        foreach (
            var (key, step) in new[]
            {
                ("End", count),
                ("ArrowLeft", count - 1),
                ("Home", 1),
                ("ArrowRight", 2),
            }
        )
        {
            await page.Keyboard.PressAsync(key);
            await Expect(where).ToHaveTextAsync($"Step {step} of {count}");
        }

        var slider = page.GetByRole(AriaRole.Slider, new() { Name = "Step" });
        await slider.FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await Expect(where).ToHaveTextAsync($"Step 3 of {count}");
        await slider.FillAsync("6");
        await Expect(where).ToHaveTextAsync($"Step 6 of {count}");
        await Expect(slider).ToHaveAttributeAsync("aria-valuetext", $"Step 6 of {count}");

        var title = await page.Locator(".step-title").InnerTextAsync();
        await Expect(page.Locator(".stepper [aria-live=polite]"))
            .ToHaveTextAsync($"Step 6 of {count}. {title}.");
        await Expect(page.Locator(".stepper-drawing svg:visible")).ToHaveCountAsync(1);
        await page.Locator(".stepper-drawing summary:visible").ClickAsync();
        await Expect(page.Locator(".drawing-words p:visible").First)
            .ToHaveTextAsync($"Step 6 of {count}: {title}.");
        await FitsTheScreen(page);
        await LookAsync(person, onAPhone ? "stepper-phone" : "stepper-desk");
        Assert.Empty(await AccessibilityTests.FaultsOf(person, "stepper"));

        // Whoever comes back goes on where they were.
        await page.ReloadAsync();
        await person.Settle();
        await Expect(where).ToHaveTextAsync($"Step 6 of {count}");
        person.SawNothingStrange();
    }

    [Fact]
    public async Task A_step_comes_on_without_moving_for_who_asked_for_less_motion()
    {
        await using var person = await Person.AtADesk(app);
        await OpenPlan(person);

        Assert.Equal("none", await Motion());
        await person.Page.EmulateMediaAsync(new() { ReducedMotion = ReducedMotion.NoPreference });
        Assert.NotEqual("none", await Motion());

        Task<string> Motion() =>
            person.Page.EvalOnSelectorAsync<string>(
                ".stepper-drawing",
                "e => getComputedStyle(e).animationName"
            );
    }

    [Fact]
    public async Task What_falls_off_the_lessons_says_what_would_bring_it_back_in_minutes()
    {
        await using var desk = await Person.AtADesk(app);
        await desk.OpenDemoAsInstructor();
        var lessons = await LessonTests.MakeAsync(desk);
        var page = desk.Page;
        await Expect(page.GetByText(new Regex("^Plan of lessons 1")))
            .ToBeVisibleAsync(new() { Timeout = 120_000 });

        // A lesson of no minutes is refused at its field, and the rest goes on.
        await Button(page, "Add a lesson").ClickAsync();
        await page.GetByLabel("Title").FillAsync("One more");
        await page.GetByLabel("Minutes", new() { Exact = true }).FillAsync("0");
        await Button(page, "Add the lesson").ClickAsync();
        await Expect(page.Locator("#lesson-minutes-problem"))
            .ToContainTextAsync("A lesson has from 10 to");
        await Expect(page.GetByLabel("Title")).ToHaveValueAsync("One more");
        await Button(page, "Leave it as it was").ClickAsync();

        // Three of eight evenings: much falls off.
        for (var left = await Removes(page).CountAsync(); left > 3; left--)
        {
            await Removes(page).Last.ClickAsync();
            await page.GetByRole(AriaRole.Button, new() { Name = "Remove it" }).ClickAsync();
            await Expect(Removes(page)).ToHaveCountAsync(left - 1);
        }

        await MakeAgain(page, 2);
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "What falls off the end" }))
            .ToBeVisibleAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "What would bring it back" }))
            .ToBeVisibleAsync(new() { Timeout = 60_000 });
        var remedies = await page.Locator("h3:has-text('What would bring it back') + ul li")
            .AllInnerTextsAsync();
        Assert.Contains(remedies, r => r.StartsWith("Each lesson ", StringComparison.Ordinal));
        Assert.Contains(remedies, r => r.StartsWith("One more lesson", StringComparison.Ordinal));
        Assert.Contains(remedies, r => r.StartsWith("Blanks crosscut", StringComparison.Ordinal));
        Assert.All(remedies, r => Assert.Matches(@"brings? (it )?back \d+ minutes?", r));
        await LookAsync(desk, "remedies");

        // No saw bench: said, and everything else still planned.
        await page.GetByLabel("Saw benches").First.FillAsync("0");
        await Button(page, "Save the stations").ClickAsync();
        await Expect(page.GetByText(new Regex("There is no saw bench in the shop, and \\d+")).First)
            .ToBeAttachedAsync();
        await MakeAgain(page, 3);

        // Somebody without a board: named, and the others' plan stands.
        await desk.Open(lessons[..lessons.LastIndexOf('/')]);
        await page.GetByLabel("New student").FillAsync("Ines Halloran");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add", Exact = true }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Link, new() { Name = "Ines Halloran" }))
            .ToBeVisibleAsync();
        await desk.Open(lessons);
        await Expect(page.GetByText(new Regex("^(Note )?Ines Halloran.*board")).First)
            .ToBeAttachedAsync();
        await MakeAgain(page, 4);
        desk.SawNothingStrange();
    }

    [Fact]
    public async Task Joints_and_open_sizes_that_cannot_be_are_told_at_their_fields_and_the_rest_is_kept()
    {
        await using var desk = await Person.AtADesk(app);
        await desk.OpenDemoAsInstructor();
        await desk.Open((await DemoPages.All(desk)).Single(p => p.Name == "project").Path);
        var page = desk.Page;
        var dado = page.GetByRole(AriaRole.Group, new() { Name = "dado in A for B" });

        await dado.GetByLabel(new Regex("^Face")).SelectOptionAsync("Both");
        await Type(dado.GetByLabel(new Regex("^Deep")), "3/8");
        await Expect(dado).ToContainTextAsync("Cut from both sides, 3/8 in deep each, they meet");
        await Type(dado.GetByLabel(new Regex("^Deep")), "1/4");
        await dado.GetByLabel(new Regex("^Face")).SelectOptionAsync("Reference");

        var edge = dado.GetByLabel(new Regex("^From the reference edge"));
        await Type(edge, "7");
        await Expect(dado)
            .ToContainTextAsync("7 in from the reference edge is off A, which is 6 in wide.");
        await Type(edge, "1");
        await Expect(dado).ToContainTextAsync("from 1 in off the reference edge to the other edge");
        await Expect(dado).ToContainTextAsync("Saved");
        await LookAsync(desk, "joints");
        await Type(edge, "");
        await Expect(dado).ToContainTextAsync("Saved");

        // A circle: B's width is taken from A, and now A's from B.
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new("^More.*A, side") })
            .ClickAsync();
        await Type(page.GetByLabel("Width over its finished size, A, side"), "1/16");
        await page.GetByLabel("Until: Width stays oversize, A, side")
            .SelectOptionAsync(new SelectOptionValue { Label = "everything is fitted dry" });
        await page.GetByLabel("Taken from: A, side, width").SelectOptionAsync("B");
        await Expect(page.GetByText("A waits for B, B for A: none of them would ever be cut."))
            .ToBeVisibleAsync();

        // The rest still works.
        await Type(page.GetByLabel("Length of C, rail"), "19 7/8");
        await Expect(page.GetByText("Saved", new() { Exact = true }).First).ToBeVisibleAsync();
        await page.ReloadAsync();
        await desk.Settle();
        await Expect(page.GetByLabel("Length of C, rail")).ToHaveValueAsync("19 7/8");
        await Expect(page.GetByText("A waits for B")).ToHaveCountAsync(0);
        desk.SawNothingStrange();
    }

    private static ILocator Removes(IPage page) =>
        page.Locator(".lesson-list")
            .GetByRole(AriaRole.Button, new() { NameRegex = new("^Remove ") });

    private static async Task MakeAgain(IPage page, int number)
    {
        var again = Button(page, "Make it again");
        await Expect(again).ToBeEnabledAsync();
        await again.ClickAsync();
        await Expect(page.GetByText(new Regex($"^Plan of lessons {number}")))
            .ToBeVisibleAsync(new() { Timeout = 120_000 });
    }

    private static async Task OpenPlan(Person person)
    {
        await person.OpenDemoAsInstructor();
        await person.Open((await DemoPages.All(person)).Single(p => p.Name == "plan").Path);
        await Expect(person.Page.Locator(".stepper-where")).ToBeVisibleAsync();
        await person.WaitUntilQuiet();
    }

    private static async Task Type(ILocator field, string text)
    {
        await field.FillAsync(text);
        await field.BlurAsync();
    }

    private static async Task FitsTheScreen(IPage page) =>
        Assert.True(
            await page.EvaluateAsync<bool>(
                "() => document.documentElement.scrollWidth <= window.innerWidth"
            ),
            "The page is wider than its screen."
        );

    private static ILocator Button(IPage page, string name) =>
        page.GetByRole(AriaRole.Button, new() { Name = name });

    private static ILocatorAssertions Expect(ILocator locator) => Assertions.Expect(locator);

    private static async Task LookAsync(Person person, string name)
    {
        if (Environment.GetEnvironmentVariable("SHOPCLASS_LOOK") is { } folder)
            await person.Page.ScreenshotAsync(
                new() { Path = Path.Combine(folder, name + ".png"), FullPage = true }
            );
    }
}
