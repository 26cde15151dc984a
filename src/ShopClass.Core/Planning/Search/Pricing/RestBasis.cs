namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>The basis of a small linear programme: which columns are mixed, how much of each, and the price of each row.</summary>
/// <param name="most">The most rows.</param>
internal sealed class RestBasis(int most)
{
    private const double Tiny = 1e-9;
    private const double Tie = 1e-12;
    private readonly double[] inverse = new double[most * most];
    private readonly int[] columns = new int[most];

    /// <summary>How many rows there are.</summary>
    public int Rows { get; private set; }

    /// <summary>How much of each row's column there is.</summary>
    public double[] Levels { get; } = new double[most];

    /// <summary>Price of one unit of each row.</summary>
    public double[] Prices { get; } = new double[most];

    /// <summary>What the entering column takes of each row's column.</summary>
    public double[] Along { get; } = new double[most];

    /// <summary>The column of a row, or -1 where it is still the row's own.</summary>
    public int Column(int row) => columns[row];

    /// <summary>A row of the inverse.</summary>
    public ReadOnlySpan<double> Row(int row) => inverse.AsSpan(row * most, Rows);

    /// <summary>Starts with each row's own column; levels and prices are to be set.</summary>
    public void Start(int rows)
    {
        Rows = rows;
        Array.Clear(inverse);
        Array.Fill(columns, -1);
        for (var i = 0; i < rows; i++)
            inverse[i * most + i] = 1;
    }

    /// <summary>Takes in a column that gains so much by the unit, <see cref="Along"/> being set.</summary>
    public void Exchange(int column, double gain)
    {
        var leaving = Leaving();
        if (leaving < 0)
            return;
        var pivot = inverse.AsSpan(leaving * most, Rows);
        var by = 1 / Along[leaving];
        for (var k = 0; k < Rows; k++)
        {
            pivot[k] *= by;
            Prices[k] += gain * pivot[k];
        }

        var step = Levels[leaving] *= by;
        for (var i = 0; i < Rows; i++)
        {
            var factor = Along[i];
            if (i == leaving || Math.Abs(factor) < Tie)
                continue;
            var row = inverse.AsSpan(i * most, Rows);
            for (var k = 0; k < Rows; k++)
                row[k] -= factor * pivot[k];
            Levels[i] = Math.Max(0, Levels[i] - factor * step);
        }

        columns[leaving] = column;
    }

    private int Leaving()
    {
        var leaving = -1;
        var least = double.MaxValue;
        for (var i = 0; i < Rows; i++)
        {
            if (Along[i] <= Tiny)
                continue;
            var ratio = Levels[i] / Along[i];
            if (ratio < least - Tie || (ratio < least + Tie && Along[i] > Along[leaving]))
                (least, leaving) = (Math.Min(ratio, least), i);
        }

        return leaving;
    }
}
