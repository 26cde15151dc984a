using ShopClass.Core.Planning;

namespace ShopClass.Core.Tests.Planning;

internal static partial class Wood
{
    /// <summary>The plan for a request; stops when the test run is stopped.</summary>
    public static CutPlan Plan(PlanningRequest request) =>
        Planner.Plan(request, cancel: TestContext.Current.CancellationToken);
}
