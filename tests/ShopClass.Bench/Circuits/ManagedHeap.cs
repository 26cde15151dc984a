using System.Diagnostics.Tracing;
using System.Globalization;
using Microsoft.Diagnostics.NETCore.Client;
using Microsoft.Diagnostics.Tracing;

namespace ShopClass.Bench.Circuits;

/// <summary>Reads the managed heap of another program from outside, by the runtime's own diagnostics.</summary>
internal static class ManagedHeap
{
    // Opening a session with the heap-collect keyword makes the runtime collect everything once, as heap dumps do.
    private const long Collect = 0x800000;
    private const long GarbageCollector = 0x1;
    private const int Readings = 4;

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    /// <summary>
    /// Bytes in use after a full collection: the least of several readings a second apart that follow it.
    /// </summary>
    /// <exception cref="InvalidOperationException">The runtime did not collect or gave no reading within half a minute.</exception>
    public static async Task<double> LiveBytesAsync(int processId)
    {
        EventPipeProvider[] providers =
        [
            new(
                "Microsoft-Windows-DotNETRuntime",
                EventLevel.Informational,
                Collect | GarbageCollector
            ),
            new(
                "System.Runtime",
                EventLevel.Informational,
                arguments: new Dictionary<string, string>(StringComparer.Ordinal)
                {
                    ["EventCounterIntervalSec"] = "1",
                }
            ),
        ];
        using var session = new DiagnosticsClient(processId).StartEventPipeSession(
            providers,
            requestRundown: false
        );
        using var source = new EventPipeEventSource(session.EventStream);
        var collected = false;
        List<double> readings = [];
        var enough = new TaskCompletionSource();
        source.Clr.GCHeapStats += _ => collected = true;
        source.Dynamic.All += e =>
        {
            if (collected && readings.Count < Readings && HeapSizeIn(e) is { } bytes)
                readings.Add(bytes);
            if (readings.Count >= Readings)
                enough.TrySetResult();
        };
        var listening = Task.Run(source.Process);
        var inTime = await Task.WhenAny(enough.Task, listening, Task.Delay(Patience));
        if (inTime != enough.Task)
            throw new InvalidOperationException(
                $"Program {processId} gave {readings.Count} readings of its heap; collected: {collected}."
            );
        await session.StopAsync(CancellationToken.None);
        await listening;
        return readings.Min();
    }

    private static double? HeapSizeIn(TraceEvent e) =>
        e.EventName == "EventCounters"
        && e.PayloadValue(0) is IDictionary<string, object> outer
        && outer["Payload"] is IDictionary<string, object> counter
        && counter["Name"] is "gc-heap-size"
            ? Convert.ToDouble(counter["Mean"], CultureInfo.InvariantCulture) * 1_000_000
            : null;
}
