using System.Diagnostics;
using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Bench;

/// <summary>Writes the whole work of random students and rehearses it; how long each takes, and a class of thirty.</summary>
internal static class WorkBench
{
    private const int ClassSize = 30;

    // Other work may take the processor away in the middle of a round; the quickest of these is what the work takes.
    private const int Rounds = 7;

    public static int Run(Arguments arguments)
    {
        var count = Math.Max(ClassSize, arguments.Number("count", 90));
        var cases = new StudentCases(arguments.Number("seed", 1), 5, 12, 1, 2);
        var rules = CourseRules.DefaultsFor(UnitSystem.Inch);
        var plans = Enumerable
            .Range(0, count)
            .Select(_ => CheckedPlan.Make(Joined(cases.Next(rules)) with { StepLimit = 5_000 }))
            .ToList();
        var cold = Stopwatch.StartNew();
        var first = WorkWriter.Write(plans[0], Hand.Left);
        var written = cold.Elapsed.TotalMilliseconds;
        _ = StepRehearsal.Replay(plans[0], first);
        Console.WriteLine(
            $"the very first, the program still being compiled, ms: writing {written:0.0}, rehearsing {cold.Elapsed.TotalMilliseconds - written:0.0}"
        );
        var (writing, work) = Timed(plans, p => WorkWriter.Write(p, Hand.Right));
        var (rehearsing, reports) = Timed(
            [.. plans.Zip(work)],
            p => StepRehearsal.Replay(p.First, p.Second)
        );
        Console.WriteLine(
            $"students {count}, complete plans {plans.Count(p => p.Plan.IsComplete)}, steps: median {Median(work.Select(w => (double)w.Steps.Count)):0}, most {work.Max(w => w.Steps.Count)}"
        );
        Tell("writing", writing);
        Tell("rehearsing", rehearsing);
        var refused = reports.Count(r => !r.Passed);
        Console.WriteLine($"refused by the rehearsal: {refused}");
        return refused == 0 ? 0 : 2;
    }

    private static (List<double> Times, List<TOut> Results) Timed<TIn, TOut>(
        IReadOnlyList<TIn> inputs,
        Func<TIn, TOut> make
    )
    {
        var times = new List<double>();
        var results = new List<TOut>();
        foreach (var input in inputs)
        {
            var quickest = double.MaxValue;
            TOut? result = default;
            for (var round = 0; round < Rounds; round++)
            {
                var watch = Stopwatch.StartNew();
                result = make(input);
                quickest = Math.Min(quickest, watch.Elapsed.TotalMilliseconds);
            }

            results.Add(result!);
            times.Add(quickest);
        }

        return (times, results);
    }

    private static void Tell(string what, List<double> times) =>
        Console.WriteLine(
            $"{what}, ms: one student median {Median(times):0.00}, longest {times.Max():0.00}; a class of {ClassSize} {times.Take(ClassSize).Sum():0.0}"
        );

    private static double Median(IEnumerable<double> values)
    {
        var sorted = values.Order().ToList();
        return sorted[sorted.Count / 2];
    }

    /// <summary>The first part takes the second in a dado, and the last keeps some length until it is fitted.</summary>
    private static PlanningRequest Joined(PlanningRequest request)
    {
        var parts = request.Project.Parts.ToList();
        parts[^1] = parts[^1] with
        {
            Open = [new(PartDimension.Length, Length.FromInches(0, 1, 4), "the rest is fitted")],
        };
        return request with
        {
            Project = request.Project with
            {
                Parts = parts,
                Joints =
                    parts.Count < 2
                        ? []
                        :
                        [
                            new()
                            {
                                Kind = JointKind.Dado,
                                Part = parts[0].Letter,
                                Mate = parts[1].Letter,
                                Depth = Length.FromInches(0, 1, 4),
                                Positions = [Length.FromInches(1)],
                            },
                        ],
            },
        };
    }
}
