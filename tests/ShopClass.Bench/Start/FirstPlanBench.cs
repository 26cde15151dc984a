using System.Diagnostics;
using System.Globalization;
using System.Runtime;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Tests.Planning;

namespace ShopClass.Bench.Start;

/// <summary>
/// The first plan of a process: layout, cuts, rehearsal and verdict of the demo's wall shelf. Taken by a stopwatch in a
/// process of its own, and by the whole process beside an empty one. Once with everything compiled as it runs, once with
/// the published app's core, which is compiled ahead.
/// </summary>
internal static class FirstPlanBench
{
    public static async Task<int> Run(int times, string app)
    {
        var here = Path.GetDirectoryName(typeof(FirstPlanBench).Assembly.Location)!;
        Console.WriteLine(
            "core, first plan ms: median, max, of the processor ms: median, max, compiling ms: median, methods: median, whole process ms: median, max, empty program ms: median, ratio of medians"
        );
        await MeasureAsync("compiled as it runs", here, times, "no");
        await MeasureAsync("compiled as it runs, after the practice plan", here, times, "yes");
        var core = Path.Combine(
            Path.GetDirectoryName(Path.GetFullPath(app))!,
            "ShopClass.Core.dll"
        );
        if (!File.Exists(core))
        {
            Console.WriteLine($"{core} is not there: the core compiled ahead is left out.");
            return 0;
        }

        var folder = Directory.CreateTempSubdirectory("shopclass-first-").FullName;
        try
        {
            foreach (var file in Directory.GetFiles(here))
                File.Copy(file, Path.Combine(folder, Path.GetFileName(file)));
            File.Copy(core, Path.Combine(folder, "ShopClass.Core.dll"), overwrite: true);
            await MeasureAsync("compiled ahead", folder, times, "no");
            await MeasureAsync("compiled ahead, after the practice plan", folder, times, "yes");
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }

        return 0;
    }

    /// <summary>
    /// What the child does: one plan. Says its milliseconds on the clock and of the processor, and for the whole process
    /// those of compiling and how many methods that were.
    /// </summary>
    /// <param name="practised">Whether the practice plan is made before, as the app does when it starts.</param>
    public static int PlanOnce(bool practised)
    {
        if (practised)
            PracticePlan.Make();
        var request = DemoProjects.Find("wall shelf", UnitSystem.Inch);
        var watch = Stopwatch.StartNew();
        var busy = Environment.CpuUsage.TotalTime;
        var made = CheckedPlan.Make(request);
        var taken = watch.Elapsed;
        busy = Environment.CpuUsage.TotalTime - busy;
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{taken.TotalMilliseconds:0.0} {busy.TotalMilliseconds:0.0} {JitInfo.GetCompilationTime(currentThread: true).TotalMilliseconds:0.0} {JitInfo.GetCompiledMethodCount()}"
            )
        );
        return made.Plan.IsComplete && made.Rehearsal.Passed ? 0 : 2;
    }

    private static async Task MeasureAsync(string name, string folder, int times, string practised)
    {
        List<double[]> plans = [];
        List<double> wholes = [];
        List<double> empties = [];
        for (var run = 0; run < times; run++)
        {
            var (plan, whole) = await ChildAsync(folder, practised);
            plans.Add(plan);
            wholes.Add(whole.TotalMilliseconds);
            empties.Add((await StartBench.EmptyProgram()).TotalMilliseconds);
        }

        double[][] said =
        [
            .. Enumerable.Range(0, 4).Select(i => plans.Select(p => p[i]).ToArray()),
        ];
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{name}, {Median(said[0]):0}, {said[0].Max():0}, {Median(said[1]):0}, {said[1].Max():0}, {Median(said[2]):0}, {Median(said[3]):0}, {Median(wholes):0}, {wholes.Max():0}, {Median(empties):0}, {Median(wholes) / Median(empties):0.0}"
            )
        );
    }

    private static async Task<(double[] Plan, TimeSpan Whole)> ChildAsync(
        string folder,
        string practised
    )
    {
        var how = new ProcessStartInfo("dotnet")
        {
            RedirectStandardOutput = true,
            UseShellExecute = false,
        };
        how.ArgumentList.Add(Path.Combine(folder, "ShopClass.Bench.dll"));
        foreach (var word in (string[])["first-plan", "--practised", practised])
            how.ArgumentList.Add(word);
        var watch = Stopwatch.StartNew();
        using var child =
            Process.Start(how) ?? throw new InvalidOperationException("No process was started.");
        var said = await child.StandardOutput.ReadToEndAsync();
        await child.WaitForExitAsync();
        var whole = watch.Elapsed;
        return child.ExitCode == 0
            ? (
                [.. said.Split(' ').Select(w => double.Parse(w, CultureInfo.InvariantCulture))],
                whole
            )
            : throw new InvalidOperationException($"The child ended with {child.ExitCode}.");
    }

    private static double Median(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
    }
}
