using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace ShopClass.EndToEnd;

/// <summary>The demo class's eight evenings: planned, looked at lesson by lesson, printed, and ticked by a student.</summary>
[Collection(OneApp.Name)]
public sealed class LessonTests(RunningApp app)
{
    [Fact]
    public async Task An_instructor_plans_eight_evenings_and_a_student_finds_their_own()
    {
        await using var desk = await Person.AtADesk(app);
        await desk.OpenDemoAsInstructor();
        var lessons = await MakeAsync(desk);
        await Assertions
            .Expect(desk.Page.GetByText(new Regex("^Plan of lessons [0-9]+")))
            .ToBeVisibleAsync(new() { Timeout = 120_000 });
        await LookAsync(desk, "lessons");

        await desk
            .Page.GetByRole(AriaRole.Link, new() { Name = "The saw and the line", Exact = true })
            .ClickAsync();
        await Assertions
            .Expect(desk.Page.GetByRole(AriaRole.Heading, new() { Name = "Who is where" }))
            .ToBeVisibleAsync();
        await LookAsync(desk, "lesson");
        if (Environment.GetEnvironmentVariable("SHOPCLASS_LOOK") is { } look)
            await desk
                .Page.Locator("section[aria-labelledby=rotation]")
                .ScreenshotAsync(new() { Path = Path.Combine(look, "rotation.png") });
        Assert.Empty(await AccessibilityTests.FaultsOf(desk, "lesson"));
        await SheetAsync(desk, "Instructor's sheet, A4", "instructor");
        await SheetAsync(desk, "Wall sheet, Letter", "wall");

        await using var phone = await Person.OnAPhone(app);
        await phone.OpenDemoAsStudent("Priya Ramanathan");
        await phone.Open(lessons);
        await phone.WaitUntilQuiet();
        await Assertions
            .Expect(phone.Page.Locator(".check-what").First)
            .ToBeVisibleAsync(new() { Timeout = RunningApp.Patience });
        await LookAsync(phone, "own");
        Assert.Empty(await AccessibilityTests.FaultsOf(phone, "own lessons"));
        await SheetAsync(phone, "Checklist, A4", "checklist");
        desk.SawNothingStrange();
        phone.SawNothingStrange();

        await using var dark = await Person.OnAPhone(app, dark: true);
        await dark.OpenDemoAsInstructor();
        await dark.Open(new Uri(desk.Page.Url).PathAndQuery);
        await dark.WaitUntilQuiet();
        Assert.Empty(await AccessibilityTests.FaultsOf(dark, "lesson on a phone in the dark"));

        if (Environment.GetEnvironmentVariable("SHOPCLASS_LOOK") is null)
            return;
        await using var small = await Person.OnAPhone(app, dark: true);
        await small.OpenDemoAsInstructor();
        await small.Open(lessons);
        await small.WaitUntilQuiet();
        await LookAsync(small, "lessons-phone");
        await small.Open(new Uri(desk.Page.Url).PathAndQuery);
        await small.WaitUntilQuiet();
        await LookAsync(small, "lesson-phone");
    }

    internal static async Task<string> MakeAsync(Person desk)
    {
        await desk.Open("/courses");
        await desk
            .Page.GetByRole(AriaRole.Link, new() { Name = "Eight Evenings with a Handsaw" })
            .First.ClickAsync();
        var everyone = desk.Page.GetByRole(
            AriaRole.Button,
            new() { NameRegex = new("Plan everyone|Every plan") }
        );
        await Assertions.Expect(everyone).ToBeVisibleAsync();
        if (await everyone.IsEnabledAsync())
            await everyone.ClickAsync();
        await Assertions
            .Expect(
                desk.Page.GetByRole(AriaRole.Button, new() { Name = "Every plan is up to date" })
            )
            .ToBeVisibleAsync(new() { Timeout = 120_000 });
        await desk
            .Page.GetByRole(AriaRole.Link, new() { Name = "Lessons", Exact = true })
            .ClickAsync();
        var make = desk.Page.GetByRole(
            AriaRole.Button,
            new() { NameRegex = new("^Make (the plan|it again)") }
        );
        await Assertions.Expect(make).ToBeEnabledAsync(new() { Timeout = RunningApp.Patience });
        await make.ClickAsync();
        return new Uri(desk.Page.Url).AbsolutePath;
    }

    private static async Task SheetAsync(Person person, string link, string name)
    {
        var address = await person
            .Page.GetByRole(AriaRole.Link, new() { Name = link })
            .GetAttributeAsync("href");
        var pdf = await person.Page.APIRequest.GetAsync(person.AddressOf(address!));
        Assert.Equal("application/pdf", pdf.Headers["content-type"]);
        if (Environment.GetEnvironmentVariable("SHOPCLASS_LOOK") is { } folder)
            await File.WriteAllBytesAsync(
                Path.Combine(folder, name + ".pdf"),
                await pdf.BodyAsync(),
                TestContext.Current.CancellationToken
            );
    }

    private static async Task LookAsync(Person person, string name)
    {
        if (Environment.GetEnvironmentVariable("SHOPCLASS_LOOK") is not { } folder)
            return;
        await person.Page.ScreenshotAsync(
            new() { Path = Path.Combine(folder, name + ".png"), FullPage = true }
        );
    }
}
