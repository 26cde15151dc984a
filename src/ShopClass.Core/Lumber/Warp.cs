using ShopClass.Core.Measure;

namespace ShopClass.Core.Lumber;

/// <summary>What a board that is cupped or twisted leaves of its thickness once a piece of it is planed flat.</summary>
/// <remarks>
/// Plain geometry. A cup is an arc across the board: over a share of the width its hollow goes down with the square of that
/// share. A twist is a rise that grows evenly along and across. Both faces flat and parallel again cost the whole cup, and
/// half the twist, because its two high corners may be shared between both faces.
/// </remarks>
public static class Warp
{
    /// <summary>Less than this is taken as flat: 1/64 in (0.4 mm), our proposal.</summary>
    public static Length TakenAsFlat { get; } = Length.FromInches(0, 1, 64);

    /// <summary>Cup of a piece this wide, up to a tick.</summary>
    public static Length CupOver(Board board, Length across)
    {
        var whole = (Int128)board.SmallestWidth.Ticks;
        var piece = Int128.Min(across.Ticks, whole);
        return Shared(board.Cup, piece * piece, whole * whole);
    }

    /// <summary>Twist of a piece this wide and this long, up to a tick.</summary>
    public static Length TwistOver(Board board, Length across, Length along)
    {
        var (wide, longest) = ((Int128)board.SmallestWidth.Ticks, (Int128)board.Length.Ticks);
        return Shared(
            board.Twist,
            Int128.Min(across.Ticks, wide) * Int128.Min(along.Ticks, longest),
            wide * longest
        );
    }

    /// <summary>Thickness that making both faces of such a piece flat and parallel takes; up to a tick.</summary>
    public static Length LostIn(Board board, Length across, Length along) =>
        CupOver(board, across) + Length.FromTicks((TwistOver(board, across, along).Ticks + 1) / 2);

    /// <summary>A cup or twist over more wood, in proportion to it; up to a tick.</summary>
    public static Length GrownWith(Length warp, Length from, Length to) =>
        Shared(warp, to.Ticks, from.Ticks);

    /// <summary>Whether such a piece is flat enough to be used as it comes.</summary>
    public static bool IsFlat(Board board, Length across, Length along) =>
        LostIn(board, across, along) < TakenAsFlat;

    private static Length Shared(Length whole, Int128 share, Int128 of) =>
        whole <= Length.Zero || of <= 0
            ? Length.Zero
            : Length.FromTicks((long)((whole.Ticks * share + of - 1) / of));
}
