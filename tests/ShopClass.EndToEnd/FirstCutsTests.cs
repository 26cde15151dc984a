using Microsoft.Playwright;

namespace ShopClass.EndToEnd;

/// <summary>The first three cuts are timed at the bench, without a signal too, and the instructor sees it.</summary>
[Collection(OneApp.Name)]
public sealed class FirstCutsTests(RunningApp app)
{
    [Fact]
    public async Task A_student_times_the_first_cuts_and_the_room_sees_how_far_it_is()
    {
        await using var student = await Person.OnAPhone(app);
        var phone = student.Page;
        await student.OpenDemoAsStudent("Tobi");
        await phone.Locator(".next-thing a.button").ClickAsync();
        await Expect(phone.GetByRole(AriaRole.Heading, new() { Name = "Step by step" }))
            .ToBeVisibleAsync();
        await student.Open("/my/steps");
        var asked = phone.Locator(".first-cut");
        for (var step = 0; step < 30 && await asked.CountAsync() == 0; step++)
        {
            var title = await phone.TitleAsync();
            await phone.GetByRole(AriaRole.Button, new() { Name = "Done" }).ClickAsync();
            await Expect(phone).Not.ToHaveTitleAsync(title);
        }

        await Expect(asked).ToContainTextAsync("Time this cut, 1 of 3.");
        var field = phone.GetByLabel("It took … minutes");
        Assert.True((await field.BoundingBoxAsync())!.Height >= 48);
        await Look(student, "first-cut-phone");
        Assert.Empty(await AccessibilityTests.FaultsOf(student, "a first cut"));

        student.SawNothingStrange();

        await phone.Context.SetOfflineAsync(true);
        await field.FillAsync("9");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Done" }).ClickAsync();
        await Expect(phone.GetByText("Kept on this phone, not yet sent:")).ToBeVisibleAsync();
        await phone.Context.SetOfflineAsync(false);
        await Expect(phone.GetByText("Kept on this phone, not yet sent:")).ToBeHiddenAsync();

        await using var desk = await Person.AtADesk(app);
        await desk.OpenDemoAsInstructor();
        var course = (await DemoPages.All(desk)).Single(p => p.Name == "course").Path;
        await desk.Open($"{course}/room");
        var row = desk.Page.Locator("tr", new() { HasText = "Tobi" });
        await Expect(row).ToContainTextAsync("1 of 3 first cuts timed");
        await Look(desk, "first-cut-room");
        await desk.Page.SetViewportSizeAsync(390, 844);
        await Look(desk, "first-cut-room-phone");
        await desk.Open($"{course}/settings");
        await Expect(desk.Page.GetByLabel("The first three cuts are timed")).ToBeCheckedAsync();
        await desk.Page.SetViewportSizeAsync(1280, 900);
        await BeginTheNextCourseAsync(desk);
        desk.SawNothingStrange();
    }

    // The next course of the same project starts from what this one learned, by choice.
    private static async Task BeginTheNextCourseAsync(Person desk)
    {
        var page = desk.Page;
        await desk.Open("/courses");
        await page.Locator("#course-name").FillAsync("Eight evenings, again");
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin the course" }).ClickAsync();
        await page.WaitForURLAsync("**/courses/*");
        var course = new Uri(page.Url).AbsolutePath;
        await page.Locator("#project-name").FillAsync("wall shelf");
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin the parts list" }).ClickAsync();
        await page.WaitForURLAsync("**/projects/*");
        await desk.Open(course);
        var offer = page.Locator(".start-offers");
        await Expect(offer).ToContainTextAsync("From “Eight Evenings with a Handsaw”");
        await Expect(offer).ToContainTextAsync("1 timed step");
        Assert.Empty(await AccessibilityTests.FaultsOf(desk, "what the last course learned"));
        await Look(desk, "start-offer");
        await page.SetViewportSizeAsync(390, 844);
        await Look(desk, "start-offer-phone");
        await page.SetViewportSizeAsync(1280, 900);
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin with these" })
            .First.ClickAsync();
        await Expect(offer).ToHaveCountAsync(0);
        await desk.Open($"{course}/lessons");
        await Expect(page.GetByText("Begun with what the last course learned")).ToBeVisibleAsync();
        await Expect(page.Locator(".pace-kinds"))
            .ToContainTextAsync("the last course's rate, from 1 step");
        await Look(desk, "start-lessons");
    }

    private static async Task Look(Person person, string name)
    {
        if (Environment.GetEnvironmentVariable("SHOPCLASS_LOOK") is { } folder)
            await person.Page.ScreenshotAsync(
                new() { Path = Path.Combine(folder, name + ".png"), FullPage = true }
            );
    }

    private static ILocatorAssertions Expect(ILocator locator) => Assertions.Expect(locator);

    private static IPageAssertions Expect(IPage page) => Assertions.Expect(page);
}
