using System.Collections.Concurrent;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using ShopClass.Web.Tests.Progress;

namespace ShopClass.Web.Tests.Privacy;

/// <summary>Keeps every line the app logs at its own settings: text, values and exceptions.</summary>
internal sealed class WrittenLog : ILoggerProvider
{
    private readonly ConcurrentQueue<string> lines = new();

    public IReadOnlyList<string> Lines => [.. lines];

    public ILogger CreateLogger(string categoryName) => new Writer(categoryName, lines);

    public void Dispose() { }

    private sealed class Writer(string category, ConcurrentQueue<string> lines) : ILogger
    {
        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull => null;

        public bool IsEnabled(LogLevel logLevel) => true;

        public void Log<TState>(
            LogLevel logLevel,
            EventId eventId,
            TState state,
            Exception? exception,
            Func<TState, Exception?, string> formatter
        )
        {
            var values = state is IEnumerable<KeyValuePair<string, object?>> named
                ? string.Join(", ", named.Select(v => $"{v.Key}={v.Value}"))
                : "";
            lines.Enqueue(
                $"{logLevel} {category}: {formatter(state, exception)} [{values}] {exception}"
            );
        }
    }
}

/// <summary>The app as it is put to work, with the demo class in it, and what it logs.</summary>
internal sealed class LoggedShop : Benches
{
    public WrittenLog Log { get; } = new();

    public string StoreAddress => $"Data Source={Path.Combine(Folder, "shopclass.db")}";

    protected override string EnvironmentName => "Production";

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        base.ConfigureWebHost(builder);
        builder.ConfigureServices(services => services.AddSingleton<ILoggerProvider>(Log));
    }
}
