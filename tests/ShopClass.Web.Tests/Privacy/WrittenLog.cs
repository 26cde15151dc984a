using System.Collections.Concurrent;
using Microsoft.Extensions.Logging;

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
