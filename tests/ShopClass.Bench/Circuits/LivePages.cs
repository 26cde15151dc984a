using Microsoft.Playwright;

namespace ShopClass.Bench.Circuits;

/// <summary>A browser at the demo course, whose open pages each hold a live circuit.</summary>
internal sealed class LivePages(IPlaywright playwright, IBrowser browser, IPage first, Uri app)
    : IAsyncDisposable
{
    private readonly List<IPage> pages = [];

    public int Count => pages.Count;

    public static async Task<LivePages> OpenAsync(Uri app)
    {
        var playwright = await Playwright.CreateAsync();
        var browser = await playwright.Chromium.LaunchAsync(
            new()
            {
                ExecutablePath = new[] { "/usr/bin/chromium", "/usr/bin/google-chrome" }.First(
                    File.Exists
                ),
                Args = ["--no-sandbox", "--disable-gpu", "--disable-background-networking"],
            }
        );
        var context = await browser.NewContextAsync();
        context.SetDefaultTimeout(60_000);
        var first = await context.NewPageAsync();
        await first.GotoAsync(app.ToString());
        await first
            .GetByRole(AriaRole.Button, new() { Name = "Open it as the instructor" })
            .ClickAsync();
        await first.WaitForURLAsync("**/courses**");
        return new(playwright, browser, first, app);
    }

    /// <summary>The address of a page by its kind: course, room or plan.</summary>
    public async Task<string> AddressAsync(string kind)
    {
        await first.GotoAsync(new Uri(app, "/courses").ToString());
        var course = await LinkAsync("a", "Eight Evenings with a Handsaw");
        if (kind != "plan")
            return kind == "room" ? course + "/room" : course;
        await first.GotoAsync(new Uri(app, course).ToString());
        await first.GotoAsync(new Uri(app, await LinkAsync("a", "Maren Tveit")).ToString());
        var board = await LinkAsync("a", "Log another board");
        return board[..board.IndexOf("/boards/", StringComparison.Ordinal)] + "/plan";
    }

    /// <summary>Leaves the first page for one without a circuit.</summary>
    public Task RestAsync() => first.GotoAsync("about:blank");

    /// <summary>Opens one more page and waits until it is live and has worked out what it shows.</summary>
    public async Task AddAsync(string address)
    {
        var page = await first.Context.NewPageAsync();
        await page.GotoAsync(new Uri(app, address).ToString());
        await page.WaitForSelectorAsync(
            "html[data-live]",
            new() { State = WaitForSelectorState.Attached }
        );
        await page.WaitForFunctionAsync("() => !document.querySelector('progress')");
        pages.Add(page);
    }

    public async ValueTask DisposeAsync()
    {
        await browser.DisposeAsync();
        playwright.Dispose();
    }

    private async Task<string> LinkAsync(string selector, string name) =>
        await first
            .Locator(selector)
            .Filter(new() { HasText = name })
            .First.GetAttributeAsync("href")
        ?? throw new InvalidOperationException($"No link {name} on {first.Url}.");
}
