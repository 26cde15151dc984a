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

    /// <summary>Whether its dust is known to sensitise (common practice; from memory).</summary>
    public bool IsSensitiser { get; init; }
}

/// <summary>The species the app knows.</summary>
public static class SpeciesTable
{
    /// <summary>All, by common name.</summary>
    public static IReadOnlyList<Species> All => throw new NotImplementedException();

    /// <summary>The species with this key, or null.</summary>
    public static Species? Find(string id) => throw new NotImplementedException();
}
