namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>How sections are put together: each of these ways finds the same plans.</summary>
/// <param name="WorthPricing">With so many sections to put together new prices are worth their time.</param>
/// <param name="MostSteps">After so many steps blank by blank it is done board by board, where blanks are few enough.</param>
/// <param name="MostSections">With more sections it is done board by board at once.</param>
internal readonly record struct CoverEffort(int WorthPricing, int MostSteps, int MostSections)
{
    /// <summary>What took least time on the cases of the bench.</summary>
    public static readonly CoverEffort Usual = new(80, 100, 2_000);
}
