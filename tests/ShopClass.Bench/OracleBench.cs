using System.Diagnostics;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Tests.Planning;

namespace ShopClass.Bench;

/// <summary>
/// The planner beside a general solver (CP-SAT) on the same random cases of one board. Both must come to the same value of
/// the first goal: the length used, or the sawing, which is the first goal of the usual ones that differs on one board. The
/// solver proves that goal alone; the planner proves all five in their order and grants the wishes.
/// </summary>
internal static class OracleBench
{
    private static readonly Length Unit = Length.FromMillimetres(10);

    public static int Run(Arguments arguments)
    {
        var (count, parts) = (arguments.Number("count", 10), arguments.Number("parts", 9));
        var seed = arguments.Number("seed", 1);
        var different = 0;
        foreach (var goal in (PlanGoal[])[PlanGoal.SawingEffort, PlanGoal.LengthUsed])
        {
            var random = new Random(0);
            // What runs often is compiled a second time; a server has that behind it.
            for (var i = 0; i < 30; i++)
                _ = Planner.Plan(Case(random, parts) with { Goals = [goal] });
            random = new(seed);
            var times = new List<Times>();
            for (var i = 0; i < count; i++)
            {
                var (time, isSame) = Compare(i, Case(random, parts) with { Goals = [goal] });
                times.Add(time);
                different += isSame ? 0 : 1;
            }

            Print(goal, parts, times);
        }

        Console.WriteLine($"different values: {different}");
        return different == 0 ? 0 : 2;
    }

    /// <summary>Milliseconds of the clock and of the processor.</summary>
    private readonly record struct Times(double Ours, double OurOwn, double Theirs, double TheirOwn)
    {
        public double Ratio => TheirOwn / OurOwn;
    }

    private static (Times Times, bool IsSame) Compare(int number, PlanningRequest request)
    {
        var (plan, ours, ourOwn) = Timed(() => Planner.Plan(request));
        var (least, theirs, theirOwn) = Timed(() => Least(request));
        var isSame = plan.IsComplete
            ? plan.IsBestPossible && plan.Goals[0].Value == least
            : least is null;
        var times = new Times(ours, ourOwn, theirs, theirOwn);
        Console.WriteLine(
            $"{number}: {(plan.IsComplete ? "fits" : "does not fit")}, planner {ourOwn:0.0} ms, solver {theirOwn:0.0} ms, ratio {times.Ratio:0}, {(isSame ? "same" : "DIFFERENT")}"
        );
        return (times, isSame);
    }

    private static (T Result, double Clock, double Own) Timed<T>(Func<T> work)
    {
        var watch = Stopwatch.StartNew();
        var before = ThreadTime.Milliseconds;
        var result = work();
        return (result, watch.Elapsed.TotalMilliseconds, ThreadTime.Milliseconds - before);
    }

    /// <summary>The least of the first goal, in its own unit; null where the parts do not fit.</summary>
    private static Int128? Least(PlanningRequest request)
    {
        var oracle = Oracle(request);
        if (request.Goals[0] is PlanGoal.LengthUsed)
            return oracle.LeastLength(Unit)?.Ticks;
        return oracle.LeastSawing(request.Rules.NarrowestOffcut, Unit) is { } sawn
            ? (Int128)sawn * Unit.Ticks * request.Boards[0].Thickness.Ticks
            : null;
    }

    private static void Print(PlanGoal goal, int parts, List<Times> times)
    {
        var ratios = times.Select(t => t.Ratio).Order().ToList();
        Console.WriteLine(
            $"first goal {goal}, cases {times.Count}, parts {parts}; ms of the processor on average: planner, all goals {times.Average(t => t.OurOwn):0.0}, solver, first goal {times.Average(t => t.TheirOwn):0.0}; on the clock {times.Average(t => t.Ours):0.0} and {times.Average(t => t.Theirs):0.0}; ratio of sums {times.Sum(t => t.TheirOwn) / times.Sum(t => t.OurOwn):0.0}, median {ratios[ratios.Count / 2]:0.0}, least {ratios[0]:0.0}"
        );
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
        );
    }

    private static SmallOracle Oracle(PlanningRequest request) =>
        new(
            [.. request.Project.Parts.Select(p => (p.Finished.Length, p.Finished.Width))],
            [.. request.Boards.Select(b => (b.Length, b.SmallestWidth))],
            request.Rules.CrosscutKerf,
            Unit
        );
}
