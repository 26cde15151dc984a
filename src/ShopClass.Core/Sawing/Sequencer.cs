using ShopClass.Core.Planning;
using ShopClass.Core.Sawing.Ordering;

namespace ShopClass.Core.Sawing;

/// <summary>Puts a plan's cuts in order.</summary>
/// <remarks>
/// <para>The usual order on each board: end trim, crosscuts to lengths, rips to strips, crosscuts to blanks. All are
/// third-class cuts to a pencil line with the hand saws, which is why every kerf is a hand saw's; the back saw comes
/// out for the knife lines later. Where the course leaves no length allowance and the board is true from the mill,
/// crosscuts are second class, to a knife line, with the same saw.</para>
/// <para>What bends it (common practice; the limits are the course's own):</para>
/// <para>Neighbouring sections with the same rip lines stay joined, are ripped as one and crosscut apart afterwards. A
/// section that needs no rip is crosscut straight into its blanks.</para>
/// <para>A length shorter than the saw-bench limit keeps the waste beside it until it is ripped, if that makes it long
/// enough and the waste is clear and not worth keeping. What is still too short is ripped in the vise, from both
/// ends.</para>
/// <para>Crosscuts through one piece are made in the order that sends fewest of them to the vise, then fewest off the
/// saw bench; where that leaves a choice, end trims come first, then the longest leftover, then from the marked
/// end.</para>
/// <para>The kerf lies on the waste side. Waste narrower than a kerf, left over at the edge of a piece, stays on the
/// blank for the finish cut to take, unless it is end trim or holds a defect: then the saw takes what is there.</para>
/// <para>A board counts as wide as its smallest width. On a tapered board the wedge beyond that stays on the last strip
/// when the strip reaches the smallest width, and comes off with the last rip when it does not.</para>
/// </remarks>
public static class Sequencer
{
    /// <summary>The cuts that carry this plan out: end trim, crosscut to sections, rip to strips, crosscut to blanks, as the hold limits allow.</summary>
    /// <remarks>Boards of the plan that are not in the request are left out; the rehearsal names them.</remarks>
    public static SawingSequence Order(PlanningRequest request, CutPlan plan)
    {
        var cuts = new List<Cut>();
        foreach (var layout in plan.Boards)
        {
            if (request.Boards.FirstOrDefault(b => b.Id == layout.BoardId) is { } board)
                cuts.AddRange(new BoardBreakdown(board, request.Rules, layout).Cuts());
        }

        return new([.. cuts.Select((cut, i) => cut with { Number = i + 1 })]);
    }
}
