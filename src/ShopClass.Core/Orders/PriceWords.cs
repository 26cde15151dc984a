namespace ShopClass.Core.Orders;

/// <summary>Prices and stock in a few words.</summary>
public static class PriceWords
{
    /// <summary>What a price is for: "each", "a foot".</summary>
    public static string Of(PriceBasis basis) =>
        basis switch
        {
            PriceBasis.Each => "each",
            PriceBasis.PerFoot => "a foot",
            PriceBasis.PerBoardFoot => "a board foot",
            PriceBasis.PerMetre => "a metre",
            _ => throw new ArgumentOutOfRangeException(nameof(basis), basis, "Not a price basis."),
        };

    /// <summary>Hundredths with their point: <c>5.33</c>.</summary>
    public static string Hundredths(long hundredths) => $"{hundredths / 100}.{hundredths % 100:00}";
}
