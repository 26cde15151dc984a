namespace ShopClass.Core.Planning.Patterns;

/// <summary>
/// Boards that may be settled beforehand without losing the best: two pieces that fill a board exactly; a piece beside
/// which no more than one other fits, with the longest that does (a board so filled dominates every other with that piece;
/// Martello and Toth's reduction for one partner).
/// </summary>
internal static class EasyBoards
{
    /// <summary>Settles what can be settled and takes it off the counts.</summary>
    public static List<Pattern> Settle(Lengths lengths, int[] left)
    {
        var boards = new List<Pattern>();
        for (var found = true; found; )
        {
            found = false;
            for (var i = 0; i < left.Length && !found; i++)
            {
                if (left[i] == 0 || Partner(lengths, left, i) is not { } partner)
                    continue;
                found = true;
                left[i]--;
                if (partner >= 0)
                    left[partner]--;
                boards.Add(
                    partner < 0 ? new([i], [1])
                    : partner == i ? new([i], [2])
                    : new([Math.Min(i, partner), Math.Max(i, partner)], [1, 1])
                );
            }
        }

        return boards;
    }

    /// <summary>The sure partner of a piece, -1 when it lies alone, null when nothing is sure.</summary>
    private static int? Partner(Lengths lengths, int[] left, int piece)
    {
        var room = lengths.Board - lengths.Sizes[piece];
        var longest = -1;
        for (var i = 0; i < left.Length && longest < 0; i++)
        {
            if (left[i] - (i == piece ? 1 : 0) > 0 && lengths.Sizes[i] <= room)
                longest = i;
        }

        if (longest < 0)
            return -1;
        return lengths.Sizes[longest] == room || room < TwoShortest(lengths, left, piece)
            ? longest
            : null;
    }

    private static long TwoShortest(Lengths lengths, int[] left, int piece)
    {
        long sum = 0;
        var found = 0;
        for (var i = left.Length - 1; i >= 0 && found < 2; i--)
        {
            var here = Math.Min(2 - found, left[i] - (i == piece ? 1 : 0));
            if (here <= 0)
                continue;
            found += here;
            sum += (long)here * lengths.Sizes[i];
        }

        return found < 2 ? long.MaxValue : sum;
    }
}
