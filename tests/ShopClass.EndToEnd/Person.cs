using Microsoft.Playwright;

namespace ShopClass.EndToEnd;

/// <summary>
/// Somebody at a screen: a browser page that remembers what must never happen, namely requests to another host and
/// errors on the console.
/// </summary>
public sealed class Person : IAsyncDisposable
{
    private readonly IBrowserContext context;
    private readonly RunningApp app;
    private readonly List<string> strangeHosts = [];
    private readonly List<string> consoleErrors = [];

    private Person(RunningApp app, IBrowserContext context, IPage page)
    {
        this.app = app;
        this.context = context;
        Page = page;
        page.Request += (_, request) =>
        {
            var uri = new Uri(request.Url);
            if (
                uri.Scheme is "http" or "https" or "ws" or "wss"
                && uri.Authority != app.Address.Authority
            )
                strangeHosts.Add(request.Url);
        };
        page.Console += (_, message) =>
        {
            if (message.Type == "error" && !CameTooLate(message.Text))
                consoleErrors.Add($"{page.Url}: {message.Text}");
        };
        page.PageError += (_, error) => consoleErrors.Add($"{page.Url}: {error}");
    }

    private static readonly TimeSpan LeaveTakesAtMost = TimeSpan.FromSeconds(20);

    public IPage Page { get; }

    public static Task<Person> AtADesk(RunningApp app, bool dark = false) =>
        Come(app, 1280, 900, touch: false, dark);

    public static Task<Person> WithATablet(RunningApp app) =>
        Come(app, 820, 1180, touch: true, dark: false);

    public static Task<Person> OnAPhone(RunningApp app, bool dark = false) =>
        Come(app, 390, 844, touch: true, dark);

    public async Task Open(string path)
    {
        try
        {
            await Page.GotoAsync(AddressOf(path));
        }
        catch (PlaywrightException e)
            when (e.Message.Contains("interrupted by another navigation", StringComparison.Ordinal))
        {
            // A student's page loads itself anew when the instructor says something; that may come in between.
            await Page.WaitForLoadStateAsync();
            await Page.GotoAsync(AddressOf(path));
        }

        await Settle();
    }

    /// <summary>Goes in by the demo door, as the demo course's instructor.</summary>
    public async Task OpenDemoAsInstructor()
    {
        await Open("/");
        await Page.GetByRole(AriaRole.Button, new() { Name = "Open it as the instructor" })
            .ClickAsync();
        await Page.WaitForURLAsync("**/courses**");
        await Settle();
    }

    /// <summary>Goes in by the demo door, as one of the demo course's students.</summary>
    public async Task OpenDemoAsStudent(string name)
    {
        await Open("/");
        await Page.GetByLabel("or as a student")
            .SelectOptionAsync(new SelectOptionValue { Label = name });
        await Page.GetByRole(AriaRole.Button, new() { Name = "Open as this student" }).ClickAsync();
        await Page.WaitForURLAsync("**/my**");
        await Settle();
    }

    public string AddressOf(string path) => new Uri(app.Address, path).ToString();

    /// <summary>Waits until nothing on the page is still being worked out.</summary>
    public async Task WaitUntilQuiet()
    {
        await Assertions
            .Expect(
                Page.Locator(
                    "progress, .note:has-text('Making the plan'), .note:has-text('Trying the parts')"
                )
            )
            .ToHaveCountAsync(0);
        await Page.WaitForTimeoutAsync(150);
    }

    /// <summary>Waits until the page answers to clicks.</summary>
    public Task Settle() =>
        Page.WaitForSelectorAsync(
            "html[data-live], html[data-static]",
            new() { State = WaitForSelectorState.Attached }
        );

    /// <summary>Fails when the page asked another host for anything or wrote an error to the console.</summary>
    public void SawNothingStrange()
    {
        Assert.True(strangeHosts.Count == 0, string.Join('\n', strangeHosts));
        Assert.True(consoleErrors.Count == 0, string.Join('\n', consoleErrors));
    }

    public async ValueTask DisposeAsync() => await Leaving(context.CloseAsync());

    /// <summary>Waits for a window or a browser to close, but not for ever.</summary>
    public static async Task Leaving(Task closing)
    {
        try
        {
            await closing.WaitAsync(LeaveTakesAtMost);
        }
        catch (TimeoutException)
        {
            // A browser now and then gives no answer where a page is just going elsewhere by itself. It goes with the tests.
        }
    }

    // Blazor writes this when an event leaves the browser while the render that takes its element away is on the way in. What
    // was typed has been sent by an event of its own, and the tests look for it where it must have arrived.
    private static bool CameTooLate(string message) =>
        message.Contains(
            "There is no event handler associated with this event",
            StringComparison.Ordinal
        );

    private static async Task<Person> Come(
        RunningApp app,
        int width,
        int height,
        bool touch,
        bool dark
    )
    {
        var theirs = await app.Browser.NewContextAsync(
            new()
            {
                ViewportSize = new() { Width = width, Height = height },
                HasTouch = touch,
                IsMobile = touch,
                ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light,
                ReducedMotion = ReducedMotion.Reduce,
                AcceptDownloads = true,
            }
        );
        return new Person(app, theirs, await theirs.NewPageAsync());
    }
}
