using ShopClass.Core.Measure;

namespace ShopClass.Core.Lumber;

/// <summary>A seller's nominal size and the dry dressed size it stands for (American Softwood Lumber Standard PS 20, Table 3).</summary>
/// <param name="Nominal">As sold: <c>1x10</c>.</param>
/// <param name="NominalThickness">The nominal thickness.</param>
/// <param name="NominalWidth">The nominal width.</param>
/// <param name="Thickness">Minimum dry dressed thickness.</param>
/// <param name="Width">Minimum dry dressed width.</param>
/// <param name="Basis">Read or remembered.</param>
/// <param name="Source">The published table.</param>
public sealed record DressedSize(
    string Nominal,
    Length NominalThickness,
    Length NominalWidth,
    Length Thickness,
    Length Width,
    Basis Basis,
    string Source
);

/// <summary>The dressed sizes of PS 20.</summary>
public static class DressedSizes
{
    private static readonly Lazy<IReadOnlyList<DressedSize>> Table = new(() =>
        [
            .. Csv.ReadEmbedded("dressed_sizes.csv")
                .Select(FromRow)
                .OrderBy(size => size.NominalThickness)
                .ThenBy(size => size.NominalWidth),
        ]
    );

    /// <summary>All, thinnest and narrowest first.</summary>
    /// <exception cref="InvalidDataException">The table that ships with the app is malformed.</exception>
    public static IReadOnlyList<DressedSize> All => Table.Value;

    /// <summary>
    /// The size whose nominal figures are exactly these: a board typed as 1 x 10 is most likely 3/4 x 9 1/4. Null when
    /// the figures are no nominal size.
    /// </summary>
    public static DressedSize? TypedAsNominal(Length thickness, Length width) =>
        All.FirstOrDefault(size =>
            size.NominalThickness == thickness && size.NominalWidth == width
        );

    private static DressedSize FromRow(CsvRow row) =>
        new(
            row.Required("nominal"),
            row.Inches("nominal_thickness_in"),
            row.Inches("nominal_width_in"),
            row.Inches("dry_thickness_in"),
            row.Inches("dry_width_in"),
            row.BasisIn("dry_basis"),
            row.Required("source")
        );
}
