using System.Diagnostics;
using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Core.Tests.Orders;
using ShopClass.Core.Tests.Planning;
using ShopClass.Print.Sheets;

namespace ShopClass.Bench;

/// <summary>Times an order for a class with its bound, and the sheets printed for it.</summary>
internal static class OrdersBench
{
    public static int Run(Arguments arguments)
    {
        var students = arguments.Number("students", 30);
        var ask = SampleOrders.Ask(students) with
        {
            Project = DemoProjects.Find("wall shelf", UnitSystem.Inch).Project,
        };
        _ = ClassOrders.Make(SampleOrders.Ask(2));
        ClassOrder? order = null;
        foreach (var way in Enum.GetValues<OrderWay>())
        {
            var made = Timed(
                $"order, {OrderWords.Of(way)}",
                () => ClassOrders.Make(ask with { Way = way })
            );
            Console.WriteLine(
                $"  {made.Total.Shown()}, {made.Lines.Count} lines; {OrderWords.Quality(made)}"
            );
            order ??= made;
        }

        var set = new ClassSet(students, order!);
        _ = PrintSet.Make("warm", new ClassSet(2, order!).All());
        Timed(
            "order, receiving, preparation and cost sheets",
            () => PrintSet.Make("set", set.OrderSheets())
        );
        Timed($"{students} kit sheets in one file", () => PrintSet.Make("set", set.KitSheets()));
        var all = set.All();
        var done = new List<long>();
        var watch = Stopwatch.StartNew();
        var pdf = Timed(
            "the whole print set, every sheet there is",
            () => PrintSet.Make("set", all, _ => done.Add(watch.ElapsedMilliseconds))
        );
        var waits = done.Prepend(0).Zip(done, (a, b) => b - a).ToList();
        Console.WriteLine(
            $"  {all.Count} sheets, {pdf.Length / 1024} KB; progress was told {done.Count} times, after {waits.Max()} ms at the latest"
        );
        var kinds = all.Zip(waits).GroupBy(s => KindOf(s.First.Title), StringComparer.Ordinal);
        foreach (var kind in kinds.OrderByDescending(k => k.Sum(s => s.Second)).Take(5))
            Console.WriteLine($"  {kind.Key}: {kind.Count()}, {kind.Sum(s => s.Second)} ms");
        Timed("the whole print set once more", () => PrintSet.Make("set", set.All()));
        return 0;
    }

    // "Wall shelf: kit sheet for Student 3" is a kit sheet.
    private static string KindOf(string title) =>
        string.Concat(title.Split(": ")[^1].TakeWhile(c => !char.IsDigit(c))).Trim();

    private static T Timed<T>(string what, Func<T> make)
    {
        var before = Process.GetCurrentProcess().TotalProcessorTime;
        var watch = Stopwatch.StartNew();
        var made = make();
        var clock = watch.ElapsedMilliseconds;
        var spent = Process.GetCurrentProcess().TotalProcessorTime - before;
        Console.WriteLine($"{what}: {clock} ms, {spent.TotalMilliseconds:0} of the processor");
        return made;
    }
}
