using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning.Wishes;

/// <summary>Moves sections from one board to another of the same width and thickness, or changes two over.</summary>
internal static class BetweenBoards
{
    public static IEnumerable<LaidOut> Of(LaidOut laid)
    {
        foreach (var (one, other) in Swaps.Pairs(laid.Boards.Count))
        {
            if (!AreAlike(laid.Boards[one], laid.Boards[other]))
                continue;
            foreach (var moved in Moved(laid, one, other).Concat(Moved(laid, other, one)))
                yield return moved;
            foreach (var swapped in Swapped(laid, one, other))
                yield return swapped;
        }
    }

    private static bool AreAlike(LaidBoard one, LaidBoard other) =>
        one.Board.SmallestWidth == other.Board.SmallestWidth
        && one.Board.Thickness == other.Board.Thickness
        && one.Board.Surfacing == other.Board.Surfacing
        && one.Board.SpeciesId == other.Board.SpeciesId
        && IsFlat(one)
        && IsFlat(other);

    /// <summary>What a hollow or twisted board takes of a blank's thickness is its own.</summary>
    private static bool IsFlat(LaidBoard board) =>
        board.Board.Cup <= Length.Zero && board.Board.Twist <= Length.Zero;

    private static IEnumerable<LaidOut> Moved(LaidOut laid, int from, int to)
    {
        var (source, target) = (laid.Boards[from].Layout, laid.Boards[to].Layout);
        if (source.Sections.Count < 2)
            yield break;
        for (var i = 0; i < source.Sections.Count; i++)
        {
            var left = source.Sections.ToList();
            left.RemoveAt(i);
            var end = target.Sections[^1].To + laid.Rules.CrosscutKerf;
            yield return laid.With(
                (from, Relaid.InOrder(source, left)),
                (
                    to,
                    target with
                    {
                        Sections = [.. target.Sections, Relaid.At(source.Sections[i], end)],
                    }
                )
            );
        }
    }

    private static IEnumerable<LaidOut> Swapped(LaidOut laid, int one, int other)
    {
        var (a, b) = (laid.Boards[one].Layout, laid.Boards[other].Layout);
        for (var i = 0; i < a.Sections.Count; i++)
        for (var j = 0; j < b.Sections.Count; j++)
            yield return laid.With(
                (one, Relaid.InOrder(a, Relaid.Replaced(a.Sections, i, b.Sections[j]))),
                (other, Relaid.InOrder(b, Relaid.Replaced(b.Sections, j, a.Sections[i])))
            );
    }
}
