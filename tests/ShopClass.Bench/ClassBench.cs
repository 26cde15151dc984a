using System.Diagnostics;
using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning.Classes;
using ShopClass.Core.Sawing;

namespace ShopClass.Bench;

/// <summary>Orders wood for random classes and prints how far the cost is from its bound, and how long it took.</summary>
internal static class ClassBench
{
    public static int Run(Arguments arguments)
    {
        var students = arguments.Number("students", 30);
        var count = arguments.Number("count", 40);
        var seed = arguments.Number("seed", 1);
        var limit = arguments.Number("steps", 0);
        var way = arguments.Words("way") == "boards" ? KitWay.WholeBoards : KitWay.Pooled;
        var unit = arguments.Words("unit") == "metric" ? UnitSystem.Metric : UnitSystem.Inch;
        var rules = CourseRules.DefaultsFor(unit);
        var cases = new ClassCases(seed, students, rules);
        _ = ClassPlanner.Plan(new ClassCases(0, 3, rules).Next());
        var results = new List<(double Ms, double Boards, double Cost)>();
        int incomplete = 0,
            refused = 0;
        for (var i = 0; i < count; i++)
        {
            var request = cases.Next() with { Way = way };
            if (limit > 0)
                request = request with { StepLimit = limit };
            var watch = Stopwatch.StartNew();
            var plan = ClassPlanner.Plan(request);
            var ms = watch.Elapsed.TotalMilliseconds;
            incomplete += plan.IsComplete ? 0 : 1;
            refused += IsRefused(request, plan) ? 1 : 0;
            var bought = plan.Purchases.Sum(p => p.Count);
            var mean = bought == 0 ? 1 : (double)plan.Purchases.Sum(p => p.Cost) / bought;
            results.Add((ms, plan.Gap / mean, plan.Cost == 0 ? 0 : 100.0 * plan.Gap / plan.Cost));
            if (arguments.Number("verbose", 0) > 0)
            {
                Console.WriteLine(
                    $"{i} kinds {request.Project.Parts.Count} blanks {plan.Boards.Sum(b => b.Blanks.Count())} sizes {request.Stock.Count} rack {request.Rack.Count} boards {plan.Boards.Count} cost {plan.Cost} bound {plan.Bound} gap {plan.Gap / mean:0.00} boards {results[^1].Cost:0.00} % ms {ms:0} steps {plan.StepsTaken}"
                );
            }
        }

        Print(results, $"students {students}, {way}, {unit}, seed {seed}, cases {count}");
        Console.WriteLine($"incomplete {incomplete}, refused by the rehearsal {refused}");
        return refused == 0 ? 0 : 2;
    }

    private static void Print(List<(double Ms, double Boards, double Cost)> results, string what)
    {
        var times = results.ConvertAll(r => r.Ms);
        times.Sort();
        var within = 100.0 * results.Count(r => r.Boards <= 1) / results.Count;
        Console.WriteLine(what);
        Console.WriteLine(
            $"gap at most one board of mean price: {within:0.0} %; proven cheapest: {100.0 * results.Count(r => r.Boards == 0) / results.Count:0.0} %"
        );
        Console.WriteLine(
            $"gap in boards: mean {results.Average(r => r.Boards):0.00}, max {results.Max(r => r.Boards):0.00}; in cost: mean {results.Average(r => r.Cost):0.00} %, max {results.Max(r => r.Cost):0.00} %"
        );
        Console.WriteLine(
            $"ms: median {times[times.Count / 2]:0}, p95 {times[times.Count * 95 / 100]:0}, max {times[^1]:0}"
        );
    }

    private static bool IsRefused(ClassRequest request, ClassPlan plan) =>
        !ClassRehearsal.Replay(request, plan).Passed;
}
