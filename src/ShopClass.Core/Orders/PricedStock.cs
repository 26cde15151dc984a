using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Orders;

/// <summary>What a seller's price is for.</summary>
public enum PriceBasis
{
    /// <summary>One board.</summary>
    Each,

    /// <summary>A foot of length.</summary>
    PerFoot,

    /// <summary>A board foot, counted on the nominal size.</summary>
    PerBoardFoot,

    /// <summary>A metre of length.</summary>
    PerMetre,
}

/// <summary>A thickness and width as a seller names them; never what a rule shows.</summary>
/// <param name="Thickness">Nominal thickness.</param>
/// <param name="Width">Nominal width.</param>
public readonly record struct NominalSize(Length Thickness, Length Width);

/// <summary>A line of a seller's price list: boards of one size, wood and price.</summary>
public sealed record PricedStock
{
    /// <summary>A key that stays the same while the line exists; orders refer to it.</summary>
    public required string Id { get; init; }

    /// <summary>What the seller calls it: <c>1x10</c>, <c>20 × 195 mm</c>, <c>shelf board</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The species, as a key of <see cref="SpeciesTable"/>.</summary>
    public required string SpeciesId { get; init; }

    /// <summary>The seller's grade, in the seller's words; may be empty.</summary>
    public string Grade { get; init; } = "";

    /// <summary>How it was surfaced.</summary>
    public required Surfacing Surfacing { get; init; }

    /// <summary>The seller's nominal size; null where it is sold by what it measures.</summary>
    public NominalSize? Nominal { get; init; }

    /// <summary>Actual thickness.</summary>
    public required Length Thickness { get; init; }

    /// <summary>Actual width.</summary>
    public required Length Width { get; init; }

    /// <summary>Length of one board.</summary>
    public required Length Length { get; init; }

    /// <summary>The price; what it is for is <see cref="Basis"/>.</summary>
    public required Money Price { get; init; }

    /// <summary>What the price is for.</summary>
    public required PriceBasis Basis { get; init; }

    /// <summary>Boards in a pack; only whole packs are sold. At least 1.</summary>
    public int PackSize { get; init; } = 1;

    /// <summary>How many boards the seller has; null where there is no limit to reckon with.</summary>
    public int? Available { get; init; }

    /// <summary>Wood in one board, at its actual size.</summary>
    public Volume Wood => Volume.Of(Thickness, Width, Length);

    /// <summary>
    /// What board feet are counted on: nominal thickness and width times length (PS 20, board measure). Stock without a
    /// nominal size counts by what it measures. Under 1 in thick counts as 1 in, as the trade does (practice; NHLA rules,
    /// from memory).
    /// </summary>
    public Volume BoardMeasure
    {
        get
        {
            var (thickness, width) = Nominal is { } n ? (n.Thickness, n.Width) : (Thickness, Width);
            return Volume.Of(Length.Max(thickness, Length.FromInches(1)), width, Length);
        }
    }

    /// <summary>Board feet of one board in hundredths, to the nearest; halfway goes up.</summary>
    public long BoardFeetHundredths => BoardFeet.HundredthsIn(BoardMeasure);

    /// <summary>
    /// What one board costs: price times length, or times board feet, rounded once to the nearest minor unit; halfway goes
    /// up. The board feet it is reckoned with are not rounded before.
    /// </summary>
    public Money BoardPrice =>
        Basis switch
        {
            PriceBasis.Each => Price,
            PriceBasis.PerFoot => Price with
            {
                MinorUnits = Times(Length.Ticks, Length.FromInches(12).Ticks),
            },
            PriceBasis.PerMetre => Price with
            {
                MinorUnits = Times(Length.Ticks, Length.FromMillimetres(1000).Ticks),
            },
            PriceBasis.PerBoardFoot => Price with
            {
                MinorUnits = Times(BoardMeasure.CubicTicks, BoardFeet.One.CubicTicks),
            },
            _ => throw new InvalidOperationException($"{Basis} is no price basis."),
        };

    private long Times(Int128 amount, Int128 unit) =>
        Rounded.ToNearest(Price.MinorUnits * amount, unit);
}

/// <summary>A seller and their price list.</summary>
/// <param name="Id">A key that stays the same while the seller is listed.</param>
/// <param name="Name">The seller's name.</param>
/// <param name="Currency">The ISO 4217 code of every price in the list.</param>
/// <param name="Stock">The list, in its own order.</param>
public sealed record SellerList(
    string Id,
    string Name,
    string Currency,
    IReadOnlyList<PricedStock> Stock
);
