using ShopClass.Core.Planning.Search;

namespace ShopClass.Core.Planning.Wishes;

/// <summary>
/// The last touch: rearranges a plan that is as good as the search could make it, so that more of the craft's wishes are
/// granted and no goal's value changes.
/// </summary>
/// <remarks>
/// One rearrangement after another is tried in a fixed order; the first that falls less short of the wishes, compared in
/// their order, is kept, and the round begins again, until none is better or a number of tries is up. So the same plan
/// is always polished alike, and a polished plan is never worse. It is a search of the neighbourhood: a better arrangement
/// several changes away may be missed.
/// </remarks>
internal static class Polish
{
    /// <summary>Rearrangements tried for one plan, about a hundredth of a millisecond each.</summary>
    private const int MostTries = 1_000;

    private static readonly Func<LaidOut, IEnumerable<LaidOut>>[] Rearrangements =
    [
        BetweenBoards.Of,
        Swaps.OfSections,
        CommonLines.Of,
        Swaps.OfNames,
        Swaps.OfStrips,
        Swaps.OfBlanks,
        EvenShares.Of,
    ];

    /// <summary>The plan with all wishes looked after.</summary>
    public static CutPlan Of(PlanningRequest request, CutPlan plan) =>
        Of(request, plan, CraftWishes.InOrder);

    /// <summary>The plan with these wishes looked after. Plans with something missing stay as they are.</summary>
    public static CutPlan Of(PlanningRequest request, CutPlan plan, IReadOnlyList<Wish> wishes)
    {
        if (!plan.IsComplete || LaidOut.Of(request, plan.Boards) is not { } laid)
            return plan;
        var bench = Bench.Lay(request, plan.GlueUps);
        var goals = Score.Of(bench, plan.Boards);
        var (best, tries) = (laid, 0);
        while (Better() is { } better)
            best = better;
        return best == laid ? plan : plan with { Boards = Names.InTurn(Layouts(best)) };

        LaidOut? Better()
        {
            var now = wishes.Select(w => w.FallsShortBy(best)).ToArray();
            foreach (var rearranged in Rearrangements.SelectMany(r => r(best)))
            {
                if (++tries > MostTries)
                    return null;
                if (
                    IsBetter(rearranged, now, wishes)
                    && Soundness.Of(rearranged, best)
                    && Score.Of(bench, Layouts(rearranged)) == goals
                )
                    return rearranged;
            }

            return null;
        }
    }

    private static bool IsBetter(LaidOut laid, long[] than, IReadOnlyList<Wish> wishes)
    {
        for (var i = 0; i < wishes.Count; i++)
        {
            var by = wishes[i].FallsShortBy(laid).CompareTo(than[i]);
            if (by != 0)
                return by < 0;
        }

        return false;
    }

    private static BoardLayout[] Layouts(LaidOut laid) => [.. laid.Boards.Select(b => b.Layout)];
}
