using System.Diagnostics;
using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;

namespace ShopClass.Bench;

/// <summary>Plans random student cases and prints how many were proven, and how long they took.</summary>
internal static class StudentsBench
{
    public static int Run(Arguments arguments)
    {
        var count = arguments.Number("count", 200);
        var (fewest, most) = arguments.Range("parts", 5, 12);
        var (_, boards) = arguments.Range("boards", 1, 1);
        var (_, defects) = arguments.Range("defects", 0, 0);
        var seed = arguments.Number("seed", 1);
        var limit = arguments.Number("steps", 200_000);
        var cases = new StudentCases(seed, fewest, most, boards, defects);
        var rules = CourseRules.DefaultsFor(UnitSystem.Inch);
        var times = new List<double>();
        var own = new List<double>();
        var firsts = new List<double>();
        int complete = 0,
            proven = 0,
            refused = 0;
        var byGoal = PlanGoals.Usual.ToDictionary(g => g, _ => 0);
        WarmUp(rules);
        for (var i = 0; i < count; i++)
        {
            var request = cases.Next(rules) with { StepLimit = limit };
            var watch = Stopwatch.StartNew();
            var before = ThreadTime.Milliseconds;
            var first = new FirstPlan();
            var plan = Planner.Plan(request, first);
            own.Add(ThreadTime.Milliseconds - before);
            times.Add(watch.Elapsed.TotalMilliseconds);
            if (first.Milliseconds is { } soon)
                firsts.Add(soon);
            if (
                !Rehearsal.Replay(request, plan, Sequencer.Order(request, plan)).Passed
                && plan.IsComplete
            )
                refused++;
            complete += plan.IsComplete ? 1 : 0;
            proven += plan.IsBestPossible ? 1 : 0;
            foreach (var goal in plan.Goals.TakeWhile(g => plan.IsComplete && g.IsProven))
                byGoal[goal.Goal]++;
            if (arguments.Number("verbose", 0) > 0)
                Console.WriteLine(
                    $"{i} {request.Project.Parts.Sum(p => p.Quantity)} {times[^1]:0.0} own {own[^1]:0.0} complete={plan.IsComplete} steps={plan.StepsTaken} {string.Join(' ', plan.Goals.Select(g => g.IsProven ? "=" : $"{(double)g.Bound / (double)g.Value:0.00}"))}"
                );
        }

        Console.WriteLine(
            $"cases {count}, parts {fewest}-{most}, boards 1-{boards}, defects 0-{defects}, seed {seed}"
        );
        Console.WriteLine(
            $"complete {Share(complete, count)}, best possible {Share(proven, complete)} of these"
        );
        Console.WriteLine(
            "proven up to: "
                + string.Join(", ", byGoal.Select(g => $"{g.Key} {Share(g.Value, complete)}"))
        );
        Console.WriteLine($"ms on the clock: {Spread(times)}");
        Console.WriteLine($"ms of the processor: {Spread(own)}");
        Console.WriteLine(
            $"ms of the processor to the first complete plan with its bound: {Spread(firsts)}"
        );
        Console.WriteLine($"refused by the rehearsal: {refused}");
        return refused == 0 ? 0 : 2;
    }

    private static string Share(int part, int whole) =>
        whole == 0 ? "-" : $"{100.0 * part / whole:0.0} %";

    /// <summary>The runtime compiles what runs often a second time; a server has that behind it.</summary>
    private static void WarmUp(CourseRules rules)
    {
        var cases = new StudentCases(0, 5, 14, 2, 1);
        for (var i = 0; i < 40; i++)
            _ = Planner.Plan(cases.Next(rules));
        var large = new StudentCases(0, 15, 20, 2, 0);
        for (var i = 0; i < 12; i++)
            _ = Planner.Plan(large.Next(rules));
    }

    /// <summary>Notes how long the first complete plan took.</summary>
    private sealed class FirstPlan : IProgress<PlanProgress>
    {
        private readonly double start = ThreadTime.Milliseconds;

        public double? Milliseconds { get; private set; }

        public void Report(PlanProgress value)
        {
            if (value.Best.IsComplete)
                Milliseconds ??= ThreadTime.Milliseconds - start;
        }
    }

    private static string Spread(List<double> times)
    {
        if (times.Count == 0)
            return "-";
        times.Sort();
        return $"median {times[times.Count / 2]:0.0}, p95 {times[times.Count * 95 / 100]:0.0}, max {times[^1]:0.0}";
    }
}
