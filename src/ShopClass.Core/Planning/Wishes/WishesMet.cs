namespace ShopClass.Core.Planning.Wishes;

/// <summary>Says which of the craft's wishes a plan grants, from the plan itself: also of one laid out by hand.</summary>
public static class WishesMet
{
    /// <summary>One line for each wish that arises, in the order of <see cref="WishKind"/>; none for a plan with parts missing.</summary>
    public static IReadOnlyList<WishMet> Of(CheckedPlan made) =>
        made.Plan.IsComplete && LaidOut.Of(made.Request, made.Plan.Boards) is { } laid
            ? [.. CraftWishes.InOrder.Select(w => w.Met(laid)).OfType<WishMet>()]
            : [];
}
