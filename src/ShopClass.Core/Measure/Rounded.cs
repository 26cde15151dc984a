namespace ShopClass.Core.Measure;

/// <summary>Rounding a quotient of whole numbers without leaving whole numbers.</summary>
internal static class Rounded
{
    /// <summary>The whole number nearest to <paramref name="over"/> / <paramref name="under"/>, neither negative; halfway goes up.</summary>
    internal static long ToNearest(Int128 over, Int128 under) =>
        (long)((2 * over + under) / (2 * under));
}
