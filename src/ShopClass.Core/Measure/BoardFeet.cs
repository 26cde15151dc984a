namespace ShopClass.Core.Measure;

/// <summary>
/// Board feet: 1 in × 1 ft × 1 ft of wood, so thickness in inches × width in inches × length in feet / 12 (Wood
/// Handbook, FPL-GTR-190, glossary, "board foot"). Plain volume: the seller's habit of counting stock under 1 in as 1 in
/// is not followed here.
/// </summary>
public static class BoardFeet
{
    /// <summary>One board foot.</summary>
    public static Volume One { get; } =
        Volume.Of(Length.FromInches(1), Length.FromInches(12), Length.FromInches(12));

    /// <summary>Hundredths of a board foot, rounded to the nearest; halfway goes up.</summary>
    public static long HundredthsIn(Volume volume) =>
        Rounded.ToNearest(volume.CubicTicks * 100, One.CubicTicks);
}
