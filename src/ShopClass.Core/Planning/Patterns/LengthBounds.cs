namespace ShopClass.Core.Planning.Patterns;

/// <summary>
/// Fewest boards by argument alone: total length over a board's length, and Martello and Toth's L2, which counts apart the
/// pieces longer than half a board (S. Martello, P. Toth, "Knapsack Problems", 1990, section 8.3; from memory).
/// </summary>
internal static class LengthBounds
{
    /// <summary>The greater of the two bounds.</summary>
    public static int Of(Lengths lengths)
    {
        var best = Ceiling(lengths.Sum(), lengths.Board);
        foreach (var limit in lengths.Sizes.Where(s => 2L * s <= lengths.Board).Append(0))
            best = Math.Max(best, WithSmallest(lengths, limit));
        return best;
    }

    /// <summary>L2 for one limit: pieces below it are left out of account.</summary>
    private static int WithSmallest(Lengths lengths, int limit)
    {
        var (board, alone, halves, filling, halfSum) = (lengths.Board, 0, 0, 0L, 0L);
        for (var i = 0; i < lengths.Sizes.Length; i++)
        {
            var (size, count) = (lengths.Sizes[i], lengths.Counts[i]);
            if (size > board - limit)
                alone += count;
            else if (2L * size > board)
            {
                halves += count;
                halfSum += (long)size * count;
            }
            else if (size >= limit)
                filling += (long)size * count;
        }

        var beside = ((long)halves * board) - halfSum;
        return alone + halves + Math.Max(0, Ceiling(filling - beside, board));
    }

    private static int Ceiling(long length, long board) =>
        length <= 0 ? 0 : (int)((length + board - 1) / board);
}
