using ShopClass.Core.Measure;

namespace ShopClass.Core.Lumber;

/// <summary>A planed board as a seller names it, with the size it really has.</summary>
/// <param name="Name">What to ask for: <c>1x10</c>, <c>20 × 195 mm</c>.</param>
/// <param name="Thickness">Actual thickness.</param>
/// <param name="Width">Actual width.</param>
/// <param name="Basis">Read or remembered.</param>
/// <param name="Source">Where the figures come from.</param>
public sealed record SellerSize(
    string Name,
    Length Thickness,
    Length Width,
    Basis Basis,
    string Source
);

/// <summary>The planed sizes and the lengths sellers keep.</summary>
public static class SellerSizes
{
    private const string MetricSource = "common planed sizes of the European trade: practice";

    // From memory: widths of softwood sold planed, 5 mm under the sawn widths of 75, 100 ... 250 mm.
    private static readonly long[] MetricWidths = [70, 95, 120, 145, 170, 195, 220, 245];

    // From memory: thicknesses planed from sawn 19, 25, 32, 38 and 50 mm.
    private static readonly long[] MetricThicknesses = [15, 20, 27, 33, 45];

    private static readonly Lazy<IReadOnlyList<SellerSize>> Inch = new(() =>
        [
            .. DressedSizes.All.Select(s => new SellerSize(
                s.Nominal,
                s.Thickness,
                s.Width,
                s.Basis,
                s.Source
            )),
        ]
    );

    private static readonly Lazy<IReadOnlyList<SellerSize>> Metric = new(() =>
        [
            .. MetricThicknesses.SelectMany(t =>
                MetricWidths.Select(w => new SellerSize(
                    $"{t} × {w} mm",
                    Length.FromMillimetres(t),
                    Length.FromMillimetres(w),
                    Basis.Memory,
                    MetricSource
                ))
            ),
        ]
    );

    /// <summary>
    /// All, thinnest and narrowest first: the dressed sizes of PS 20 for inches; for millimetres common planed sizes
    /// (practice, from memory).
    /// </summary>
    public static IReadOnlyList<SellerSize> For(UnitSystem unit) =>
        unit is UnitSystem.Inch ? Inch.Value : Metric.Value;

    /// <summary>
    /// The lengths boards are kept in, shortest first: 6 to 16 ft by 2 ft (practice; Wood Handbook chapter 6, from memory),
    /// or 1800 to 5400 mm by 300 mm (practice, from memory).
    /// </summary>
    public static IReadOnlyList<Length> LengthsFor(UnitSystem unit) =>
        unit is UnitSystem.Inch
            ? [.. Enumerable.Range(3, 6).Select(i => Length.FromInches(24L * i))]
            : [.. Enumerable.Range(6, 13).Select(i => Length.FromMillimetres(300L * i))];
}
