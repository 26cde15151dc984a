namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>
/// The cheapest mixture of all boards there could be for what is left to pack, no piece cut from a board more often than it
/// is left: of the boards known to begin with, and new ones as long as any gains (column generation).
/// </summary>
internal sealed class CountedMixture
{
    private const int MostTurns = 400;
    private readonly Cutting cutting;
    private readonly Settled settled;
    private readonly Effort effort;
    private readonly int[] rows;
    private readonly Master programme;
    private readonly BoardPool pool;
    private readonly HashSet<ulong> known = [];
    private readonly ulong[][] keys;
    private readonly Dictionary<Column, Column> whole = new(ReferenceEqualityComparer.Instance);

    /// <summary>What nothing that packs the rest goes below, as far as floating point can tell.</summary>
    private double least;

    /// <param name="cutting">What is to be cut from what.</param>
    /// <param name="open">The boards to begin with.</param>
    /// <param name="settled">What is settled already.</param>
    /// <param name="pool">Takes in the new boards.</param>
    /// <param name="effort">Counts the looks.</param>
    public CountedMixture(
        Cutting cutting,
        IEnumerable<Column> open,
        Settled settled,
        BoardPool pool,
        Effort effort
    )
    {
        this.cutting = cutting;
        this.settled = settled;
        this.pool = pool;
        this.effort = effort;
        keys = pool.Keys;
        rows = [.. Enumerable.Range(0, settled.Left.Length).Where(k => settled.Left[k] > 0)];
        programme = new(cutting, [.. rows.Select(k => settled.Left[k])], settled.Copies);
        Worths = new double[settled.Left.Length];
        foreach (var column in open)
            _ = Add(column);
    }

    /// <summary>What the mixture costs.</summary>
    public double Cost => programme.Value;

    /// <summary>What nothing that packs everything goes below, in whole numbers.</summary>
    public long Bound { get; private set; }

    /// <summary>What one more of each piece costs at the margin.</summary>
    public double[] Worths { get; }

    /// <summary>How often each board is used; only those above zero.</summary>
    public IReadOnlyList<(Column Column, double Times)> Levels =>
        [.. programme.Mixture().Select(m => (whole[m.Column], m.Times))];

    /// <summary>Adds new boards until none gains; false where the rest must cost more than a limit or the steps are up.</summary>
    /// <param name="pricing">Finds the boards.</param>
    /// <param name="limit">The limit.</param>
    /// <param name="mostNodes">How long it is looked for a board that gains before it is taken that there is none.</param>
    public bool Generate(CountedPricing pricing, double limit, int mostNodes)
    {
        for (var turn = 0; turn < MostTurns; turn++)
        {
            if (!effort.Take(programme.Solve() / 4))
                return false;
            for (var r = 0; r < rows.Length; r++)
                Worths[rows[r]] = Math.Max(0, programme.Duals[r]);
            var (values, unit) = ProvenBound.Whole(cutting, Worths);
            var cost = cutting.Planks[0].Cost * unit;
            // Less than a millionth of a board is not worth another turn.
            var found = pricing.Better(
                values,
                settled.Left,
                cost + cost / 1_000_000,
                mostNodes,
                effort,
                out var most
            );
            least = Math.Max(least, Cost / Math.Max(1, (double)most / cost));
            Bound = Math.Max(Bound, ProvenBound.Of(cutting, values, unit, [most]));
            if (least > limit + 1e-5 * cutting.Planks[0].Cost)
                return false;
            var any = false;
            foreach (var board in found)
                any |= Take(board);
            if (!any)
                return true;
        }

        return false;
    }

    /// <summary>How much more a board costs than what is on it is worth.</summary>
    public double LossOf(Column column)
    {
        double loss = column.Cost;
        foreach (var k in rows)
            loss -= Math.Min(settled.Left[k], column.Counts[k]) * Worths[k];
        return loss;
    }

    private bool Take(CutBoard board)
    {
        var column = Column.Of(cutting, board);
        pool.Add([board]);
        return Add(column);
    }

    private bool Add(Column column)
    {
        int[] counts = [.. rows.Select(k => Math.Min(settled.Left[k], column.Counts[k]))];
        var key = 0UL;
        for (var r = 0; r < rows.Length; r++)
        {
            for (var n = 0; n < counts[r]; n++)
                key = unchecked(key + keys[rows[r]][n]);
        }

        if (key == 0 || !known.Add(key))
            return false;
        var part = new Column(column.Board, counts, column.Cost);
        whole.Add(part, column);
        programme.Add(part);
        return true;
    }
}
