using ShopClass.Core.Planning.Search.BadPlaces;
using ShopClass.Core.Planning.Search.Pricing;

namespace ShopClass.Core.Planning.Search;

/// <summary>
/// Looks for the best plan on boards as if they were clear: by prices and sections, or where that does not settle it, by
/// going through all choices of blanks.
/// </summary>
internal sealed class ClearSearch(Bench bench, Steps steps)
{
    /// <summary>Few enough choices to go through them for the most that boards yield.</summary>
    private const int FewChoices = 512;

    /// <summary>The most choices gone through where prices did not settle it.</summary>
    private const int MostChoices = 4_096;
    private readonly SectionSearch? bySections = SectionSearch.Over(bench, steps);
    private readonly Lazy<ExactSearch?> byChoices = new(() => ExactSearch.Over(bench, steps));

    /// <summary>
    /// The best plan with each of these boards cut, given what is known to be had; any plan where costs do not matter. A
    /// first plan is told as soon as it is found.
    /// </summary>
    public ClearAnswer On(
        IReadOnlyList<Stock> chosen,
        (Cost Cost, long LengthUsed)? have,
        Action<ClearPlan>? tell = null
    )
    {
        var answer = bySections?.Solve(chosen, have, tell);
        if (
            answer is { IsSettled: true }
            || steps.AreUp
            || byChoices.Value is not { Choices: <= MostChoices }
        )
            return answer ?? new(false, null);
        var plan = byChoices.Value.OnClearWood(chosen)?.ToClearPlan();
        return new(!steps.AreUp, plan ?? answer?.Plan);
    }

    /// <summary>What boards cost at the least of which some have bad places, as long as there are not too many choices.</summary>
    public BadBoardAnswer? OnBadBoards(
        IReadOnlyList<Stock> chosen,
        (Cost Cost, long Length)? have,
        int limit,
        Func<IReadOnlyList<DraftBoard>, (Cost Cost, long Length)?> tryOut
    ) =>
        byChoices.Value is { Choices: <= MostChoices } search
            ? search.OnBadBoards(chosen, have, limit, tryOut)
            : null;

    /// <summary>A layout of everything on boards with bad places that takes no long search, or null.</summary>
    public Draft? Soon(IReadOnlyList<Stock> chosen) => byChoices.Value?.Soon(chosen);

    /// <summary>The best plan found on the boards as they are.</summary>
    public Draft? AsTheyAre(IReadOnlyList<Stock> chosen) =>
        byChoices.Value?.AsTheyAre(chosen)?.ToDraft(bench);

    /// <summary>The most these boards yield, as long as there are few choices.</summary>
    public Draft? Most(IReadOnlyList<Stock> chosen) =>
        byChoices.Value is { Choices: <= FewChoices } few ? few.Most(chosen)?.ToDraft(bench) : null;
}
