namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>
/// Bounds on the number of equal boards by dual feasible functions: sizes are changed so that whatever fits beside each
/// other still does, and areas are counted afterwards (Fekete and Schepers 2004; Carlier, Clautiaux and Moukrim 2007).
/// </summary>
internal static class DualFeasible
{
    private const int MostFunctions = 160;

    /// <summary>The fewest boards any packing needs, guillotine or not, without turning.</summary>
    public static int FewestBoards(Plank plank, IReadOnlyList<(Way Way, int Count)> pieces)
    {
        var along = Changed(plank.Length, [.. pieces.Select(p => p.Way.Along)]);
        var across = Changed(plank.Width, [.. pieces.Select(p => p.Way.Across)]);
        var best = 0L;
        foreach (var (a, capA) in along)
        {
            foreach (var (b, capB) in across)
            {
                var sum = 0L;
                for (var i = 0; i < a.Length; i++)
                    sum += a[i] * b[i] * pieces[i].Count;
                var whole = capA * capB;
                if (whole > 0)
                    best = Math.Max(best, (sum + whole - 1) / whole);
            }
        }

        return (int)best;
    }

    private static List<(long[] Sizes, long Whole)> Changed(int whole, int[] sizes)
    {
        var functions = new List<(long[], long)>();
        int[] corners = [.. sizes.Concat(sizes.Select(s => whole - s + 1)).Distinct().Order()];
        functions.Add(([.. sizes.Select(s => (long)s)], whole));
        foreach (var least in corners.Where(c => c > 0 && 2 * c <= whole).Take(MostFunctions))
            functions.Add(([.. sizes.Select(s => Kept(s, whole, least))], whole));
        foreach (var k in corners.Where(c => c > 0 && 2 * c <= whole).Take(MostFunctions))
            functions.Add(([.. sizes.Select(s => Counted(s, whole, k))], 2L * (whole / k)));
        for (var k = 1; k <= 6; k++)
            functions.Add(([.. sizes.Select(s => Rounded(s, whole, k))], (long)whole * k));
        return functions;
    }

    /// <summary>What is nearly whole counts as whole, what is small as nothing.</summary>
    private static long Kept(int size, int whole, int least) =>
        size > whole - least ? whole
        : size < least ? 0
        : size;

    /// <summary>How many pieces of k it takes away from the board.</summary>
    private static long Counted(int size, int whole, int k) =>
        (2 * size).CompareTo(whole) switch
        {
            > 0 => 2L * (whole / k - (whole - size) / k),
            0 => whole / k,
            _ => 2L * (size / k),
        };

    private static long Rounded(int size, int whole, int k)
    {
        var times = (long)size * (k + 1);
        return times % whole == 0 ? (long)size * k : times / whole * whole;
    }
}
