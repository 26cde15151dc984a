using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace ShopClass.EndToEnd;

/// <summary>A student logs a board on the phone, one question at a time, through all that may go wrong meanwhile.</summary>
public sealed class BoardLoggingTests : IAsyncLifetime
{
    private readonly RunningApp app = new();

    public ValueTask InitializeAsync() => app.InitializeAsync();

    public ValueTask DisposeAsync() => app.DisposeAsync();

    [Fact]
    public async Task A_board_is_logged_through_a_lost_signal_a_reload_and_a_restart()
    {
        await using var student = await Person.OnAPhone(app);
        var phone = student.Page;
        await student.OpenDemoAsStudent("Wendell Frost");
        await student.Open("/my/board");
        await SeeAsync(student, "my-board");
        await phone
            .GetByRole(AriaRole.Link, new() { NameRegex = new("^Log (your|another) board") })
            .ClickAsync();
        await Asks(phone, "How long is it?");
        await SeeAsync(student, "log-length");
        await phone.GetByLabel("Length").FillAsync("so long");
        await Press(phone, "Go on");
        await Expect(phone.Locator("#size-problem")).Not.ToBeEmptyAsync();
        await Expect(phone.GetByLabel("Length")).ToHaveValueAsync("so long");

        // Away: what was typed waits, and goes by itself.
        await phone.GetByLabel("Length").FillAsync("59");
        await phone.GetByLabel("3/4", new() { Exact = true }).CheckAsync();
        await phone.Context.SetOfflineAsync(true);
        await Press(phone, "Go on");
        await Expect(phone.Locator("[data-away]")).ToBeVisibleAsync();
        await phone.Context.SetOfflineAsync(false);
        await Asks(phone, "How wide is it at the start?");

        // Reloaded with half an answer.
        await phone.GetByLabel("Width").FillAsync("7");
        await phone.GetByLabel("1/4", new() { Exact = true }).CheckAsync();
        await phone.ReloadAsync();
        await Expect(phone.GetByLabel("Width")).ToHaveValueAsync("7");
        await Expect(phone.GetByLabel("1/4", new() { Exact = true })).ToBeCheckedAsync();
        await Press(phone, "Go on");
        await Asks(phone, "How wide in the middle?");
        await SeeAsync(student, "log-middle");
        await phone
            .GetByRole(AriaRole.Button, new() { NameRegex = new("^The same as") })
            .ClickAsync();
        await Asks(phone, "How wide at the far end?");

        // The server goes away in the middle of it and comes back on the same store.
        app.Restart();
        await student.Open("/my/board");
        await phone
            .GetByRole(AriaRole.Link, new() { NameRegex = new("^Go on logging") })
            .ClickAsync();
        await Asks(phone, "How wide at the far end?");
        await phone
            .GetByRole(AriaRole.Button, new() { NameRegex = new("^The same as") })
            .ClickAsync();
        await Asks(phone, "How thick is it?");
        await phone.GetByLabel("3/4", new() { Exact = true }).CheckAsync();
        await Press(phone, "Go on");
        await Asks(phone, "Is it planed or rough?");
        await SeeAsync(student, "log-surface");
        await phone.GetByLabel("Surfaced four sides").CheckAsync();
        await Press(phone, "Go on");
        await Asks(phone, "Is it flat?");
        await phone.GetByLabel("Hollow across (cup)").FillAsync("3");
        await Press(phone, "Go on");
        await Expect(phone.Locator("#cup-problem")).ToContainTextAsync("The most taken here");
        await SeeAsync(student, "log-flat");
        await phone.GetByLabel("Hollow across (cup)").FillAsync("1/16");
        await phone.Keyboard.PressAsync("Enter");
        await Asks(phone, "Which wood is it?");
        await SeeAsync(student, "log-wood");
        await phone.GetByLabel("or another, by its name").FillAsync("yellow-poplar");
        await Press(phone, "Go on");

        await Asks(phone, "Where are its bad places?");
        await phone.Locator("[data-tap] svg").ClickAsync();
        await Asks(phone, "Bad place 1");
        await SeeAsync(student, "log-place");
        await Press(phone, "Mark it so");
        await Asks(phone, "Where are its bad places?");
        await Expect(phone.Locator(".step-list li")).ToHaveCountAsync(1);
        await SeeAsync(student, "log-bad");
        await Press(phone, "That is all of them");

        await Asks(phone, "A photo, if you like");
        var file = phone.GetByLabel("Take or choose a photo");
        await file.SetInputFilesAsync(
            new FilePayload
            {
                Name = "notes.txt",
                MimeType = "text/plain",
                Buffer = [.. "not a photo"u8],
            }
        );
        await Press(phone, "Keep this photo");
        await Expect(phone.Locator("#photo-problem")).ToContainTextAsync("no photo");
        await file.SetInputFilesAsync(
            new FilePayload
            {
                Name = "board.png",
                MimeType = "image/png",
                Buffer = await phone.ScreenshotAsync(),
            }
        );
        await Press(phone, "Keep this photo");
        await Expect(phone.Locator("img.board-photo")).ToBeVisibleAsync();
        await SeeAsync(student, "log-photo");
        await Press(phone, "Go on");

        await Asks(phone, "Is this your board?");
        await Expect(phone.Locator(".so-far")).ToContainTextAsync("cup 1/16");
        await SeeAsync(student, "log-log");
        await phone.GetByLabel("What you call it").FillAsync("<b>my plank</b>");
        await Press(phone, "Log this board");
        await Expect(phone.GetByRole(AriaRole.Heading, new() { Name = "<b>my plank</b>" }))
            .ToBeVisibleAsync();
        await Expect(phone.Locator(".verdict")).ToBeVisibleAsync();
        await SeeAsync(student, "my-board-logged");
    }

