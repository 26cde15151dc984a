using ShopClass.Core.Planning;
using ShopClass.Web.Features.Shared;

namespace ShopClass.Web.Features.Plans;

/// <summary>Something the planner makes; how far it is counts in the steps its search may take.</summary>
public class PlanMaking<T>(
    Func<IProgress<PlanProgress>, CancellationToken, T> make,
    Func<Task> onSlow
) : SlowWork<PlanProgress, T>(make, InHundredths, onSlow)
    where T : class
{
    private static int InHundredths(PlanProgress progress) =>
        progress.StepLimit == 0
            ? 0
            : (int)Math.Min(100, 100L * progress.StepsTaken / progress.StepLimit);
}

/// <summary>One plan being made.</summary>
public sealed class PlanMaking(PlanningRequest request, Func<Task> onSlow)
    : PlanMaking<CheckedPlan>((teller, token) => CheckedPlan.Make(request, teller, token), onSlow);
