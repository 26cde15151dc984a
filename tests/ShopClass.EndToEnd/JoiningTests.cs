using Microsoft.Playwright;

namespace ShopClass.EndToEnd;

/// <summary>An instructor at a desk and a student with a phone, live together.</summary>
[Collection(OneApp.Name)]
public sealed class JoiningTests(RunningApp app)
{
    [Fact]
    public async Task A_student_joins_is_let_in_and_is_out_at_once_when_ended()
    {
        await using var instructor = await Person.AtADesk(app);
        await instructor.OpenDemoAsInstructor();
        var course = (await DemoPages.All(instructor)).Single(p => p.Name == "course").Path;
        await instructor.Open(course + "/joining");
        var desk = instructor.Page;
        // The demo's last lesson is proposed as the course's last day.
        await Expect(desk.GetByLabel("The course's last day")).ToHaveValueAsync("2027-03-02");
        await desk.GetByRole(AriaRole.Button, new() { Name = "Open with a new code" }).ClickAsync();
        var code = await desk.Locator(".door-code").InnerTextAsync();

        await using var student = await Person.OnAPhone(app);
        var phone = student.Page;
        await student.Open("/join");
        await Look(student, "join");
        await phone.GetByLabel("Class code").FillAsync(code.ToLowerInvariant());
        await phone.GetByRole(AriaRole.Button, new() { Name = "Go on" }).ClickAsync();
        await Look(student, "join-name");
        await phone.GetByLabel("Your name").FillAsync("Late Lark");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Come in" }).ClickAsync();
        await phone.WaitForURLAsync("**/join/waiting");
        await Look(student, "join-waiting");

        await Expect(desk.GetByText("Late Lark").First).ToBeVisibleAsync();
        await Look(instructor, "joining");
        await desk.GetByRole(AriaRole.Button, new() { Name = "Let in Late Lark" }).ClickAsync();
        await phone.WaitForURLAsync("**/my/steps");
        await phone.GetByRole(AriaRole.Link, new() { Name = "To my board" }).ClickAsync();
        await Expect(phone.GetByRole(AriaRole.Heading, new() { Name = "My board" }))
            .ToBeVisibleAsync();
        // A live page, so that its end can be seen at once.
        await student.Open("/my");
        await Expect(phone.GetByRole(AriaRole.Heading, new() { Name = "Hello, Late Lark" }))
            .ToBeVisibleAsync();

        var line = desk.Locator("li").Filter(new() { HasText = "Late Lark" });
        await line.GetByRole(AriaRole.Button, new() { NameRegex = new("^End Late") }).ClickAsync();
        await line.GetByRole(AriaRole.Button, new() { Name = "End it" }).ClickAsync();
        await Expect(phone.GetByRole(AriaRole.Heading, new() { Name = "Hello, Late Lark" }))
            .ToHaveCountAsync(0, new() { Timeout = 5_000 });
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
