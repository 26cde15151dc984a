using System.Diagnostics;
using System.Globalization;

namespace ShopClass.Bench.Instances;

/// <summary>Solves published instances, judges each solution apart from the solver, and prints a line for each and the totals.</summary>
internal static class InstancesBench
{
    public static int Run(string? path, Arguments arguments)
    {
        if (path == null || !(File.Exists(path) || Directory.Exists(path)))
        {
            Console.Error.WriteLine("Name a file or a folder of instances.");
            return 1;
        }

        var seconds = double.Parse(
            arguments.Words("seconds") ?? "60",
            CultureInfo.InvariantCulture
        );
        var steps = arguments.Words("steps") == null ? (int?)null : arguments.Number("steps", 0);
        var only = arguments.Words("only");
        var results = new List<InstanceResult>();
        Console.WriteLine(InstanceResult.Header);
        foreach (var instance in InstanceFile.ReadAll(path))
        {
            if (only != null && !instance.Id.Contains(only, StringComparison.OrdinalIgnoreCase))
                continue;
            foreach (var variant in Variant.For(instance))
            {
                if (results.Count == 0)
                    _ = Solve(instance, variant, Math.Min(seconds, 2), steps);
                results.Add(Solve(instance, variant, seconds, steps));
                Console.WriteLine(results[^1].Line());
            }

            if (Variant.For(instance).Count == 0)
                Console.WriteLine(InstanceResult.NotRun(instance, "defects and turning"));
        }

        foreach (var line in InstanceTotals.Lines(results))
            Console.WriteLine(line);
        return results.Any(r => r.IsRefused) ? 2 : 0;
    }

    private static InstanceResult Solve(
        Instance instance,
        Variant variant,
        double seconds,
        int? steps
    )
    {
        using var clock = new CancellationTokenSource(TimeSpan.FromSeconds(seconds));
        var watch = Stopwatch.StartNew();
        var solution = Solvers.Solve(instance, variant, steps, clock.Token);
        var took = watch.Elapsed.TotalMilliseconds;
        if (solution == null)
            return new(
                instance,
                variant,
                null,
                null,
                false,
                took,
                InstanceResult.WhyNoSolver(variant)
            );
        var check = new SolutionCheck(instance, variant, solution);
        var value = check.Value();
        return new(
            instance,
            variant,
            value,
            solution.Bound,
            solution.IsProven,
            took,
            check.Fault() ?? Contradiction(instance, variant, solution, value)
        );
    }

    /// <summary>A value better than its own bound or than a proven optimum, or a bound past a published value: somebody is wrong.</summary>
    private static string? Contradiction(
        Instance instance,
        Variant variant,
        Solution solution,
        long value
    )
    {
        var sign = variant.Aim == Aim.MostProfit ? -1 : 1;
        if (solution.Bound is { } bound && sign * value < sign * bound)
            return "better than its own bound";
        if (solution.IsProven && solution.Bound != value)
            return "called proven without a bound that meets it";
        if (!instance.Values.TryGetValue(variant.Key, out var published))
            return null;
        if (variant.IsClosed(instance) && sign * value < sign * published)
            return "better than the proven optimum";
        return solution.Bound is { } b && sign * b > sign * Math.Ceiling(published)
            ? "bound passes the published value"
            : null;
    }
}
