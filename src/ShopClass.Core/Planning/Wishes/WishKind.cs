namespace ShopClass.Core.Planning.Wishes;

/// <summary>
/// What the craft would like of a plan beyond its goals (common practice). In the order in which they are granted: an
/// earlier one is never given up for a later one, and no goal for any of them.
/// </summary>
public enum WishKind
{
    /// <summary>What is left over holds a spare of the part most likely to be spoiled.</summary>
    SpareOfTheRiskiest,

    /// <summary>One big offcut rather than two small ones.</summary>
    OneBigOffcut,

    /// <summary>Neighbouring sections with the same rip lines, ripped as one: longer to hold, one setting, one line.</summary>
    JoinedRips,

    /// <summary>Parts that show come from the clearest wood.</summary>
    ClearWoodToShow,

    /// <summary>The two pieces of a pair come from neighbouring places, so that grain and colour match.</summary>
    MatchedPairs,

    /// <summary>Pieces of one length lie side by side from one line, so that they are marked together.</summary>
    GangNeighbours,

    /// <summary>A slightly shorter part in a longer section keeps the difference until its finish cut.</summary>
    ShorterInLonger,

    /// <summary>Surplus width is shared evenly by the strips of a section.</summary>
    EvenSurplus,
}

/// <summary>How a plan does on a wish.</summary>
/// <param name="Kind">The wish.</param>
/// <param name="IsMet">Whether the plan grants it.</param>
/// <param name="Sentence">What the plan does about it, with its figures, for people.</param>
public sealed record WishMet(WishKind Kind, bool IsMet, string Sentence);