    [Fact]
    public async Task A_board_waits_for_the_instructors_yes_and_nothing_is_sawn_before()
    {
        await using var instructor = await Person.AtADesk(app);
        await instructor.OpenDemoAsInstructor();
        var pages = await DemoPages.All(instructor, "Tobi");
        await instructor.Open(pages.Single(p => p.Name == "settings").Path);
        await instructor.Page.GetByLabel("A board waits for the instructor’s yes").CheckAsync();
        await Expect(instructor.Page.GetByText("Saved.", new() { Exact = true }))
            .ToBeVisibleAsync();

        await using var student = await Person.OnAPhone(app);
        await student.OpenDemoAsStudent("Tobi");
        await student.Open("/my/board");
        await Expect(student.Page.GetByText("waits for your instructor’s yes").First)
            .ToBeVisibleAsync();

        await instructor.Open(pages.Single(p => p.Name == "student").Path);
        await instructor.WaitUntilQuiet();
        await SeeAsync(instructor, "yes-desk");
        await instructor
            .Page.GetByLabel("What is to be put right")
            .First.FillAsync("measure the middle again");
        await instructor
            .Page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Not yet") })
            .First.ClickAsync();
        await Expect(instructor.Page.GetByText("To be put right", new() { Exact = true }))
            .ToBeVisibleAsync();
        await student.Open("/my/board");
        await Expect(student.Page.GetByText("measure the middle again")).ToBeVisibleAsync();

        await instructor
            .Page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Yes to") })
            .First.ClickAsync();
        await Expect(instructor.Page.GetByText("The instructor has said yes").First)
            .ToBeVisibleAsync();
        await student.Open("/my/board");
        await Expect(student.Page.GetByText("Your instructor has said yes").First)
            .ToBeVisibleAsync();
    }

