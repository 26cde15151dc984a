using ShopClass.Core.Planning;

namespace ShopClass.Data.Tests;

/// <summary>Checked plans to store.</summary>
internal static class CheckedPlans
{
    public static CheckedPlan For(PlanningRequest request) => CheckedPlan.Make(request);
}
