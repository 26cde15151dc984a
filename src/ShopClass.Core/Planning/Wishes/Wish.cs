namespace ShopClass.Core.Planning.Wishes;

/// <summary>One wish of the craft as a term of its own.</summary>
/// <param name="Kind">Which.</param>
/// <param name="FallsShortBy">
/// How far a layout falls short of it, in the wish's own unit; the smaller of two is the better. The unit is written down
/// at each wish.
/// </param>
/// <param name="Met">What a plan does about it, in words; null where the wish does not arise.</param>
internal sealed record Wish(
    WishKind Kind,
    Func<LaidOut, long> FallsShortBy,
    Func<LaidOut, WishMet?> Met
);

/// <summary>All wishes, in their order.</summary>
internal static class CraftWishes
{
    public static IReadOnlyList<Wish> InOrder { get; } =
    [
        new(WishKind.SpareOfTheRiskiest, SpareOfTheRiskiest.FallsShortBy, SpareOfTheRiskiest.Met),
        new(WishKind.OneBigOffcut, OneBigOffcut.FallsShortBy, OneBigOffcut.Met),
        new(WishKind.JoinedRips, JoinedRips.FallsShortBy, JoinedRips.Met),
        new(WishKind.ClearWoodToShow, ClearWoodToShow.FallsShortBy, ClearWoodToShow.Met),
        new(WishKind.MatchedPairs, MatchedPairs.FallsShortBy, MatchedPairs.Met),
        new(WishKind.GangNeighbours, GangNeighbours.FallsShortBy, GangNeighbours.Met),
        new(WishKind.ShorterInLonger, ShorterInLonger.FallsShortBy, ShorterInLonger.Met),
        new(WishKind.EvenSurplus, EvenSurplus.FallsShortBy, EvenSurplus.Met),
    ];
}
