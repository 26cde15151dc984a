namespace ShopClass.Core.Measure;

/// <summary>Square metres, as a metric seller of boards counts faces.</summary>
public static class SquareMetres
{
    /// <summary>Hundredths of a square metre, rounded to the nearest; halfway goes up.</summary>
    public static long HundredthsIn(Area area) => Rounded.ToNearest(area.SquareTicks * 100, One);

    private static Int128 One { get; } =
        (Length.FromMillimetres(1000) * Length.FromMillimetres(1000)).SquareTicks;
}
