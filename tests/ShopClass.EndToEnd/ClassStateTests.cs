using Microsoft.Playwright;

namespace ShopClass.EndToEnd;

/// <summary>From plans to the state of the class, and the sheets of a student who was away.</summary>
[Collection(OneApp.Name)]
public sealed class ClassStateTests(RunningApp app)
{
    [Fact]
    public async Task The_state_of_the_class_leads_to_what_a_student_who_was_away_catches_up_with()
    {
        await using var instructor = await Person.AtADesk(app);
        await instructor.OpenDemoAsInstructor();
        var pages = await DemoPages.All(instructor, "Wendell Frost");
        var course = pages.Single(p => p.Name == "course").Path;
        await instructor.Open(pages.Single(p => p.Name == "plan").Path);
        await instructor.WaitUntilQuiet();
        await instructor.Open(course + "/lessons");
        var desk = instructor.Page;
        await desk.GetByRole(
                AriaRole.Button,
                new() { NameRegex = new("^Make (the plan of lessons|it again)") }
            )
            .ClickAsync();
        await Expect(desk.GetByText("Lesson by lesson")).ToBeVisibleAsync();

        await instructor.Open(course + "/state");
        await Expect(desk.GetByRole(AriaRole.Heading, new() { Name = "State of the class" }))
            .ToBeVisibleAsync();
        await Look(instructor, "state");
        Assert.Empty(await AccessibilityTests.FaultsOf(instructor, "state"));
        // By keyboard: the link is reached and followed without a mouse.
        var link = desk.GetByRole(AriaRole.Link, new() { NameRegex = new("take home: Wendell") });
        await link.FocusAsync();
        await desk.Keyboard.PressAsync("Enter");
        await Expect(desk.GetByRole(AriaRole.Heading, new() { Name = "Catching up" }))
            .ToBeVisibleAsync();
        await desk.GetByRole(AriaRole.Link, new() { NameRegex = new("^Up to lesson 2") })
            .ClickAsync();
        await Expect(desk.GetByRole(AriaRole.Link, new() { Name = "Catch-up sheet, A4" }))
            .ToBeVisibleAsync();
        await desk.GetByRole(AriaRole.Button, new() { Name = "Try the offcuts" }).ClickAsync();
        await Expect(desk.Locator("section[aria-labelledby=ahead] button")).ToHaveCountAsync(0);
        await Expect(desk.GetByText("Trying the course's projects")).ToHaveCountAsync(0);
        await Look(instructor, "catch-up");
        Assert.Empty(await AccessibilityTests.FaultsOf(instructor, "catch-up"));
        foreach (var name in new[] { "Catch-up sheet, Letter", "Take-home sheet, A4" })
        {
            var address = await desk.GetByRole(AriaRole.Link, new() { Name = name })
                .GetAttributeAsync("href");
            var sheet = await desk.APIRequest.GetAsync(instructor.AddressOf(address!));
            Assert.Equal("application/pdf", sheet.Headers["content-type"]);
            await Keep(name, await sheet.BodyAsync());
        }

        await instructor.Open(course + "/state");
        var page = await desk.APIRequest.GetAsync(
            instructor.AddressOf(
                (
                    await desk.GetByRole(AriaRole.Link, new() { Name = "One page, A4" })
                        .GetAttributeAsync("href")
                )!
            )
        );
        await Keep("State, A4", await page.BodyAsync());
        await instructor.Open(course + "/room");
        await Expect(desk.GetByRole(AriaRole.Heading, new() { Name = "The room" }))
            .ToBeVisibleAsync();
        await Look(instructor, "room-desk");
        instructor.SawNothingStrange();
    }

    private static async Task Look(Person person, string name)
    {
        if (Environment.GetEnvironmentVariable("SHOPCLASS_LOOK") is not { } folder)
            return;
        await person.Page.ScreenshotAsync(
            new() { Path = Path.Combine(folder, name + ".png"), FullPage = true }
        );
        await person.Page.SetViewportSizeAsync(390, 844);
        await person.Page.ScreenshotAsync(
            new() { Path = Path.Combine(folder, name + "-phone.png"), FullPage = true }
        );
        await person.Page.SetViewportSizeAsync(1280, 900);
    }

    private static async Task Keep(string name, byte[] pdf)
    {
        Assert.Equal("%PDF"u8.ToArray(), pdf[..4]);
        if (Environment.GetEnvironmentVariable("SHOPCLASS_LOOK") is { } folder)
            await File.WriteAllBytesAsync(Path.Combine(folder, name + ".pdf"), pdf);
    }

    private static ILocatorAssertions Expect(ILocator locator) => Assertions.Expect(locator);
}
