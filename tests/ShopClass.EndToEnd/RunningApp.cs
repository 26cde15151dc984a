using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Data.Sqlite;
using Microsoft.Playwright;

namespace ShopClass.EndToEnd;

/// <summary>The whole app on a real port with a store of its own, and a real browser beside it.</summary>
public class RunningApp : IAsyncLifetime
{
    /// <summary>How long a busy machine may take to show something, in milliseconds.</summary>
    public const int Patience = 20_000;

    private readonly string folder = Directory.CreateTempSubdirectory("shopclass-e2e-").FullName;
    private AppOnAPort app;
    private IPlaywright? playwright;

    public RunningApp() => app = new AppOnAPort(folder, Configure);

    public IBrowser Browser { get; private set; } = null!;

    public Uri Address { get; private set; } = null!;

    /// <summary>Where the store is.</summary>
    protected string Folder => folder;

    /// <summary>A service of the running app.</summary>
    protected IServiceProvider Services => app.Services;

    public virtual async ValueTask InitializeAsync()
    {
        Address = app.Start();
        Assertions.SetDefaultExpectTimeout(Patience);
        playwright = await Playwright.CreateAsync();
        Browser = await playwright.Chromium.LaunchAsync(
            new()
            {
                ExecutablePath = InstalledBrowser(),
                Args =
                [
                    "--no-sandbox",
                    "--disable-gpu",
                    "--disable-quic",
                    "--no-first-run",
                    "--disable-background-networking",
                    "--disable-component-update",
                    "--disable-sync",
                ],
            }
        );
    }

    /// <summary>How the app is started where it is not as usual.</summary>
    protected virtual void Configure(IWebHostBuilder builder) =>
        builder.UseEnvironment("Development");

    /// <summary>Stops the app and starts it again on the same store, at a new address or at the one it had.</summary>
    public void Restart(bool atTheSameAddress = false)
    {
        app.Dispose();
        SqliteConnection.ClearAllPools();
        app = new AppOnAPort(folder, Configure, atTheSameAddress ? Address.Port : 0);
        Address = app.Start();
    }

    public virtual async ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        await Person.Leaving(Browser.CloseAsync());
        playwright?.Dispose();
        await app.DisposeAsync();
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    private static string InstalledBrowser() =>
        new[]
        {
            "/usr/bin/chromium",
            "/usr/bin/chromium-browser",
            "/usr/bin/google-chrome",
        }.FirstOrDefault(File.Exists)
        ?? throw new InvalidOperationException("No Chromium found. ./check installs it.");

    private sealed class AppOnAPort : WebApplicationFactory<Program>
    {
        private readonly string folder;

        private readonly Action<IWebHostBuilder> configure;

        public AppOnAPort(string folder, Action<IWebHostBuilder> configure, int port = 0)
        {
            (this.folder, this.configure) = (folder, configure);
            UseKestrel(port);
        }

        public Uri Start()
        {
            StartServer();
            return ClientOptions.BaseAddress;
        }

        protected override void ConfigureWebHost(IWebHostBuilder builder) =>
            configure(builder.UseSetting("Store:Folder", folder));
    }
}

/// <summary>One running app for all tests of the assembly that only need to look at it.</summary>
[CollectionDefinition(Name)]
public sealed class OneApp : ICollectionFixture<RunningApp>
{
    public const string Name = "one running app";
}
