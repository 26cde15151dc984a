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
    /// <summary>All, thinnest and narrowest first.</summary>
    public static IReadOnlyList<DressedSize> All => throw new NotImplementedException();

    /// <summary>
    /// The size whose nominal figures are exactly these: a board typed as 1 x 10 is most likely 3/4 x 9 1/4. Null when
    /// the figures are no nominal size.
    /// </summary>
    public static DressedSize? TypedAsNominal(Length thickness, Length width) =>
        throw new NotImplementedException();
}
