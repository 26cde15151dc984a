using System.Diagnostics;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Lessons;
using ShopClass.Core.Planning;
using ShopClass.Core.Tests.Lessons;
using ShopClass.Data.Access;
using ShopClass.Data.Store;
using ShopClass.Data.Tests;
using ShopClass.Scheduling;

namespace ShopClass.Bench;

/// <summary>Classes of made-up work and the demo course: the rule's plan, then the solver's, each reviewed.</summary>
internal static class LessonsBench
{
    public static async Task<int> Run()
    {
        Console.WriteLine(
            "students, lessons, minutes, saw benches, way, ms, processor ms, left, waiting, spread, bound on left"
        );
        List<LessonRequest> requests =
        [
            .. Classes.Select(c => MadeUp.Class(c.Students, c.Lessons, c.Minutes, c.Shop)),
            await DemoAsync(),
        ];
        foreach (var request in requests)
        {
            var watch = Spent.Start();
            var plan = LessonPlanner.Plan(request);
            Tell(request, plan, "rule", watch);
            watch = Spent.Start();
            Tell(request, LessonImprover.Improve(request, plan), "solver", watch);
        }

        return 0;
    }

    private static IEnumerable<(
        int Students,
        int Lessons,
        int Minutes,
        StationCounts Shop
    )> Classes =>
        [
            (12, 8, 120, new(4, 6, 6, 2)),
            (12, 8, 60, new(4, 6, 6, 2)),
            (12, 8, 60, new(2, 3, 3, 2)),
            (30, 8, 90, new(6, 8, 10, 2)),
            (30, 8, 120, new(4, 6, 8, 2)),
        ];

    /// <summary>The demo course: every student's own steps for the project with most boards.</summary>
    private static async Task<LessonRequest> DemoAsync()
    {
        await using var store = await ThrowAwayStore.MakeAsync(demo: true);
        var owner =
            await store.Services.GetRequiredService<InstructorAccounts>().DemoAsync()
            ?? throw new InvalidOperationException("The demo course was not loaded.");
        var viewer = new InstructorViewer(owner);
        var course = (await store.Courses.ListAsync(viewer))[0].Id;
        var project = (await store.Projects.ListAsync(viewer, course))[0].Id;
        foreach (var student in await store.Students.ListAsync(viewer, course))
        {
            if (
                await store.Plans.RequestAsync(viewer, student.Id, project) is
                { Boards.Count: > 0 } request
            )
                await store.Plans.SaveAsync(viewer, student.Id, project, CheckedPlan.Make(request));
        }

        return (await store.LessonPlans.BasisAsync(viewer, course, project))!.Request;
    }

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
