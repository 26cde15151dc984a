using Microsoft.Playwright;

namespace ShopClass.EndToEnd;

/// <summary>A live page on a device that sleeps while the server is started anew: nothing typed is lost.</summary>
public sealed class RestartTests(RunningApp app) : IClassFixture<RunningApp>
{
    [Fact]
    public async Task What_was_typed_on_a_live_page_outlives_a_sleeping_phone_and_a_restarted_server()
    {
        await using var person = await Person.OnAPhone(app);
        var phone = person.Page;
        await person.OpenDemoAsInstructor();
        var course = (await DemoPages.All(person)).Single(p => p.Name == "course").Path;
        await person.Open(course);
        await phone.GetByLabel("New student").FillAsync("Half a na");
        await phone.GetByLabel("New project").FillAsync("Step stool");
        // A field of a form that a button opens is not there when the page is opened anew.
        await phone.EvaluateAsync(
            "() => document.querySelector('main').insertAdjacentHTML('beforeend', '<p><label>Sent back because <input id=passing></label></p>')"
        );
        await phone.GetByLabel("Sent back because").FillAsync("the line is <b>gone</b>");
        await phone.EvaluateAsync("() => window.stillHere = true");

        // A sleeping phone lets its connection go; a server that ends takes its circuits along.
        await phone.Context.SetOfflineAsync(true);
        await phone.EvaluateAsync("Blazor._internal.forceCloseConnection()");
        await Expect(phone.Locator("#components-reconnect-modal")).ToBeVisibleAsync();
        var device = await phone.Context.NewCDPSessionAsync(phone);
        await device.SendAsync(
            "Page.setWebLifecycleState",
            new Dictionary<string, object> { ["state"] = "frozen" }
        );
        app.Restart(atTheSameAddress: true);
        await device.SendAsync(
            "Page.setWebLifecycleState",
            new Dictionary<string, object> { ["state"] = "active" }
        );
        await phone.Context.SetOfflineAsync(false);

        await phone.WaitForFunctionAsync(
            "() => !window.stillHere && document.documentElement.hasAttribute('data-live')",
            null,
            new() { Timeout = 60_000 }
        );
        await Expect(phone.GetByLabel("New student")).ToHaveValueAsync("Half a na");
        await Expect(phone.GetByLabel("New project")).ToHaveValueAsync("Step stool");
        var note = phone.Locator(".typed-note");
        await Expect(note).ToContainTextAsync("Sent back because: “the line is <b>gone</b>”");
        await note.GetByRole(AriaRole.Button, new() { Name = "Put away" }).ClickAsync();
        await Expect(note).ToHaveCountAsync(0);
        // What was put back counts as typed.
        await phone.GetByRole(AriaRole.Button, new() { Name = "Add", Exact = true }).ClickAsync();
        await Expect(phone.GetByRole(AriaRole.Link, new() { Name = "Half a na" }))
            .ToBeVisibleAsync();
        await phone.ReloadAsync();
        await person.Settle();
        await Expect(phone.GetByLabel("New project")).ToHaveValueAsync("");
    }

    private static ILocatorAssertions Expect(ILocator locator) => Assertions.Expect(locator);
}
