namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>Sorts of wood that share no piece: each can be packed by itself, and costs and bounds add up.</summary>
internal static class Sorts
{
    /// <summary>The boards of each sort, in the order of the list.</summary>
    public static IReadOnlyList<IReadOnlyList<int>> Of(Cutting cutting)
    {
        int[] sort = [.. Enumerable.Range(0, cutting.Planks.Count)];
        for (var k = 0; k < cutting.Pieces.Count; k++)
        {
            var piece = k;
            int[] holding =
            [
                .. Enumerable
                    .Range(0, cutting.Planks.Count)
                    .Where(p => cutting.Ways[p].Any(f => f.Piece == piece)),
            ];
            foreach (var plank in holding.Skip(1))
                Join(sort, sort[holding[0]], sort[plank]);
        }

        return
        [
            .. Enumerable
                .Range(0, cutting.Planks.Count)
                .GroupBy(p => sort[p])
                .Select(g => (IReadOnlyList<int>)[.. g]),
        ];
    }

    private static void Join(int[] sort, int to, int from)
    {
        for (var p = 0; p < sort.Length; p++)
        {
            if (sort[p] == from)
                sort[p] = to;
        }
    }
}
