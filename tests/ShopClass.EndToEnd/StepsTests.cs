using Microsoft.Playwright;

namespace ShopClass.EndToEnd;

/// <summary>A student at the bench with a phone whose signal comes and goes.</summary>
[Collection(OneApp.Name)]
public sealed class StepsTests(RunningApp app)
{
    [Fact]
    public async Task Ticks_made_without_a_signal_are_kept_and_arrive_once()
    {
        await using var student = await Person.OnAPhone(app);
        var phone = student.Page;
        await student.OpenDemoAsStudent("Wendell Frost");
        await phone.Locator(".next-thing a.button").ClickAsync();
        await Expect(phone.GetByRole(AriaRole.Heading, new() { Name = "Step by step" }))
            .ToBeVisibleAsync();
        await student.Open("/my/steps");
        await Expect(phone.GetByText("step 1 of")).ToBeVisibleAsync();
        Assert.True(
            (
                await phone.GetByRole(AriaRole.Button, new() { Name = "Done" }).BoundingBoxAsync()
            )!.Height >= 48
        );
        await Look(student, "step-1");
        await PagesAreKept(phone);

        await phone.Context.SetOfflineAsync(true);
        await phone.GetByLabel("It took … minutes").FillAsync("12");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Done" }).ClickAsync();
        await Expect(phone.GetByText("step 2 of")).ToBeVisibleAsync();
        await Expect(phone.GetByText("Kept on this phone, not yet sent:")).ToBeVisibleAsync();
        await phone.GetByRole(AriaRole.Button, new() { Name = "I need help" }).ClickAsync();
        await Expect(phone.GetByText("step 2: I need help")).ToBeVisibleAsync();
        await Look(student, "step-2-no-signal");
        await phone.GotoAsync(student.AddressOf("/my/steps"));
        await Expect(phone.GetByText("step 2: I need help")).ToBeVisibleAsync();

        await phone.Context.SetOfflineAsync(false);
        await Expect(phone.GetByText("Help is called.")).ToBeVisibleAsync();
        await Expect(phone.GetByText("Kept on this phone, not yet sent:")).ToBeHiddenAsync();
        await student.Open("/my/steps");
        await Expect(phone.GetByText("· 1 done")).ToBeVisibleAsync();
        await phone.GetByRole(AriaRole.Link, new() { Name = "All steps" }).ClickAsync();
        await Expect(phone.Locator(".step-list .is-done")).ToHaveCountAsync(1);
        await Look(student, "steps-all");
        await phone.Locator(".step-list a").First.ClickAsync();
        await Expect(phone.GetByText("It took 12 minutes.")).ToBeVisibleAsync();

        await NothingStaysAfterSigningOut(phone, student);

        await using var desk = await Person.AtADesk(app);
        await desk.OpenDemoAsInstructor();
        var course = (await DemoPages.All(desk)).Single(p => p.Name == "course").Path;
        await desk.Open($"{course}/lessons");
        await desk.WaitUntilQuiet();
        await desk.Page.GetByText("Each student against the course").ClickAsync();
        await Expect(
                desk.Page.Locator(".pace-kinds tr", new() { HasText = "Looking the board over" })
            )
            .ToContainTextAsync("from 1 step, still mostly the usual rate");
        Assert.Empty(await AccessibilityTests.FaultsOf(desk, "lessons with a pace"));
        await Look(desk, "pace-desk");
        await desk.Page.SetViewportSizeAsync(390, 844);
        await Look(desk, "pace-phone");
    }

    // A condition that is itself a promise counts as met at once, so the pages are counted from here.
    private static async Task PagesAreKept(IPage phone)
    {
        for (var look = 0; look < 600; look++)
        {
            var missing = await phone.EvaluateAsync<int>(
                "async () => Number(document.querySelector('[data-steps]').dataset.count) + 2 - (await (await caches.open('shopclass-steps')).keys()).length"
            );
            if (missing <= 0)
                return;
            await Task.Delay(100, TestContext.Current.CancellationToken);
        }

        Assert.Fail("The pages were not kept within a minute.");
    }

    private static async Task NothingStaysAfterSigningOut(IPage phone, Person student)
    {
        await student.Open("/my/leave");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Sign out" }).ClickAsync();
        await phone.WaitForURLAsync(u => !u.Contains("/my/leave", StringComparison.Ordinal));
        Assert.Equal(
            0,
            await phone.EvaluateAsync<int>(
                "async () => (await caches.keys()).length + (await indexedDB.databases()).length + localStorage.length"
            )
        );
        await phone.Context.SetOfflineAsync(true);
        await Assert.ThrowsAsync<PlaywrightException>(() =>
            phone.GotoAsync(student.AddressOf("/my/steps"))
        );
        await phone.Context.SetOfflineAsync(false);
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
