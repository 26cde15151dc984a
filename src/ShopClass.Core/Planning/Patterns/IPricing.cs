namespace ShopClass.Core.Planning.Patterns;

/// <summary>Finds the most valuable way to fill a board when each size has a worth.</summary>
internal interface IPricing
{
    /// <summary>The greatest worth of a board, exactly, or <paramref name="atLeast"/> when none is worth more; null when the work ended first.</summary>
    int? Best(int[] worth, int atLeast, Work work);

    /// <summary>A board of the greatest worth found by the last call, which must have been more than asked.</summary>
    Pattern Cut();
}

/// <summary>Chooses how to price.</summary>
internal static class Pricing
{
    private const int FewPieces = 6;
    private const int ShortBoard = 4000;

    /// <summary>By a table of lengths, unless boards are many units long and hold only a few pieces.</summary>
    public static IPricing For(Lengths lengths) =>
        lengths.Board > ShortBoard && lengths.Board / lengths.Sizes[^1] <= FewPieces
        || lengths.Board > 200_000
            ? new FewPiecesPricing(lengths)
            : new PatternPricing(lengths);
}
