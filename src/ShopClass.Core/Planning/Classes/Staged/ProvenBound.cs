namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>
/// A cost no packing goes below, from whole-number prices for the pieces: whatever the prices, if no way to cut a board
/// yields more than the board costs, the pieces together are worth no more than any packing. (Weak duality; finite boards
/// that yield more lower the bound by the difference, each once.)
/// </summary>
internal static class ProvenBound
{
    private const long Fine = 1L << 40;

    /// <summary>The prices as whole numbers, and how many of them make one unit of cost.</summary>
    public static (long[] Values, long Unit) Whole(Cutting cutting, IReadOnlyList<double> duals)
    {
        var most = Math.Max(1, cutting.Planks.Max(p => p.Cost));
        var unit = Math.Max(1, Fine / most);
        long[] values =
        [
            .. Enumerable
                .Range(0, cutting.Pieces.Count)
                .Select(k => (long)Math.Max(0, Math.Min(duals[k], 4.0 * most) * unit)),
        ];
        return (values, unit);
    }

    /// <summary>The bound these prices prove.</summary>
    /// <param name="cutting">What is cut from what.</param>
    /// <param name="values">The prices of the pieces.</param>
    /// <param name="unit">How many of them make one unit of cost.</param>
    /// <param name="most">The most that one board of each kind can yield at these prices.</param>
    public static long Of(
        Cutting cutting,
        IReadOnlyList<long> values,
        long unit,
        IReadOnlyList<long> most
    )
    {
        Int128 worth = 0;
        for (var k = 0; k < values.Count; k++)
            worth += (Int128)values[k] * cutting.Pieces[k].Count;
        // Where an endless kind yields more than it costs, all prices are lowered by the same share until it does not.
        var (over, under) = ((Int128)1, (Int128)1);
        for (var p = 0; p < most.Count; p++)
        {
            var cost = (Int128)cutting.Planks[p].Cost * unit;
            if (!cutting.Planks[p].IsEndless || most[p] <= 0)
                continue;
            if (cost == 0)
                return 0;
            if (most[p] * under > over * cost)
                (over, under) = (most[p], cost);
        }

        var bound = worth * under / over;
        for (var p = 0; p < most.Count; p++)
        {
            if (cutting.Planks[p].IsEndless)
                continue;
            var gain = (most[p] * under + over - 1) / over - (Int128)cutting.Planks[p].Cost * unit;
            if (gain > 0)
                bound -= gain * cutting.Planks[p].Copies;
        }

        return bound <= 0 ? 0 : RoundedUp(cutting, (long)((bound + unit - 1) / unit));
    }

    /// <summary>Costs are sums of the boards' costs, so what divides all of these divides them.</summary>
    public static long RoundedUp(Cutting cutting, long bound)
    {
        var step = 0L;
        foreach (var plank in cutting.Planks)
        {
            var (a, b) = (step, plank.Cost);
            while (b != 0)
                (a, b) = (b, a % b);
            step = a;
        }

        return step <= 1 ? bound : (bound + step - 1) / step * step;
    }
}
