namespace ShopClass.Core.Planning.Alternatives;

/// <summary>The ways of laying out, by the order of their goals.</summary>
public static class WayKinds
{
    /// <summary>All of them, the usual first.</summary>
    public static IReadOnlyList<WayKind> All { get; } =
    [WayKind.Usual, WayKind.BiggestOffcut, WayKind.LeastSawing, WayKind.FewestLines];

    /// <summary>The order of goals: what it puts first, then the rest as usual.</summary>
    public static IReadOnlyList<PlanGoal> Goals(this WayKind kind)
    {
        var first = PutsFirst(kind);
        return [first, .. PlanGoals.Usual.Where(g => g != first)];
    }

    /// <summary>The way in a few words, for people.</summary>
    public static string Words(this WayKind kind) =>
        kind switch
        {
            WayKind.Usual => "The usual: cheapest boards first",
            WayKind.BiggestOffcut => "Biggest offcut: least board used up first",
            WayKind.LeastSawing => "Least sawing first",
            WayKind.FewestLines => "Simplest to mark: fewest lines first",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a way."),
        };

    private static PlanGoal PutsFirst(WayKind kind) =>
        kind switch
        {
            WayKind.Usual => PlanGoals.Usual[0],
            WayKind.BiggestOffcut => PlanGoal.LengthUsed,
            WayKind.LeastSawing => PlanGoal.SawingEffort,
            WayKind.FewestLines => PlanGoal.Lines,
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a way."),
        };
}
