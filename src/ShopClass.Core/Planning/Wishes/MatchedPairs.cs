using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning.Wishes;

/// <summary>The two pieces of a part of which there are two come from neighbouring places.</summary>
internal static class MatchedPairs
{
    /// <summary>Pairs whose pieces do not lie a kerf from each other, side by side or end to end.</summary>
    public static long FallsShortBy(LaidOut laid) =>
        Pairs(laid).Count(pair => !AreNeighbours(laid, pair.One, pair.Other));

    public static WishMet? Met(LaidOut laid)
    {
        var pairs = Pairs(laid)
            .ToLookup(
                p => AreNeighbours(laid, p.One, p.Other),
                p => $"{p.One.Lying.Blank.Key} and {p.Other.Lying.Blank.Key}"
            );
        if (!pairs[true].Any() && !pairs[false].Any())
            return null;
        return pairs[false].Any()
            ? new(
                WishKind.MatchedPairs,
                false,
                $"Not from neighbouring places: {string.Join("; ", pairs[false])}."
            )
            : new(
                WishKind.MatchedPairs,
                true,
                $"From neighbouring places, so that grain and colour match: {string.Join("; ", pairs[true])}."
            );
    }

    private readonly record struct Place(int Board, Lying Lying);

    private static IEnumerable<(Place One, Place Other)> Pairs(LaidOut laid)
    {
        var first = new SortedDictionary<string, Place>(StringComparer.Ordinal);
        for (var i = 0; i < laid.Boards.Count; i++)
        {
            foreach (var lying in laid.Boards[i].Blanks)
            {
                var key = lying.Blank.Key;
                if (key.Strip > 0 || laid.PartOf(lying.Blank).Quantity != 2)
                    continue;
                if (first.TryGetValue(key.Part, out var one))
                    yield return (one, new(i, lying));
                else
                    first[key.Part] = new(i, lying);
            }
        }
    }

    private static bool AreNeighbours(LaidOut laid, Place one, Place other)
    {
        if (one.Board != other.Board)
            return false;
        var (a, b) = (one.Lying.Rect, other.Lying.Rect);
        var along = Length.Max(a.From, b.From) - Length.Min(a.To, b.To);
        var across = Length.Max(a.Near, b.Near) - Length.Min(a.Far, b.Far);
        return (across < Length.Zero && along <= laid.Rules.CrosscutKerf)
            || (along < Length.Zero && across <= laid.Rules.RipKerf);
    }
}
