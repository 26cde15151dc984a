using ShopClass.Core.Planning;
using ShopClass.Core.Sawing.Rehearsing;

namespace ShopClass.Core.Sawing;

/// <summary>Replays a plan's cuts on the measured boards. Shares no code with the planner or the sequencer.</summary>
/// <remarks>
/// It judges a plan drawn by hand just as well. Nothing in a plan or a sequence makes it throw: what cannot be sawn is
/// left as it lies and becomes a finding. The rules it goes by are listed in <see cref="RehearsalRules.All"/>.
/// </remarks>
public static class Rehearsal
{
    /// <summary>Makes every cut in order and judges what is left against the project, the boards and the course's rules.</summary>
    public static RehearsalReport Replay(
        PlanningRequest request,
        CutPlan plan,
        SawingSequence sequence
    )
    {
        var replay = Rehearsing.Replay.Of(request, plan, sequence);
        return new(
            Leftovers.Steps(replay),
            [.. RehearsalRules.All.SelectMany(rule => rule(replay))],
            Leftovers.Balances(replay)
        );
    }
}
