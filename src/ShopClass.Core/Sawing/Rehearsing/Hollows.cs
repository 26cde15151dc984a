using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Sawing.Rehearsing;

/// <summary>
/// How hollow a piece of a cupped or twisted board is, worked out afresh. What it takes to make both faces flat: the arc
/// over the piece's width, and half of what a corner stands off.
/// </summary>
internal static class Hollows
{
    // Thinner than a shaving or two nobody planes for (our proposal).
    private static readonly Length Shavings = Length.FromInches(0, 1, 64);

    /// <summary>Thickness to plane away over a piece that covers so much of the board; zero where it is as good as flat.</summary>
    public static Length In(Board board, Length across, Length along)
    {
        if (board.Cup <= Length.Zero && board.Twist <= Length.Zero)
            return Length.Zero;
        var a = Share(across, board.SmallestWidth);
        var l = Share(along, board.Length);
        var arc = board.Cup.Ticks * a * a;
        var corner = board.Twist.Ticks * a * l;
        // Each figure was measured to no better than a tick.
        var lost = Up(arc) + (Up(corner) + 1) / 2;
        return lost < Shavings.Ticks ? Length.Zero : Length.FromTicks(lost);
    }

    private static long Up(decimal ticks) => (long)decimal.Ceiling(decimal.Round(ticks, 9));

    private static decimal Share(Length part, Length whole) =>
        whole <= Length.Zero ? 1 : decimal.Min(1, (decimal)part.Ticks / whole.Ticks);
}
