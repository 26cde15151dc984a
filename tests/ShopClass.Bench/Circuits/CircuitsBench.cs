using System.Diagnostics;
using System.Globalization;
using ShopClass.Bench.Start;

namespace ShopClass.Bench.Circuits;

/// <summary>
/// What a live page costs the app: the managed heap in use after a full collection, read from outside while more and more
/// pages of one kind are open in a browser; the slope of the line through the readings is a circuit's share.
/// </summary>
internal static class CircuitsBench
{
    public static async Task<int> Run(string app, int count, string? only)
    {
        string[] kinds = only is null ? ["course", "room", "plan"] : [only];
        Console.WriteLine("page, circuits, managed heap in use KB, resident KB");
        foreach (var kind in kinds)
            await MeasureAsync(app, kind, count);
        return 0;
    }

    private static async Task MeasureAsync(string app, string kind, int count)
    {
        var folder = Directory.CreateTempSubdirectory("shopclass-circuits-").FullName;
        try
        {
            var (process, address) = await StartBench.StartOnAsync(app, folder, demo: true);
            using (process)
            {
                try
                {
                    await using var pages = await LivePages.OpenAsync(address);
                    await GrowAsync(process, pages, kind, count);
                }
                finally
                {
                    process.Kill(entireProcessTree: true);
                    await process.WaitForExitAsync();
                }
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static async Task GrowAsync(Process process, LivePages pages, string kind, int count)
    {
        var page = await pages.AddressAsync(kind);
        await pages.RestAsync();
        List<(double Circuits, double Heap)> readings = [];
        // The first two load what every later one shares, so the line begins after them.
        foreach (var upTo in (int[])[2, Math.Max(3, count / 4), count / 2, count])
        {
            while (pages.Count < upTo)
                await pages.AddAsync(page);
            var heap = await ManagedHeap.LiveBytesAsync(process.Id);
            process.Refresh();
            readings.Add((pages.Count, heap));
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{kind}, {pages.Count}, {heap / 1000:0}, {process.WorkingSet64 / 1000}"
                )
            );
        }

        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{kind}: {Slope(readings) / 1000:0} KB of managed heap for each live circuit"
            )
        );
    }

    // The line of least squares.
    private static double Slope(IReadOnlyList<(double X, double Y)> points)
    {
        var (x, y) = (points.Average(p => p.X), points.Average(p => p.Y));
        return points.Sum(p => (p.X - x) * (p.Y - y)) / points.Sum(p => (p.X - x) * (p.X - x));
    }
}
