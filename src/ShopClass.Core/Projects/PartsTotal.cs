using ShopClass.Core.Measure;

namespace ShopClass.Core.Projects;

/// <summary>What a parts list adds up to, at finished sizes: no kerf, allowance or waste in it.</summary>
/// <param name="Pieces">How many pieces of wood.</param>
/// <param name="Wood">Their volume.</param>
/// <param name="Faces">The area of one face of each.</param>
public readonly record struct PartsTotal(int Pieces, Volume Wood, Area Faces)
{
    /// <summary>The total of these parts.</summary>
    public static PartsTotal Of(IEnumerable<Part> parts) =>
        parts.Aggregate(default(PartsTotal), (total, part) => total.And(part));

    private PartsTotal And(Part part)
    {
        var (thickness, width, length) = part.Finished;
        return new(
            Pieces + part.Quantity,
            Wood + Volume.Of(thickness, width, length) * part.Quantity,
            Faces + width * (length * part.Quantity)
        );
    }
}
