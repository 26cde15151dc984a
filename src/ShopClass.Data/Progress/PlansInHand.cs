using System.Collections.Concurrent;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Access;
using ShopClass.Data.Plans;

namespace ShopClass.Data.Progress;

/// <summary>
/// Stored plans never change, so those that are worked by are kept unpacked. Whether somebody may see one is asked
/// before, every time. Only names go from them, when a course is long over: then nothing is kept.
/// </summary>
internal sealed class PlansInHand
{
    private const int Most = 300;
    private readonly ConcurrentDictionary<Guid, Kept> kept = new();
    private readonly PlanStore plans;

    public PlansInHand(PlanStore plans, ClassNews news)
    {
        this.plans = plans;
        // For as long as the app runs, as this is kept too.
        _ = news.Listen(Hear);
    }

    /// <summary>The plan; null when it is not the viewer's.</summary>
    /// <param name="viewer">Who asks.</param>
    /// <param name="planId">The plan.</param>
    /// <param name="notes">The instructor's own words as they are now; null where the words do not matter.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<StoredPlan?> FindAsync(
        Viewer viewer,
        Guid planId,
        IReadOnlyList<TechniqueNote>? notes,
        CancellationToken cancel
    )
    {
        if (
            kept.TryGetValue(planId, out var there)
            && (notes is null || there.Notes?.SequenceEqual(notes) is true)
        )
            return there.Plan;
        if (await plans.FindForAsync(viewer, planId, Deed.WorkTheRoom, cancel) is not { } plan)
            return null;
        if (kept.Count >= Most)
            kept.Clear();
        kept[planId] = new(plan, notes);
        return plan;
    }

    private void Hear(News news)
    {
        if (news.Kind is NewsKind.Ended)
            kept.Clear();
    }

    private sealed record Kept(StoredPlan Plan, IReadOnlyList<TechniqueNote>? Notes);
}
