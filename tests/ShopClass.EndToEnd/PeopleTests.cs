using Microsoft.Playwright;

namespace ShopClass.EndToEnd;

/// <summary>The owner at a desk invites a helper, who comes in on a phone and is removed with the room open.</summary>
[Collection(OneApp.Name)]
public sealed class PeopleTests(RunningApp app)
{
    [Fact]
    public async Task A_helper_comes_with_a_code_works_the_room_and_is_out_at_once_when_removed()
    {
        await using var owner = await Person.AtADesk(app);
        await owner.OpenDemoAsInstructor();
        var course = (await DemoPages.All(owner)).Single(p => p.Name == "course").Path;
        await owner.Open(course + "/people");
        var desk = owner.Page;
        // By keyboard: the button is reached and pressed without a mouse.
        await desk.GetByRole(AriaRole.Button, new() { Name = "Invite a helper" }).FocusAsync();
        await desk.Keyboard.PressAsync("Enter");
        var code = await desk.Locator(".invitation-code").InnerTextAsync();
        await Look(owner, "people-invited");
        Assert.Empty(await AccessibilityTests.FaultsOf(owner, "people"));

        await using var helper = await Person.OnAPhone(app);
        var phone = helper.Page;
        await helper.Open("/account/invited");
        Assert.Empty(await AccessibilityTests.FaultsOf(helper, "invited"));
        await Look(helper, "invited");
        await phone.GetByLabel("Invitation").FillAsync(code);
        await phone.GetByLabel("Name to sign in with").FillAsync("Invented Helper");
        await phone.GetByLabel("Password", new() { Exact = true }).FillAsync("oak ash elm lime");
        await phone.GetByLabel("The same password again").FillAsync("oak ash elm lime");
        await phone
            .GetByRole(AriaRole.Button, new() { Name = "Make my account and come in" })
            .ClickAsync();
        await Expect(phone.GetByText("You help in this course.")).ToBeVisibleAsync();
        await Look(helper, "helper-courses");
        await helper.Open(course);
        await Expect(phone.GetByRole(AriaRole.Link, new() { Name = "The room" }))
            .ToBeVisibleAsync();
        await Expect(phone.GetByRole(AriaRole.Link, new() { Name = "Materials" }))
            .ToHaveCountAsync(0);
        await Look(helper, "helper-course");
        await helper.Open(course + "/room");
        await Expect(phone.GetByRole(AriaRole.Heading, new() { Name = "The room" }))
            .ToBeVisibleAsync();
        Assert.Empty(await AccessibilityTests.FaultsOf(helper, "room"));

        await owner.Open(course + "/people");
        await desk.GetByRole(AriaRole.Button, new() { Name = "Remove Invented Helper" })
            .ClickAsync();
        await Look(owner, "people-remove");
        await desk.GetByRole(AriaRole.Button, new() { Name = "Remove", Exact = true }).ClickAsync();
        await Expect(desk.GetByText("Nobody but you.")).ToBeVisibleAsync();

        await phone.WaitForURLAsync("**/account/sign-in**");
        owner.SawNothingStrange();
        helper.SawNothingStrange();
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
