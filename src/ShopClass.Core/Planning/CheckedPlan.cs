using ShopClass.Core.Sawing;

namespace ShopClass.Core.Planning;

/// <summary>
/// A plan with the cuts that carry it out and the rehearsal that agreed to it. The only form in which a plan is shown,
/// stored or printed.
/// </summary>
/// <param name="Request">What was asked.</param>
/// <param name="Plan">The layout.</param>
/// <param name="Sequence">The cuts, in order.</param>
/// <param name="Rehearsal">The independent replay.</param>
/// <param name="Verdict">What the boards are good for.</param>
public sealed record CheckedPlan(
    PlanningRequest Request,
    CutPlan Plan,
    SawingSequence Sequence,
    RehearsalReport Rehearsal,
    Verdict Verdict
)
{
    /// <summary>Plans, orders the cuts, rehearses and judges.</summary>
    public static CheckedPlan Make(
        PlanningRequest request,
        IProgress<PlanProgress>? progress = null,
        CancellationToken cancel = default
    )
    {
        var plan = Planner.Plan(request, progress, cancel);
        var sequence = Sequencer.Order(request, plan);
        var rehearsal = Sawing.Rehearsal.Replay(request, plan, sequence);
        return new(request, plan, sequence, rehearsal, Verdicts.Judge(request, plan));
    }
}
