using ShopClass.Core.Measure;

namespace ShopClass.Core.Projects;

/// <summary>Pieces laid side by side and marked to length at once, so that they come out equal.</summary>
/// <param name="Length">Their finished length.</param>
/// <param name="Parts">The parts, in the order of the parts list.</param>
public sealed record GangMark(Length Length, IReadOnlyList<Part> Parts)
{
    /// <summary>How many pieces.</summary>
    public int Pieces => Parts.Sum(p => p.Quantity);

    /// <summary>The pieces as they are marked on the wood: A1, A2, B1.</summary>
    public IEnumerable<string> Names =>
        from part in Parts
        from copy in Enumerable.Range(1, part.Quantity)
        select $"{part.Letter}{copy}";
}

/// <summary>Which pieces to mark together (common practice: likes are made equal before they are made exact).</summary>
public static class GangMarking
{
    /// <summary>
    /// Groups of at least two pieces of one finished length and thickness, in the order of the parts list. Where the length
    /// stays open, it is not marked with the others.
    /// </summary>
    public static IReadOnlyList<GangMark> GroupsIn(IReadOnlyList<Part> parts) =>
        [
            .. parts
                .Where(p => p.ExtraFor(PartDimension.Length) == Length.Zero)
                .GroupBy(p => (p.Finished.Length, p.Finished.Thickness))
                .Select(g => new GangMark(g.Key.Length, [.. g]))
                .Where(g => g.Pieces > 1),
        ];
}
