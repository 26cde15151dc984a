using System.Diagnostics;
using ShopClass.Core.Lessons;
using ShopClass.Core.Tests.Lessons;
using ShopClass.Scheduling;

namespace ShopClass.Bench;

/// <summary>Classes of made-up work: the rule's plan, then the solver's, each reviewed.</summary>
internal static class LessonsBench
{
    public static int Run()
    {
        Console.WriteLine(
            "students, lessons, minutes, saw benches, way, ms, processor ms, left, waiting, spread, bound on left"
        );
        foreach (var (students, lessons, minutes, shop) in Classes)
        {
            var request = MadeUp.Class(students, lessons, minutes, shop);
            var watch = Spent.Start();
            var plan = LessonPlanner.Plan(request);
            Tell(request, plan, "rule", watch);
            watch = Spent.Start();
            Tell(request, LessonImprover.Improve(request, plan), "solver", watch);
        }

        return 0;
    }

    private static IEnumerable<(int, int, int, StationCounts)> Classes =>
        [
            (12, 8, 120, new(4, 6, 6, 2)),
            (12, 8, 60, new(4, 6, 6, 2)),
            (12, 8, 60, new(2, 3, 3, 2)),
            (30, 8, 90, new(6, 8, 10, 2)),
            (30, 8, 120, new(4, 6, 8, 2)),
        ];

    private static void Tell(LessonRequest request, LessonPlan plan, string way, Spent spent)
    {
        var (ms, processor) = spent.UntilNow();
        if (LessonReview.Findings(request, plan) is { Count: > 0 } findings)
            throw new InvalidOperationException(findings[0]);
        var score = plan.Score;
        Console.WriteLine(
            $"{request.Students.Count}, {request.Lessons.Count}, {request.Lessons[0].Minutes}, {request.Shop.SawBenches}, "
                + $"{way}, {ms:0}, {processor:0}, {score.Left}, {score.Waiting}, {score.Spread}, {plan.LeastLeft}"
        );
    }

    /// <summary>By the wall clock, and by the processor: the second does not mind what else runs.</summary>
    private sealed record Spent(long Began, TimeSpan Processor)
    {
        public static Spent Start() => new(Stopwatch.GetTimestamp(), Now());

        public (double Ms, double Processor) UntilNow() =>
            (
                Stopwatch.GetElapsedTime(Began).TotalMilliseconds,
                (Now() - Processor).TotalMilliseconds
            );

        private static TimeSpan Now() => Process.GetCurrentProcess().TotalProcessorTime;
    }
}
