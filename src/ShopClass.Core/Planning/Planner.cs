using ShopClass.Core.Planning.Search;

namespace ShopClass.Core.Planning;

/// <summary>Lays a project's parts out on measured boards.</summary>
public static class Planner
{
    /// <summary>
    /// The best plan found within the request's step limit, with its bounds. Never throws for wood that will not do:
    /// what does not fit is named in <see cref="CutPlan.Missing"/>.
    /// </summary>
    /// <param name="request">Everything the plan depends on.</param>
    /// <param name="progress">Told of better plans and of steps taken.</param>
    /// <param name="cancel">Stops the search; the best plan so far is returned.</param>
    public static CutPlan Plan(
        PlanningRequest request,
        IProgress<PlanProgress>? progress = null,
        CancellationToken cancel = default
    )
    {
        var plan = Wishes.Polish.Of(request, new PlanSearch(request, progress, cancel).Run());
        return plan.IsComplete || plan.IsProvenImpossible
            ? plan
            : plan with
            {
                IsProvenImpossible = Reasons.Impossibilities.Of(request).Count > 0,
            };
    }
}
