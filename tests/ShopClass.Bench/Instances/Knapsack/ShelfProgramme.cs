namespace ShopClass.Bench.Instances.Knapsack;

/// <summary>
/// The linear programme over shelves: the most profit within the board's length, each item's count and the branch's limits.
/// A dense primal simplex from the idle basis; a limit from below begins with a filler that costs more than it can bring.
/// </summary>
internal sealed class ShelfProgramme
{
    private const double Tiny = 1e-7;
    private readonly ShelfProblem problem;
    private readonly IReadOnlyList<Limit> limits;
    private readonly int rows;
    private readonly double[][] inverse;
    private readonly double[] level;
    private readonly double[] gain;
    private readonly Shelf?[] basis;
    private readonly bool[] filler;
    private readonly double[] column;

    public ShelfProgramme(ShelfProblem problem, IReadOnlyList<Limit> limits)
    {
        this.problem = problem;
        this.limits = limits;
        rows = 1 + problem.Items.Count + limits.Count;
        inverse = [.. Enumerable.Range(0, rows).Select(_ => new double[rows])];
        level = new double[rows];
        gain = new double[rows];
        basis = new Shelf?[rows];
        filler = new bool[rows];
        column = new double[rows];
        Prices = new double[rows];
        var dear = 10.0 * problem.Items.Sum(i => (double)i.Profit * i.Count);
        for (var r = 0; r < rows; r++)
        {
            inverse[r][r] = 1;
            // Each row a little looser than it is, and each differently: keeps the simplex from standing still.
            var looser = 1e-6 * (0.5 + ((r + 1) * 0.6180339887498949 % 1));
            level[r] = Limit(r) + (IsAtLeast(r) ? -looser : looser);
            if (!IsAtLeast(r))
                continue;
            (filler[r], gain[r], Prices[r]) = (true, -dear, -dear);
        }
    }

    /// <summary>What the last unit of each row is worth: length, items, limits.</summary>
    public double[] Prices { get; }

    public double Profit
    {
        get
        {
            var sum = 0.0;
            for (var r = 0; r < rows; r++)
                sum += gain[r] * level[r];
            return sum;
        }
    }

    public bool IsFeasible => !Enumerable.Range(0, rows).Any(r => filler[r] && level[r] > 1e-4);

    public IEnumerable<(Shelf Shelf, double Level)> Used() =>
        Enumerable
            .Range(0, rows)
            .Where(r => basis[r] != null && level[r] > 1e-5)
            .Select(r => (basis[r]!, level[r]));

    public double Saving(Shelf shelf)
    {
        var sum = problem.Profit(shelf) - (Prices[0] * problem.Heights[shelf.Height]);
        foreach (var i in shelf.Kinds)
            sum -= Prices[1 + i] * shelf.Counts[i];
        for (var l = 0; l < limits.Count; l++)
            sum -= Prices[1 + shelf.Counts.Length + l] * limits[l].Of(shelf);
        return sum;
    }

    /// <summary>Lets the row that gains most by it stay idle; false when none does.</summary>
    public bool EnterIdle(double above)
    {
        var (most, at) = (above, -1);
        for (var r = 0; r < rows; r++)
        {
            var saving = IsAtLeast(r) ? Prices[r] : -Prices[r];
            if (saving > most)
                (most, at) = (saving, r);
        }

        if (at < 0)
            return false;
        var sign = IsAtLeast(at) ? -1.0 : 1.0;
        for (var r = 0; r < rows; r++)
            column[r] = sign * inverse[r][at];
        Pivot(null, 0, most);
        return true;
    }

    public void Enter(Shelf shelf)
    {
        for (var r = 0; r < rows; r++)
        {
            var row = inverse[r];
            var sum = row[0] * problem.Heights[shelf.Height];
            foreach (var i in shelf.Kinds)
                sum += row[1 + i] * shelf.Counts[i];
            for (var l = 0; l < limits.Count; l++)
                sum += row[1 + shelf.Counts.Length + l] * limits[l].Of(shelf);
            column[r] = sum;
        }

        Pivot(shelf, problem.Profit(shelf), Saving(shelf));
    }

    /// <summary>Lets the one known that saves most come in, or the row that saves more by staying idle; false where neither saves enough.</summary>
    public bool EnterBest(IReadOnlyList<Shelf> known, double above)
    {
        var (most, best) = (above, (Shelf?)null);
        foreach (var shelf in known)
        {
            var saving = Saving(shelf);
            if (saving > most)
                (most, best) = (saving, shelf);
        }

        if (EnterIdle(most))
            return true;
        if (best != null)
            Enter(best);
        return best != null;
    }

    private bool IsAtLeast(int row) =>
        row > problem.Items.Count && limits[row - 1 - problem.Items.Count].AtLeast;

    private int Limit(int row) =>
        row == 0 ? problem.Length
        : row <= problem.Items.Count ? problem.Items[row - 1].Count
        : limits[row - 1 - problem.Items.Count].Number;

    private void Pivot(Shelf? shelf, double profit, double saving)
    {
        var (leaving, least) = (-1, double.MaxValue);
        for (var r = 0; r < rows; r++)
        {
            if (column[r] <= Tiny)
                continue;
            var ratio = level[r] / column[r];
            if (ratio < least - 1e-10 || (ratio < least + 1e-10 && column[r] > column[leaving]))
                (leaving, least) = (r, Math.Min(ratio, least));
        }

        if (leaving < 0)
            return;
        var (row, pivot) = (inverse[leaving], column[leaving]);
        var step = level[leaving] / pivot;
        for (var j = 0; j < rows; j++)
            row[j] /= pivot;
        for (var j = 0; j < rows; j++)
            Prices[j] += saving * row[j];
        for (var r = 0; r < rows; r++)
        {
            if (r == leaving || Math.Abs(column[r]) < 1e-12)
                continue;
            level[r] = Math.Max(0, level[r] - (column[r] * step));
            var (other, times) = (inverse[r], column[r]);
            for (var j = 0; j < rows; j++)
                other[j] -= times * row[j];
        }

        (level[leaving], basis[leaving], gain[leaving], filler[leaving]) = (
            step,
            shelf,
            profit,
            false
        );
    }
}
