using ShopClass.Core.Sawing;

namespace ShopClass.Core.Drawings;

/// <summary>A piece of a board and how many gaps it is moved away from the start and from the near edge.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Along">Gaps along the board.</param>
/// <param name="Across">Gaps across it.</param>
internal sealed record SpreadPiece(Piece Piece, int Along, int Across);

/// <summary>Moves pieces that were sawn apart away from one another, so that a drawing shows them apart.</summary>
internal static class Spread
{
    /// <summary>Every piece is moved one gap further than any piece it lies after.</summary>
    public static IReadOnlyList<SpreadPiece> Apart(IReadOnlyList<Piece> pieces)
    {
        var along = Ranks(pieces, (before, after) => before.Rect.To <= after.Rect.From);
        var across = Ranks(
            pieces,
            (before, after) =>
                before.Rect.Far <= after.Rect.Near
                && before.Rect.From < after.Rect.To
                && after.Rect.From < before.Rect.To
        );
        return [.. pieces.Select(p => new SpreadPiece(p, along[p], across[p]))];
    }

    private static Dictionary<Piece, int> Ranks(
        IReadOnlyList<Piece> pieces,
        Func<Piece, Piece, bool> liesBefore
    )
    {
        var ranks = new Dictionary<Piece, int>();
        foreach (var piece in pieces)
            _ = Rank(piece);
        return ranks;

        int Rank(Piece piece)
        {
            if (ranks.TryGetValue(piece, out var known))
                return known;
            var rank = pieces
                .Where(p => liesBefore(p, piece))
                .Select(p => Rank(p) + 1)
                .DefaultIfEmpty(0)
                .Max();
            return ranks[piece] = rank;
        }
    }
}
