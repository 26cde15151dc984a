using System.Diagnostics;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Core.Tests.Planning;
using ShopClass.Data.Plans;

namespace ShopClass.Bench;

/// <summary>What it takes to have a stored plan at hand: the first of a process, and one after it.</summary>
internal static class UnpackBench
{
    public static int Run()
    {
        foreach (var name in (string[])["tool tote", "planter"])
        {
            var plan = CheckedPlan.Make(DemoProjects.Find(name, UnitSystem.Inch));
            var packed = PlanSnapshot.Pack(plan);
            var work = PlanSnapshot.Pack(WorkWriter.Write(plan, Core.Sawing.Hand.Right));
            List<double> times = [];
            List<double> works = [];
            for (var i = 0; i < 40; i++)
            {
                var watch = Stopwatch.StartNew();
                PlanSnapshot.Unpack(packed);
                times.Add(watch.Elapsed.TotalMilliseconds);
                watch.Restart();
                PlanSnapshot.UnpackWork(work);
                works.Add(watch.Elapsed.TotalMilliseconds);
            }

            var finger = Stopwatch.StartNew();
            PlanSnapshot.Fingerprint(plan.Request);
            Console.WriteLine(
                $"{name}: plan {packed.Length / 1024} KB packed, first {times[0]:0.0} ms, then {string.Join(' ', times.Skip(1).Take(5).Select(t => $"{t:0.0}"))} ... {times[^1]:0.0}; steps {work.Length / 1024} KB, first {works[0]:0.0}, then {works[1]:0.0} ... {works[^1]:0.0}; fingerprint {finger.Elapsed.TotalMilliseconds:0.0}"
            );
        }

        return 0;
    }
}
