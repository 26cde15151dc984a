using System.Diagnostics;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Tests.Planning;

namespace ShopClass.Bench;

/// <summary>
/// The planner beside a general solver (CP-SAT) on the same random cases: one board, one goal, the least length. Both must
/// come to the same value; the times are set side by side.
/// </summary>
internal static class OracleBench
{
    private static readonly Length Unit = Length.FromMillimetres(10);

    public static int Run(Arguments arguments)
    {
        var (count, parts) = (arguments.Number("count", 10), arguments.Number("parts", 9));
        var random = new Random(arguments.Number("seed", 1));
        _ = Planner.Plan(Case(new Random(0), parts));
        double planner = 0,
            solver = 0;
        var ratios = new List<double>();
        var different = 0;
        for (var i = 0; i < count; i++)
        {
            var request = Case(random, parts);
            var watch = Stopwatch.StartNew();
            var plan = Planner.Plan(request);
            var ours = watch.Elapsed.TotalMilliseconds;
            watch.Restart();
            var least = Oracle(request).LeastLength(Unit);
            var theirs = watch.Elapsed.TotalMilliseconds;
            var same = plan.IsComplete
                ? plan.IsBestPossible && plan.Goals[0].Value == least?.Ticks
                : least is null;
            different += same ? 0 : 1;
            ratios.Add(theirs / ours);
            (planner, solver) = (planner + ours, solver + theirs);
            Console.WriteLine(
                $"{i}: {(plan.IsComplete ? $"{plan.Goals[0].Value / Unit.Ticks} units" : "does not fit")}, planner {ours:0.0} ms, solver {theirs:0.0} ms, ratio {theirs / ours:0}, {(same ? "same" : "DIFFERENT")}"
            );
        }

        ratios.Sort();
        Console.WriteLine(
            $"cases {count}, parts {parts}: different values {different}; ms on average: planner {planner / count:0.0}, solver {solver / count:0.0}; ratio of sums {solver / planner:0}, median {ratios[count / 2]:0}, least {ratios[0]:0.0}"
        );
        return different == 0 ? 0 : 2;
    }

    /// <summary>Different parts on a grid of 10 mm, kerf 10, one board that holds them loosely.</summary>
    private static PlanningRequest Case(Random random, int parts)
    {
        List<(int Along, int Across)> sizes =
        [
            .. Enumerable.Range(0, parts).Select(_ => (random.Next(6, 30), random.Next(4, 12))),
        ];
        var width = random.Next(12, 20);
        var length = sizes.Sum(s => (s.Along + 1) * (s.Across + 1)) * 14 / 10 / width;
        return Wood.Ask(
            Wood.Bare(Unit),
            [Wood.Board("1", Wood.Mm(20), Unit * width, Unit * Math.Max(length, 31))],
            [
                .. sizes.Select(
                    (s, i) =>
                        Wood.Part(
                            $"{(char)('A' + i)}",
                            1,
                            Wood.Mm(20),
                            Unit * s.Across,
                            Unit * s.Along
                        )
                ),
            ]
        ) with
        {
            Goals = [PlanGoal.LengthUsed],
        };
    }

    private static SmallOracle Oracle(PlanningRequest request) =>
        new(
            [.. request.Project.Parts.Select(p => (p.Finished.Length, p.Finished.Width))],
            [.. request.Boards.Select(b => (b.Length, b.SmallestWidth))],
            request.Rules.CrosscutKerf,
            Unit
        );
}
