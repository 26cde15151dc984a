using System.Collections.Concurrent;
using ShopClass.Data.Access;
using ShopClass.Data.Plans;

namespace ShopClass.Data.Progress;

/// <summary>
/// Stored plans never change, so those that are worked by are kept unpacked. Whether somebody may see one is asked
/// before, every time.
/// </summary>
internal sealed class PlansInHand(PlanStore plans)
{
    private const int Most = 300;
    private readonly ConcurrentDictionary<Guid, StoredPlan> kept = new();

    public async Task<StoredPlan?> FindAsync(Viewer viewer, Guid planId, CancellationToken cancel)
    {
        if (kept.TryGetValue(planId, out var plan))
            return plan;
        plan = await plans.FindForAsync(viewer, planId, Deed.WorkTheRoom, cancel);
        if (plan is null)
            return null;
        if (kept.Count >= Most)
            kept.Clear();
        kept[planId] = plan;
        return plan;
    }
}
