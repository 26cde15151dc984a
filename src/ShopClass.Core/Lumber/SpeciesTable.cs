using System.Collections.Frozen;

namespace ShopClass.Core.Lumber;

/// <summary>Whether a figure was read in its source or is remembered.</summary>
public enum Basis
{
    /// <summary>Read in a stored copy of the source.</summary>
    Read,

    /// <summary>Remembered from the named source; shown as "from memory".</summary>
    Memory,
}

/// <summary>A figure with where it comes from.</summary>
/// <param name="Value">The figure.</param>
/// <param name="Basis">Read or remembered.</param>
/// <param name="Source">The published table, by its number.</param>
public sealed record SourcedFigure(decimal Value, Basis Basis, string Source);

/// <summary>A species and its published figures (Wood Handbook, FPL-GTR-190 and FPL-GTR-282). Null where no source gives one.</summary>
public sealed record Species
{
    /// <summary>Key, stable across versions: <c>eastern-white-pine</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Common name.</summary>
    public required string CommonName { get; init; }

    /// <summary>Botanical name.</summary>
    public required string ScientificName { get; init; }

    /// <summary>Whether the trade sells it as a hardwood.</summary>
    public required bool IsHardwood { get; init; }

    /// <summary>Specific gravity at 12 % moisture content.</summary>
    public SourcedFigure? SpecificGravity12 { get; init; }

    /// <summary>Side hardness at 12 %, newtons.</summary>
    public SourcedFigure? SideHardnessNewtons { get; init; }

    /// <summary>Shrinkage green to oven-dry, radial, per cent.</summary>
    public SourcedFigure? ShrinkageRadial { get; init; }

    /// <summary>Shrinkage green to oven-dry, tangential, per cent.</summary>
    public SourcedFigure? ShrinkageTangential { get; init; }

    /// <summary>Change of a quartersawn width for each per cent of moisture content from 6 to 14 %, as a share of it.</summary>
    public SourcedFigure? MovementRadial { get; init; }

    /// <summary>The same for a flatsawn width, which moves more.</summary>
    public SourcedFigure? MovementTangential { get; init; }

    /// <summary>
    /// Whether its dust is known to sensitise (common practice; from memory). False says only that it is not among the
    /// woods commonly named; any dust can irritate.
    /// </summary>
    public bool IsSensitiser { get; init; }
}

/// <summary>The species the app knows, read once from the table that ships with it.</summary>
public static class SpeciesTable
{
    // Woods commonly named for sensitising dust, western redcedar above all: common practice, from memory.
    private static readonly FrozenSet<string> Sensitisers = FrozenSet.Create(
        StringComparer.Ordinal,
        "western-redcedar",
        "northern-white-cedar",
        "eastern-redcedar",
        "incense-cedar",
        "port-orford-cedar",
        "redwood-old-growth",
        "redwood-young-growth",
        "african-mahogany",
        "mahogany",
        "sapele",
        "spanish-cedar",
        "teak"
    );

    private static readonly Lazy<IReadOnlyList<Species>> Table = new(ReadTable);

    private static readonly Lazy<FrozenDictionary<string, Species>> ById = new(() =>
        All.ToFrozenDictionary(s => s.Id, StringComparer.Ordinal)
    );

    /// <summary>All, by common name.</summary>
    /// <exception cref="InvalidDataException">The table that ships with the app is malformed.</exception>
    public static IReadOnlyList<Species> All => Table.Value;

    /// <summary>The species with this key, or null.</summary>
    public static Species? Find(string id) => ById.Value.GetValueOrDefault(id);

    private static IReadOnlyList<Species> ReadTable() =>
        [
            .. Csv.ReadEmbedded("species.csv")
                .Select(FromRow)
                .OrderBy(s => s.CommonName, StringComparer.OrdinalIgnoreCase)
                .ThenBy(s => s.Id, StringComparer.Ordinal),
        ];

    private static Species FromRow(CsvRow row) =>
        new()
        {
            Id = row.Required("id"),
            CommonName = row.Required("common_name"),
            ScientificName = row.Required("scientific_name"),
            IsHardwood = row.Is("kind", "hardwood", "softwood"),
            SpecificGravity12 = row.Figure("sg_12", "sg_12_basis", "sg_12_source"),
            SideHardnessNewtons = row.Figure(
                "side_hardness_12_n",
                "side_hardness_12_n_basis",
                "side_hardness_12_n_source"
            ),
            ShrinkageRadial = row.Figure("shrink_radial_pct", "shrink_basis", "shrink_source"),
            ShrinkageTangential = row.Figure(
                "shrink_tangential_pct",
                "shrink_basis",
                "shrink_source"
            ),
            MovementRadial = row.Figure("cr_per_pct_mc", "coeff_basis", "coeff_source"),
            MovementTangential = row.Figure("ct_per_pct_mc", "coeff_basis", "coeff_source"),
            IsSensitiser = Sensitisers.Contains(row["id"]),
        };
}
