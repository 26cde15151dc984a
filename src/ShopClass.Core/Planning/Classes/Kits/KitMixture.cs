using ShopClass.Core.Planning.Classes.Staged;
using ShopClass.Core.Planning.Search.Pricing;

namespace ShopClass.Core.Planning.Classes.Kits;

/// <summary>
/// So many kits on sets of boards in the cheapest proportion, finite boards shared out once, and the cost that this proves.
/// </summary>
/// <param name="Bound">A cost that all kits together do not go below; exact, whatever the programme's rounding.</param>
/// <param name="Used">The sets of the mixture, cheapest at its prices first.</param>
/// <param name="Prices">What one board of each kind is worth beyond its cost, because there are few.</param>
internal sealed record KitMixture(
    long Bound,
    IReadOnlyList<BoardSet> Used,
    IReadOnlyList<double> Prices
)
{
    private const long Unit = 1L << 20;
    private const int MostExchanges = 2_000;

    public static KitMixture Of(
        Cutting cutting,
        IReadOnlyList<int> planks,
        IReadOnlyList<BoardSet> sets,
        int kits,
        long ceiling
    )
    {
        int[] few =
        [
            .. planks.Where(p => !cutting.Planks[p].IsEndless && sets.Any(s => s.Numbers[p] > 0)),
        ];
        var prices = new long[cutting.Planks.Count];
        List<BoardSet> used = [];
        if (few.Length == 0)
        {
            used.AddRange(sets.OrderBy(s => s.Cost).Take(1));
        }
        else
        {
            var programme = Programme(cutting, few, sets, kits, ceiling);
            for (var f = 0; f < few.Length; f++)
                prices[few[f]] = (long)(Math.Max(0, -programme.Prices[1 + f]) * Unit);
            var first = 1 + few.Length;
            used.AddRange(
                programme.Used().Where(u => u.Column >= first).Select(u => sets[u.Column - first])
            );
        }

        Int128 Worth(BoardSet set)
        {
            var sum = (Int128)set.Cost * Unit;
            foreach (var p in few)
                sum += (Int128)set.Numbers[p] * prices[p];
            return sum;
        }

        var least = (Int128)ceiling * Unit;
        foreach (var set in sets)
            least = Int128.Min(least, Worth(set));
        var total = least * kits;
        foreach (var p in few)
            total -= (Int128)prices[p] * cutting.Planks[p].Copies;
        var bound = total <= 0 ? 0 : (long)((total + Unit - 1) / Unit);
        return new(
            ProvenBound.RoundedUp(cutting, bound),
            [.. used.OrderBy(Worth).ThenBy(s => s.Key, StringComparer.Ordinal)],
            [.. prices.Select(p => (double)p / Unit)]
        );
    }

    /// <summary>Rows: all kits, then every kind of board there are few of. Columns: the ceiling, what is left of each kind, the sets.</summary>
    private static Simplex Programme(
        Cutting cutting,
        int[] few,
        IReadOnlyList<BoardSet> sets,
        int kits,
        long ceiling
    )
    {
        var rows = 1 + few.Length;
        var simplex = new Simplex([kits, .. few.Select(p => (double)cutting.Planks[p].Copies)]);
        double[] Only(int row)
        {
            var column = new double[rows];
            column[row] = 1;
            return column;
        }

        simplex.Add(Only(0), ceiling);
        for (var f = 0; f < few.Length; f++)
            simplex.Add(Only(1 + f), 0);
        foreach (var set in sets)
            simplex.Add([1, .. few.Select(p => (double)set.Numbers[p])], set.Cost);
        simplex.Start([.. Enumerable.Range(0, rows)]);
        simplex.Solve(MostExchanges);
        return simplex;
    }
}
