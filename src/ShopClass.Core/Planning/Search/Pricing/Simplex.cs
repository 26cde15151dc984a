namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// The revised simplex method for small linear programmes to which columns are added as they are found: least cost of
/// columns that add up to the given right side. Its prices are floating point; whoever uses them makes them safe.
/// </summary>
internal sealed class Simplex
{
    private const double Tiny = 1e-9;
    private const int PivotsBeforeFresh = 40;
    private const int DegenerateBeforeBland = 50;
    private readonly int rows;
    private readonly double[] right;
    private readonly List<double[]> columns = [];
    private readonly List<double> costs = [];
    private readonly double[][] inverse;
    private readonly double[] prices;
    private readonly double[] level;
    private int[] basis = [];
    private bool[] isBasic = [];
    private int sinceFresh;
    private int degenerate;

    public Simplex(double[] right)
    {
        this.right = right;
        rows = right.Length;
        inverse = [.. right.Select(_ => new double[rows])];
        prices = new double[rows];
        level = new double[rows];
    }

    /// <summary>Price of one unit of each row.</summary>
    public IReadOnlyList<double> Prices => prices;

    /// <summary>Adds a column and returns its index.</summary>
    public int Add(double[] column, double cost)
    {
        columns.Add(column);
        costs.Add(cost);
        return columns.Count - 1;
    }

    /// <summary>The columns used, each with how much of it.</summary>
    public IEnumerable<(int Column, double Level)> Used() =>
        basis.Select((column, row) => (column, level[row])).Where(u => u.Item2 > Tiny);

    /// <summary>Starts from these columns, which together must make a plan.</summary>
    public void Start(int[] first)
    {
        basis = first;
        Refresh();
    }

    /// <summary>Goes on until no column lowers the cost, or for so many exchanges.</summary>
    public void Solve(int most)
    {
        Array.Resize(ref isBasic, columns.Count);
        for (var i = 0; i < most; i++)
        {
            var entering = Entering();
            if (entering < 0 || !Exchange(entering))
                break;
        }
    }

    private int Entering()
    {
        var best = -1;
        var least = -Tiny;
        for (var j = 0; j < columns.Count; j++)
        {
            if (isBasic[j])
                continue;
            var column = columns[j];
            var gain = costs[j];
            for (var i = 0; i < rows; i++)
                gain -= prices[i] * column[i];
            if (gain >= least)
                continue;
            (best, least) = (j, gain);
            if (degenerate > DegenerateBeforeBland)
                break;
        }

        return best;
    }

    private bool Exchange(int entering)
    {
        var column = columns[entering];
        var along = new double[rows];
        for (var i = 0; i < rows; i++)
        {
            var row = inverse[i];
            var sum = 0.0;
            for (var k = 0; k < rows; k++)
                sum += row[k] * column[k];
            along[i] = sum;
        }

        var leaving = Leaving(along);
        if (leaving < 0)
            return false;
        degenerate = level[leaving] < Tiny ? degenerate + 1 : 0;
        isBasic[basis[leaving]] = false;
        isBasic[entering] = true;
        basis[leaving] = entering;
        if (++sinceFresh >= PivotsBeforeFresh)
            Refresh();
        else
            Pivot(leaving, along);
        return true;
    }

    private int Leaving(double[] along)
    {
        var leaving = -1;
        var least = double.MaxValue;
        for (var i = 0; i < rows; i++)
        {
            if (along[i] <= Tiny)
                continue;
            var ratio = Math.Max(0, level[i]) / along[i];
            var isTie = leaving >= 0 && Math.Abs(ratio - least) <= Tiny;
            if (isTie ? along[i] > along[leaving] : ratio < least)
                (leaving, least) = (i, ratio);
        }

        return leaving;
    }

    private void Pivot(int leaving, double[] along)
    {
        var row = inverse[leaving];
        var by = 1 / along[leaving];
        for (var k = 0; k < rows; k++)
            row[k] *= by;
        level[leaving] = Math.Max(0, level[leaving]) * by;
        for (var i = 0; i < rows; i++)
        {
            if (i == leaving || along[i] == 0)
                continue;
            var other = inverse[i];
            for (var k = 0; k < rows; k++)
                other[k] -= along[i] * row[k];
            level[i] -= along[i] * level[leaving];
        }

        Reprice();
    }

    private void Reprice()
    {
        Array.Clear(prices);
        for (var i = 0; i < rows; i++)
        {
            var cost = costs[basis[i]];
            if (cost == 0)
                continue;
            for (var k = 0; k < rows; k++)
                prices[k] += cost * inverse[i][k];
        }
    }

    /// <summary>Inverts the basis anew, so that roundings do not add up.</summary>
    private void Refresh()
    {
        sinceFresh = 0;
        isBasic = new bool[columns.Count];
        foreach (var column in basis)
            isBasic[column] = true;
        var work = new double[rows][];
        for (var i = 0; i < rows; i++)
        {
            work[i] = new double[rows];
            for (var j = 0; j < rows; j++)
                work[i][j] = columns[basis[j]][i];
            Array.Clear(inverse[i]);
            inverse[i][i] = 1;
        }

        for (var pivot = 0; pivot < rows; pivot++)
            Eliminate(work, pivot);
        for (var i = 0; i < rows; i++)
        {
            level[i] = 0;
            for (var k = 0; k < rows; k++)
                level[i] += inverse[i][k] * right[k];
        }

        Reprice();
    }

    private void Eliminate(double[][] work, int pivot)
    {
        var at = pivot;
        for (var i = pivot + 1; i < rows; i++)
        {
            if (Math.Abs(work[i][pivot]) > Math.Abs(work[at][pivot]))
                at = i;
        }

        (work[pivot], work[at]) = (work[at], work[pivot]);
        (inverse[pivot], inverse[at]) = (inverse[at], inverse[pivot]);
        var by = 1 / work[pivot][pivot];
        for (var k = 0; k < rows; k++)
        {
            work[pivot][k] *= by;
            inverse[pivot][k] *= by;
        }

        for (var i = 0; i < rows; i++)
        {
            var factor = work[i][pivot];
            if (i == pivot || factor == 0)
                continue;
            for (var k = 0; k < rows; k++)
            {
                work[i][k] -= factor * work[pivot][k];
                inverse[i][k] -= factor * inverse[pivot][k];
            }
        }
    }
}
