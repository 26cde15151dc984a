using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning.Wishes;

/// <summary>One big offcut beats two small ones.</summary>
internal static class OneBigOffcut
{
    /// <summary>The area of the biggest leftover worth keeping, in square ticks, taken from nothing.</summary>
    public static long FallsShortBy(LaidOut laid)
    {
        var biggest = 0L;
        foreach (var board in laid.Boards)
        {
            foreach (var rect in board.Leftovers)
            {
                if (LeftWood.IsWorthKeeping(board, rect))
                    biggest = Math.Max(biggest, (long)rect.Area.SquareTicks);
            }
        }

        return -biggest;
    }

    public static WishMet? Met(LaidOut laid)
    {
        (LaidBoard Board, BoardRect Rect)[] kept =
        [
            .. laid
                .Boards.SelectMany(b => b.Leftovers.Select(r => (b, r)))
                .Where(x => LeftWood.IsWorthKeeping(x.b, x.r))
                .OrderByDescending(x => x.r.Area.SquareTicks),
        ];
        if (kept.Length == 0)
            return null;
        var (board, biggest) = kept[0];
        var size =
            $"{LengthWriter.Write(biggest.Across, laid.Rules.Precision)} × {laid.Say(biggest.Along)}";
        if (
            board.Board.TrimEnd > Length.Zero
            && biggest.To == board.Board.Length - board.Board.TrimEnd
        )
            size += " without the end trim";
        return kept.Length == 1
            ? new(WishKind.OneBigOffcut, true, $"All that is worth keeping is one offcut, {size}.")
            : new(
                WishKind.OneBigOffcut,
                false,
                $"{kept.Length} offcuts are worth keeping, the biggest {size}."
            );
    }
}
