using System.Diagnostics;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Remakes;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Core.Tests.Planning;

namespace ShopClass.Bench;

/// <summary>
/// Spoils every part of the demo projects after every cut and times how long the ways out take: a student stands at the
/// bench meanwhile.
/// </summary>
internal static class RemakesBench
{
    public static int Run()
    {
        var plans =
            from name in (string[])["bench hook", "tool tote", "wall shelf", "planter", "peg rail"]
            from unit in Enum.GetValues<UnitSystem>()
            select (Name: $"{name}, {unit}", Plan: CheckedPlan.Make(DemoProjects.Find(name, unit)));
        List<double> times = [];
        List<double> joined = [];
        foreach (var (name, plan) in plans)
        {
            var rack = plan.Request.Boards[0] with { Id = "rack 1", Name = "the long one" };
            var supplies = new Supplies { Rack = [rack] };
            var work = WorkWriter.Write(plan, Core.Sawing.Hand.Right);
            var done = work.Steps.Select(s => s.Id).ToHashSet();
            var (before, offered) = (times.Count, 0);
            foreach (var key in Blanks(plan))
            {
                for (var cuts = 0; cuts <= plan.Sequence.Cuts.Count; cuts++)
                {
                    var watch = Stopwatch.StartNew();
                    var answer = Remaker.Options(Mishaps.Now(plan, [], key, cuts), supplies);
                    times.Add(watch.Elapsed.TotalMilliseconds);
                    offered += answer.Options.Count;
                    if (answer.Options is not [var first, ..])
                        continue;
                    watch.Restart();
                    RemakeSteps.Join(work, [new(1, key, cuts, first)], _ => done);
                    joined.Add(watch.Elapsed.TotalMilliseconds);
                }
            }

            Console.WriteLine(
                $"{name}: {times.Count - before} mishaps, {offered} ways offered, slowest answer {times.Skip(before).Max():0.0} ms"
            );
        }

        Say("answer", times);
        Say("steps joined", joined);
        return times.Max() <= 500 ? 0 : 2;
    }

    private static IEnumerable<BlankKey> Blanks(CheckedPlan plan) =>
        from layout in plan.Plan.Boards
        from section in layout.Sections
        from strip in section.Strips
        from blank in strip.Blanks
        select blank.Key;

    private static void Say(string what, List<double> times)
    {
        times.Sort();
        Console.WriteLine(
            $"ms, {what}: median {At(0.5):0.0}, p95 {At(0.95):0.0}, max {times[^1]:0.0} ({times.Count} in all)"
        );

        double At(double share) => times[(int)(share * (times.Count - 1))];
    }
}
