namespace ShopClass.Core.Planning.Search.BadPlaces;

/// <summary>What choices of blanks cost at the least out of one board or several, which may rise as it is looked into.</summary>
internal abstract class SplitBound
{
    /// <summary>Cost and length this choice does not go below, as far as is known; null where it does not go.</summary>
    public abstract (Cost Cost, long Length)? Least(int code);

    /// <summary>How far this choice has been looked into.</summary>
    public abstract Depth DepthOf(int code);

    /// <summary>Looks into the choice, of which not everything is known.</summary>
    public abstract void LookInto(int code);

    /// <summary>A layout of the choice to go with what is known, if there is one.</summary>
    public abstract IReadOnlyList<DraftBoard>? Layout(int code);
}

/// <summary>How far a choice of blanks has been looked into.</summary>
internal enum Depth
{
    /// <summary>As if the boards were clear.</summary>
    AsClear,

    /// <summary>With their bad places, but lines only counted of each section's strip with the most cuts.</summary>
    Roughly,

    /// <summary>As far as it goes.</summary>
    Settled,
}
