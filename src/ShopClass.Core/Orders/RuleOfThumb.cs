using ShopClass.Core.Measure;

namespace ShopClass.Core.Orders;

/// <summary>
/// The usual estimate of how much wood to buy: net volume / (1 - waste share). Adding the share to the net instead comes
/// up short: 30 % waste needs 1.43 times the net, not 1.3 (arithmetic).
/// </summary>
public static class RuleOfThumb
{
    /// <summary>The waste share usually reckoned with for small furniture from sawn boards, per cent: a proposal of ours.</summary>
    public const int UsualWastePercent = 30;

    /// <summary>Wood to buy for this much in the finished parts, rounded up to a whole cubic tick.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The waste is not from 0 to 95 per cent.</exception>
    public static Volume ToBuy(Volume net, int wastePercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(wastePercent);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(wastePercent, 95);
        var kept = 100 - wastePercent;
        return Volume.FromCubicTicks((net.CubicTicks * 100 + kept - 1) / kept);
    }

    /// <summary>What so much wood costs at a line's price for its own wood, to the nearest minor unit.</summary>
    public static Money CostOf(Volume wood, PricedStock at) =>
        at.BoardPrice with
        {
            MinorUnits = Scaled(at.BoardPrice.MinorUnits, wood, at.Wood),
        };

    // Two volumes and a price do not fit 128 bits together; a thousandth of a cubic inch is fine enough for money.
    private static long Scaled(long price, Volume wood, Volume board)
    {
        var grain =
            Volume.Of(Length.FromInches(1), Length.FromInches(1), Length.FromInches(1)).CubicTicks
            / 1000;
        return Rounded.ToNearest(
            price * (wood.CubicTicks / grain),
            Int128.Max(1, board.CubicTicks / grain)
        );
    }
}
