namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>Where the putting together of sections stands.</summary>
/// <param name="Depth">How many sections are placed.</param>
/// <param name="Left">The blanks left.</param>
/// <param name="Bound">What a plan from here costs at least, losses of further sections not counted.</param>
/// <param name="Own">What the sections placed cost themselves.</param>
/// <param name="Prices">Number of the prices that losses go by.</param>
/// <param name="Path">The sections placed.</param>
internal readonly record struct CoverTurn(
    int Depth,
    ulong Left,
    long Bound,
    long Own,
    int Prices,
    Placed? Path
);
