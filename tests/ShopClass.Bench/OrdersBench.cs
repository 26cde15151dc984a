using System.Diagnostics;
using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Core.Planning;
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

        var content = new OrderSheetContent(
            "Evening class",
            order!,
            1,
            DateTime.UnixEpoch,
            new(2026, 1, 1)
        );
        _ = MaterialsOrder.Make(content, Paper.A4);
        Timed(
            "order, receiving, preparation and cost sheets",
            () =>
                PrintSet.Make(
                    "set",
                    [
                        MaterialsOrder.Of(content, Paper.A4),
                        ReceivingSheet.Of(content, Paper.A4),
                        PreparationList.Of(content, [], [], Paper.A4),
                        CostSheet.Of(content, [], Paper.A4),
                    ]
                )
        );
        Kits(students);
        return 0;
    }

    private static void Kits(int students)
    {
        var request = DemoProjects.Find("wall shelf", UnitSystem.Inch);
        var plan = CheckedPlan.Make(request);
        var kit = new KitSheetContent(
            "Evening class",
            "Mira",
            false,
            plan,
            1,
            DateTime.UnixEpoch,
            new(2026, 1, 1),
            false
        );
        _ = KitSheet.Make(kit, Paper.A4);
        Timed(
            $"{students} kit sheets in one file",
            () =>
                PrintSet.Make(
                    "set",
                    [
                        .. Enumerable
                            .Range(1, students)
                            .Select(i =>
                                KitSheet.Of(kit with { StudentShown = $"Student {i}" }, Paper.A4)
                            ),
                    ]
                )
        );
    }

    private static T Timed<T>(string what, Func<T> make)
    {
        var watch = Stopwatch.StartNew();
        var made = make();
        Console.WriteLine($"{what}: {watch.ElapsedMilliseconds} ms");
        return made;
    }
}
