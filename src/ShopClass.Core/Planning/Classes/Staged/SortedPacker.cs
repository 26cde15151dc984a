namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>Packs each sort of wood by itself, and all that can be packed where not everything can.</summary>
internal static class SortedPacker
{
    /// <summary>Boards cut up, and a cost nothing goes below.</summary>
    /// <param name="layouts">What is to be cut from what.</param>
    /// <param name="bounds">The same with boards at least as good, for bounds.</param>
    /// <param name="effort">The steps there are.</param>
    /// <param name="progress">Told of cheaper packings of a sort.</param>
    public static (IReadOnlyList<CutBoard> Boards, long Bound) Run(
        Cutting layouts,
        Cutting bounds,
        Effort effort,
        IProgress<StagedProgress>? progress
    )
    {
        var boards = new List<CutBoard>();
        var bound = 0L;
        var sorts = Sorts.Of(bounds);
        for (var s = 0; s < sorts.Count; s++)
        {
            int[] planks = [.. sorts[s].Where(p => bounds.Planks[p].Copies > 0)];
            int[] pieces = [.. Pieces(bounds, planks)];
            if (pieces.Length == 0)
                continue;
            var layout = new Sort(layouts, planks, pieces, nowhere: true);
            var ideal = new Sort(bounds, planks, pieces, nowhere: false);
            var packed = new Packer(
                layout.Cutting,
                ideal.Cutting,
                effort.Share(sorts.Count - s),
                progress
            ).Run();
            List<CutBoard> real = [.. packed.Boards.Select(layout.Back).OfType<CutBoard>()];
            boards.AddRange(real);
            bound += Math.Min(packed.Bound, layouts.CostOf(real));
        }

        return (boards, bound);
    }

    private static IEnumerable<int> Pieces(Cutting cutting, int[] planks) =>
        Enumerable
            .Range(0, cutting.Pieces.Count)
            .Where(k =>
                cutting.Pieces[k].Count > 0
                && planks.Any(p => cutting.Ways[p].Any(fit => fit.Piece == k))
            );
}
