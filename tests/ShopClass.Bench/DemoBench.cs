using System.Diagnostics;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Planning;
using ShopClass.Data.Access;
using ShopClass.Data.Store;
using ShopClass.Data.Tests;
using ShopClass.Print.Sheets;

namespace ShopClass.Bench;

/// <summary>Every student of the demo course: how long the checked plan takes the first time and at best, and its kit sheet.</summary>
internal static class DemoBench
{
    public static async Task<int> Run(Arguments arguments)
    {
        var rounds = arguments.Number("rounds", 10);
        var sort = Yardstick.Sorting(rounds);
        Console.WriteLine($"sorting 100,000 numbers: {sort:0.00} ms");
        Console.WriteLine(
            "student, project, verdict, proven, first ms, quickest ms, ratio, kit sheet ms, ratio"
        );
        foreach (var (student, request) in await Requests())
        {
            var watch = Stopwatch.StartNew();
            var plan = CheckedPlan.Make(request);
            var first = watch.Elapsed.TotalMilliseconds;
            if (!plan.Rehearsal.Passed)
                throw new InvalidOperationException(
                    $"The rehearsal refuses the plan of {student}."
                );
            var quickest = Yardstick.Quickest(rounds, () => CheckedPlan.Make(request));
            var sheet = Yardstick.Quickest(
                rounds,
                () => KitSheet.Make(Sheet(student, plan), Paper.A4)
            );
            Console.WriteLine(
                $"{student}, {request.Project.Name}, {plan.Verdict.Kind}, {(plan.Plan.IsBestPossible ? "yes" : "no")}, "
                    + $"{first:0.0}, {quickest:0.0}, {quickest / sort:0.00}, {sheet:0.0}, {sheet / sort:0.00}"
            );
        }

        return 0;
    }

    private static async Task<IReadOnlyList<(string Student, PlanningRequest Request)>> Requests()
    {
        await using var store = await ThrowAwayStore.MakeAsync(demo: true);
        var demo =
            await store.Services.GetRequiredService<InstructorAccounts>().DemoAsync()
            ?? throw new InvalidOperationException("The demo course was not loaded.");
        var viewer = new InstructorViewer(demo);
        var requests = new List<(string, PlanningRequest)>();
        foreach (var course in await store.Courses.ListAsync(viewer))
        foreach (var student in await store.Students.ListAsync(viewer, course.Id))
        foreach (var project in await store.Projects.ListAsync(viewer, course.Id))
        {
            if (
                await store.Plans.RequestAsync(viewer, student.Id, project.Id) is
                { Boards.Count: > 0 } request
            )
                requests.Add((student.Shown, request));
        }

        return requests;
    }

    private static KitSheetContent Sheet(string student, CheckedPlan plan) =>
        new(
            "Demo",
            student,
            IsLeftHanded: false,
            plan,
            1,
            DateTime.UnixEpoch,
            new DateOnly(2026, 1, 1),
            IsOutOfDate: false
        );
}
