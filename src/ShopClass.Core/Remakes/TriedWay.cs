using ShopClass.Core.Planning;

namespace ShopClass.Core.Remakes;

/// <summary>A way that was tried: open as an option, or closed for a reason.</summary>
internal sealed record TriedWay(RemakeOption? Option, ClosedWay? Reason)
{
    /// <summary>A way that is open, with its plan.</summary>
    public static TriedWay Open(
        RemakeWay way,
        string sentence,
        CheckedPlan plan,
        RemakeParts parts
    ) =>
        new(
            new()
            {
                Way = way,
                Sentence = sentence,
                Plan = plan,
                Blanks = parts.Blanks,
            },
            null
        );

    /// <summary>A way that is closed, and why.</summary>
    public static TriedWay Closed(RemakeWay way, string sentence) => new(null, new(way, sentence));
}
