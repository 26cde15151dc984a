using Microsoft.AspNetCore.Hosting;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using ShopClass.Web.Tests.Privacy;

namespace ShopClass.EndToEnd.Privacy;

/// <summary>The app as it is put to work, on a real port, set to log everything from Debug up.</summary>
public sealed class LoggedApp : RunningApp
{
    private readonly WrittenLog log = new();

    public IReadOnlyList<string> Lines => log.Lines;

    /// <summary>Writes a line into the log, as the app does.</summary>
    public void Write(string text) =>
        Services
            .GetRequiredService<ILoggerFactory>()
            .CreateLogger("ShopClass")
            .LogInformation("{Text}", text);

    /// <summary>Takes a table away, so that what is asked of it fails.</summary>
    public async Task BreakAsync(string table)
    {
        await using var store = new SqliteConnection(
            $"Data Source={Path.Combine(Folder, "shopclass.db")};Pooling=False;Foreign Keys=False"
        );
        await store.OpenAsync();
        await using var drop = store.CreateCommand();
        drop.CommandText = $"ALTER TABLE \"{table}\" RENAME TO \"Gone\"";
        await drop.ExecuteNonQueryAsync();
    }

    protected override void Configure(IWebHostBuilder builder) =>
        builder
            .UseEnvironment("Production")
            .UseStaticWebAssets()
            .ConfigureLogging(logging =>
            {
                logging.ClearProviders();
                logging.AddProvider(log);
                foreach (var category in new[] { null, "Microsoft", "Microsoft.Hosting.Lifetime" })
                    logging.AddFilter(category, LogLevel.Debug);
            });
}
