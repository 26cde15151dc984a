using System.Collections.Concurrent;
using System.Diagnostics;
using System.Net.Http.Json;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Bench.Start;
using ShopClass.Data.Progress;
using ShopClass.Data.Store;

namespace ShopClass.Bench.Ticks;

/// <summary>
/// A class at work on the published app: everybody says something about a step every few seconds, and every fourth is sent
/// twice, as a phone does that never heard the answer. Each answer comes after the durable write. At the end the store is
/// opened: nothing may be lost or doubled.
/// </summary>
internal static class TicksBench
{
    public static async Task<int> Run(string app, int students, int seconds, int pause, int rest)
    {
        var folder = Directory.CreateTempSubdirectory("shopclass-ticks-").FullName;
        try
        {
            var everybody = await TickClass.MakeAsync(folder, students);
            var (sent, times) = await WorkAsync(app, folder, everybody, seconds, pause, rest);
            var (kept, doubled) = await CountAsync(folder);
            times.Sort();
            Console.WriteLine($"students {students}, seconds {seconds}, pause {pause} ms");
            Console.WriteLine(
                $"actions said {sent}, requests {times.Count}, kept {kept}, lost {sent - kept}, doubled {doubled}"
            );
            Console.WriteLine(
                $"ms to a durable answer: median {At(0.5):0.0}, p95 {At(0.95):0.0}, p99 {At(0.99):0.0}, max {times[^1]:0.0}"
            );
            return kept == sent && doubled == 0 ? 0 : 2;

            double At(double share) => times[(int)(share * (times.Count - 1))];
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static async Task<(int Sent, List<double> Times)> WorkAsync(
        string app,
        string folder,
        IReadOnlyList<TickStudent> everybody,
        int seconds,
        int pause,
        int rest
    )
    {
        var (process, address) = await StartBench.StartOnAsync(app, folder);
        using (process)
        {
            var times = new ConcurrentBag<double>();
            await Task.Delay(TimeSpan.FromSeconds(rest));
            process.Refresh();
            var busy = process.TotalProcessorTime;
            var opening = Stopwatch.StartNew();
            await Task.WhenAll(everybody.Select(student => OpenAsync(address, student)));
            Console.WriteLine(
                $"ms until all {everybody.Count}, at once, had their first step page, {rest} s after a start: {opening.ElapsedMilliseconds}"
            );
            process.Refresh();
            Console.WriteLine(
                $"ms of the processor's time that took: {(process.TotalProcessorTime - busy).TotalMilliseconds:0}"
            );
            var until = Stopwatch.GetTimestamp() + seconds * Stopwatch.Frequency;
            var sent = await Task.WhenAll(
                everybody.Select(
                    (student, i) => StudentAsync(address, student, i, until, pause, times)
                )
            );
            process.Kill(entireProcessTree: true);
            await process.WaitForExitAsync();
            return (sent.Sum(), [.. times]);
        }
    }

    // Nobody ticks a step without having opened it; the first opening unpacks the plan.
    private static async Task OpenAsync(Uri address, TickStudent student)
    {
        using var phone = new HttpClient { BaseAddress = address };
        phone.DefaultRequestHeaders.Add("Cookie", $"shopclass-device={student.Token}");
        using var page = await phone.GetAsync(new Uri("/my/steps", UriKind.Relative));
        page.EnsureSuccessStatusCode();
    }

    private static async Task<int> StudentAsync(
        Uri address,
        TickStudent student,
        int index,
        long until,
        int pause,
        ConcurrentBag<double> times
    )
    {
        using var phone = new HttpClient { BaseAddress = address };
        phone.DefaultRequestHeaders.Add("Cookie", $"shopclass-device={student.Token}");
        phone.DefaultRequestHeaders.Add("X-ShopClass", "steps");
        var dice = new Random(index);
        var sent = 0;
        await Task.Delay(dice.Next(pause));
        while (Stopwatch.GetTimestamp() < until)
        {
            // Through the steps one by one, then notes on the last: a long evening.
            var isTick = sent < student.Steps.Count;
            var said = new
            {
                id = Guid.NewGuid(),
                plan = student.Plan,
                step = student.Steps[Math.Min(sent, student.Steps.Count - 1)],
                kind = isTick ? "Tick" : "Note",
                text = isTick ? "" : "still at it",
            };
            for (var again = dice.Next(4) == 0 ? 2 : 1; again > 0; again--)
            {
                var watch = Stopwatch.StartNew();
                using var answer = await phone.PostAsJsonAsync("/my/steps/say", said);
                times.Add(watch.Elapsed.TotalMilliseconds);
                answer.EnsureSuccessStatusCode();
            }

            sent++;
            await Task.Delay(dice.Next(pause / 2, pause * 3 / 2));
        }

        return sent;
    }

    private static async Task<(int Kept, int Doubled)> CountAsync(string folder)
    {
        var services = new ServiceCollection().AddLogging();
        services.AddShopStore(TickClass.Store(folder));
        await using var shop = services.BuildServiceProvider();
        await using var context = await shop.GetRequiredService<IDbContextFactory<ShopContext>>()
            .CreateDbContextAsync();
        var ids = await context.Set<StepActionRow>().Select(a => a.Id).ToListAsync();
        return (ids.Distinct().Count(), ids.Count - ids.Distinct().Count());
    }
}
