using ShopClass.Core.Measure;

namespace ShopClass.Core.Lumber;

/// <summary>A hardwood thickness by its name in quarters of an inch and what it measures (Wood Handbook, Table 6-3).</summary>
/// <param name="Quarters">As sold: <c>5/4</c>.</param>
/// <param name="Rough">Rough thickness, which board feet are counted on.</param>
/// <param name="SurfacedTwoSides">Thickness surfaced two sides.</param>
/// <param name="Basis">Read or remembered.</param>
/// <param name="Source">The published table.</param>
public sealed record HardwoodThickness(
    string Quarters,
    Length Rough,
    Length SurfacedTwoSides,
    Basis Basis,
    string Source
)
{
    private static readonly Lazy<IReadOnlyList<HardwoodThickness>> Table = new(() =>
        [
            .. Csv.ReadEmbedded("hardwood_thickness.csv")
                .Where(row => row["quarters"].Length > 0)
                .Select(row => new HardwoodThickness(
                    row.Required("quarters"),
                    row.Inches("rough_thickness_in"),
                    row.Inches("s2s_thickness_in"),
                    row.BasisIn("basis"),
                    row.Required("source")
                )),
        ]
    );

    /// <summary>All that are named in quarters, thinnest first.</summary>
    /// <exception cref="InvalidDataException">The table that ships with the app is malformed.</exception>
    public static IReadOnlyList<HardwoodThickness> All => Table.Value;

    /// <summary>The thickness of this name, or null.</summary>
    public static HardwoodThickness? Named(string quarters) =>
        All.FirstOrDefault(t => t.Quarters == quarters);

    /// <summary>What a board of this name measures, surfaced like this.</summary>
    public Length Actual(Surfacing surfacing) =>
        surfacing is Surfacing.Rough ? Rough : SurfacedTwoSides;
}
