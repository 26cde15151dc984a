namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// What each blank is worth and what each tick of board costs, in whole numbers. A section's <i>loss</i> is its own cost
/// and that of its length less the worth of its blanks.
/// </summary>
/// <param name="Sawing">1 where sawing effort is the cost, 0 where it is not looked at.</param>
/// <param name="Worth">Worth of one blank of each kind.</param>
/// <param name="PerTick">Cost of one tick of length (kerf included) on each group of boards.</param>
/// <param name="Slack">No section's loss is below minus this.</param>
internal sealed record Prices(int Sawing, long[] Worth, long[] PerTick, long Slack)
{
    /// <summary>Cost of a tick ripped.</summary>
    public long Rip(Stock stock) => Sawing * Score.RipWeight * stock.Board.Thickness.Ticks;

    /// <summary>Cost of a tick crosscut.</summary>
    public long Cross(Stock stock) => Sawing * Score.CrosscutWeight * stock.Board.Thickness.Ticks;
}
