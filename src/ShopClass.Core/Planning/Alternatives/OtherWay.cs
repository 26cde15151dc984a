namespace ShopClass.Core.Planning.Alternatives;

/// <summary>What a way of laying out puts first.</summary>
public enum WayKind
{
    /// <summary>The usual order of goals: cheapest boards first.</summary>
    Usual,

    /// <summary>Least length of board used, so the biggest offcut is left.</summary>
    BiggestOffcut,

    /// <summary>Least sawing.</summary>
    LeastSawing,

    /// <summary>Fewest lines to mark.</summary>
    FewestLines,
}

/// <summary>One whole plan among several for the same wood and the same parts.</summary>
/// <param name="Kind">What it puts first.</param>
/// <param name="Plan">The plan, complete and rehearsed; its request names the order of goals it was made for.</param>
public sealed record OtherWay(WayKind Kind, CheckedPlan Plan);
