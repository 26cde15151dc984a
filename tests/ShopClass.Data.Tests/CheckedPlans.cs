using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;

namespace ShopClass.Data.Tests;

/// <summary>Checked plans to store.</summary>
internal static class CheckedPlans
{
    public static CheckedPlan For(PlanningRequest request)
    {
        var plan = Planner.Plan(request);
        var sequence = Sequencer.Order(request, plan);
        return new(
            request,
            plan,
            sequence,
            Rehearsal.Replay(request, plan, sequence),
            new Verdict(
                plan.IsComplete ? VerdictKind.Fits : VerdictKind.TooSmall,
                plan.IsComplete ? "It fits." : "It is too small.",
                [],
                [],
                ["Mind the dust."]
            )
        );
    }
}