    [Fact]
    public async Task Every_screen_is_walked_with_the_keyboard_alone()
    {
        await using var student = await Person.OnAPhone(app);
        var phone = student.Page;
        await student.OpenDemoAsStudent("Wendell Frost");
        await student.Open("/my/board");
        await phone
            .GetByRole(AriaRole.Link, new() { NameRegex = new("^Log (your|another) board") })
            .PressAsync("Enter");
        await Asks(phone, "How long is it?");
        await TypeAsync(phone, "60");
        foreach (var ask in (string[])["at the start?", "in the middle?", "at the far end?"])
        {
            await Expect(phone.Locator("h1")).ToContainTextAsync(ask);
            await TypeAsync(phone, "7 1/4");
        }

        await Asks(phone, "How thick is it?");
        await TypeAsync(phone, "3/4");
        await Asks(phone, "Is it planed or rough?");
        await PickAsync(phone);
        await Asks(phone, "Is it flat?");
        await TabTo(phone, "It is flat");
        await phone.Keyboard.PressAsync("Enter");
        await Asks(phone, "Which wood is it?");
        await PickAsync(phone);
        await Asks(phone, "Where are its bad places?");
        await TabTo(phone, "Add one by numbers");
        await phone.Keyboard.PressAsync("Enter");
        await Asks(phone, "Bad place 1");
        await TabTo(phone, "Mark it so");
        await phone.Keyboard.PressAsync("Enter");
        await Asks(phone, "Where are its bad places?");
        await TabTo(phone, "That is all of them");
        await phone.Keyboard.PressAsync("Enter");
        await Asks(phone, "A photo, if you like");
        await TabTo(phone, "Go on without one");
        await phone.Keyboard.PressAsync("Enter");
        await Asks(phone, "Is this your board?");
        await TabTo(phone, "Log this board");
        await phone.Keyboard.PressAsync("Enter");
        await Expect(phone.Locator(".verdict")).ToBeVisibleAsync();
    }

    // The field is where the screen begins; Enter goes on.
    private static async Task TypeAsync(IPage phone, string size)
    {
        await Expect(phone.Locator("#size")).ToBeFocusedAsync();
        await phone.Keyboard.PressAsync("Control+A");
        await phone.Keyboard.TypeAsync(size);
        await phone.Keyboard.PressAsync("Enter");
    }

    private static async Task PickAsync(IPage phone)
    {
        for (var tabs = 0; tabs < 12; tabs++)
        {
            await phone.Keyboard.PressAsync("Tab");
            if (await phone.EvaluateAsync<bool>("document.activeElement.type === 'radio'"))
                break;
        }

        await phone.Keyboard.PressAsync("Space");
        await phone.Keyboard.PressAsync("Enter");
    }

    private static async Task TabTo(IPage phone, string button)
    {
        for (var tabs = 0; tabs < 40; tabs++)
        {
            await phone.Keyboard.PressAsync("Tab");
            if (
                await phone.EvaluateAsync<string>("document.activeElement.textContent.trim()")
                == button
            )
                return;
        }

        Assert.Fail($"The keyboard does not come to “{button}”.");
    }

    private static Task Asks(IPage phone, string question) =>
        Expect(phone.GetByRole(AriaRole.Heading, new() { Name = question, Level = 1 }))
            .ToBeVisibleAsync();

    private static Task Press(IPage phone, string button) =>
        phone.GetByRole(AriaRole.Button, new() { Name = button, Exact = true }).ClickAsync();

    // Every screen: no fault by axe-core, no target under 48 px among its answers, nothing over the edge.
    private static async Task SeeAsync(Person person, string name)
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
        if (name == "yes-desk")
            return;
        var small = await person.Page.EvaluateAsync<string[]>(
            "() => [...document.querySelectorAll('main .button, main .tape-mark, main .pick, main .field input, main .field select')].filter(e => e.offsetParent && e.getBoundingClientRect().height < 48).map(e => e.outerHTML)"
        );
        Assert.True(small.Length == 0, string.Join('\n', small));
        Assert.True(
            await person.Page.EvaluateAsync<bool>(
                "document.documentElement.scrollWidth <= document.documentElement.clientWidth"
            ),
            $"{name} is wider than the phone."
        );
    }

    private static ILocatorAssertions Expect(ILocator locator) => Assertions.Expect(locator);
}
