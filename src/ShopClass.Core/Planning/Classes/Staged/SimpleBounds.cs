namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>Bounds that need no search.</summary>
internal static class SimpleBounds
{
    /// <summary>A cost no packing goes below: by area, and with one kind of board by dual feasible functions.</summary>
    public static long Cost(Cutting cutting)
    {
        var area = (Int128)cutting.Pieces.Sum(p => p.Area * p.Count);
        if (area == 0)
            return 0;
        var least = cutting.Planks.Min(p => (long)CeilingOf(area * p.Cost, p.Area));
        if (cutting.Planks.Count > 1 || cutting.Pieces.Any(p => p.Ways.Count > 1))
            return least;
        var plank = cutting.Planks[0];
        (Way, int)[] pieces =
        [
            .. cutting
                .Pieces.Where(p => p.Count > 0)
                .Select(p =>
                    (
                        p.Ways[0] with
                        {
                            Across = Math.Min(p.Ways[0].Across, p.Ways[0].Bare),
                        },
                        p.Count
                    )
                ),
        ];
        return Math.Max(
            CeilingOf(least, plank.Cost) * plank.Cost,
            DualFeasible.FewestBoards(plank, pieces) * plank.Cost
        );
    }

    private static long CeilingOf(Int128 value, long divisor) =>
        divisor == 0 ? 0 : (long)((value + divisor - 1) / divisor);
}
