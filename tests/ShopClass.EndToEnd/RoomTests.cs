using Microsoft.Playwright;

namespace ShopClass.EndToEnd;

/// <summary>An instructor with a tablet in the room and a student with a phone, live together.</summary>
[Collection(OneApp.Name)]
public sealed class RoomTests(RunningApp app)
{
    [Fact]
    public async Task The_instructor_sees_a_call_within_a_second_and_checks_a_step_off()
    {
        await using var instructor = await Person.WithATablet(app);
        await instructor.OpenDemoAsInstructor();
        var course = (await DemoPages.All(instructor)).Single(p => p.Name == "course").Path;
        await instructor.Open(course + "/room");
        var room = instructor.Page;
        await Expect(room.GetByRole(AriaRole.Heading, new() { Name = "The room" }))
            .ToBeVisibleAsync();

        await using var student = await Person.OnAPhone(app);
        var phone = student.Page;
        await student.OpenDemoAsStudent("Lotte Brandsma");
        await phone.Locator(".next-thing a.button").ClickAsync();
        await Expect(phone.GetByRole(AriaRole.Heading, new() { Name = "Step by step" }))
            .ToBeVisibleAsync();
        await student.Open("/my/steps");
        await phone.GetByRole(AriaRole.Button, new() { Name = "I need help" }).ClickAsync();
        await Expect(phone.GetByText("Help is called.")).ToBeVisibleAsync();
        await Expect(room.GetByRole(AriaRole.Button, new() { Name = "Helped Lotte Brandsma" }))
            .ToBeVisibleAsync(new() { Timeout = 1_000 });
        await phone.GetByRole(AriaRole.Button, new() { Name = "Please check" }).ClickAsync();
        await Expect(phone.GetByText("Waiting to be checked.")).ToBeVisibleAsync();
        var good = room.GetByRole(AriaRole.Button, new() { NameRegex = new("^Good: Lotte") });
        await Expect(good).ToBeVisibleAsync(new() { Timeout = 1_000 });
        await Look(instructor, "room");

        await good.ClickAsync();
        // The student's plain page hears it, too.
        await Expect(phone.GetByText("· 1 done")).ToBeVisibleAsync(new() { Timeout = 2_000 });
        await Expect(good).ToHaveCountAsync(0);
        // Only Lotte's call: other students of the same demo course may be calling meanwhile.
        var helped = room.GetByRole(AriaRole.Button, new() { Name = "Helped Lotte Brandsma" });
        await helped.ClickAsync();
        await Expect(helped).ToHaveCountAsync(0);
        await Expect(phone.GetByText("Help is called.")).ToHaveCountAsync(0);
        await Expect(phone.GetByText("· 1 done")).ToBeVisibleAsync();
        instructor.SawNothingStrange();
        student.SawNothingStrange();
    }

    private static async Task Look(Person person, string name)
    {
        if (Environment.GetEnvironmentVariable("SHOPCLASS_LOOK") is { } folder)
            await person.Page.ScreenshotAsync(
                new() { Path = Path.Combine(folder, name + ".png"), FullPage = true }
            );
    }

    private static ILocatorAssertions Expect(ILocator locator) => Assertions.Expect(locator);
}
