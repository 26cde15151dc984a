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

/// <summary>Prices and what they prove: the cost of every plan is at least the bound and the losses of its sections.</summary>
/// <param name="Aim">What the prices are for.</param>
/// <param name="Prices">The prices.</param>
/// <param name="Bound">The bound.</param>
internal sealed record Priced(Aim Aim, Prices Prices, Int128 Bound)
{
    /// <summary>What all losses below zero in a plan can make up at most.</summary>
    public Int128 SlackOf(Bench bench) => bench.Demand.Sum() * (Int128)Prices.Slack;

    /// <summary>What a tick of each group's boards costs that is not used.</summary>
    public long[] OfRoom()
    {
        var own = Aim is Aim.Length ? PriceProgramme.PartsOfTick : 0;
        return [.. Prices.PerTick.Select(p => p - own)];
    }
}
