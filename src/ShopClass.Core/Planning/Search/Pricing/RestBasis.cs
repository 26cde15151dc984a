namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>The basis of a small linear programme: which columns are mixed, how much of each, and the price of each row.</summary>
/// <param name="rows">How many rows there are.</param>
internal sealed class RestBasis(int rows)
{
    private const double Tiny = 1e-9;
    private const double Tie = 1e-12;
    private readonly double[] inverse = new double[rows * rows];

    /// <summary>How many rows there are.</summary>
    public int Rows => rows;

    /// <summary>How much of each row's column there is.</summary>
    public double[] Levels { get; } = new double[rows];

    /// <summary>Price of one unit of each row.</summary>
    public double[] Prices { get; } = new double[rows];

    /// <summary>What the entering column takes of each row's column.</summary>
    public double[] Along { get; } = new double[rows];

    /// <summary>A row of the inverse.</summary>
    public ReadOnlySpan<double> Row(int row) => inverse.AsSpan(row * rows, rows);

    /// <summary>Starts with each row's own column; levels and prices are to be set.</summary>
    public void Start()
    {
        Array.Clear(inverse);
        for (var i = 0; i < rows; i++)
            inverse[i * rows + i] = 1;
    }

    /// <summary>Takes in a column that gains so much by the unit, <see cref="Along"/> being set.</summary>
    public void Exchange(double gain)
    {
        var leaving = Leaving();
        if (leaving < 0)
            return;
        var pivot = inverse.AsSpan(leaving * rows, rows);
        var by = 1 / Along[leaving];
        for (var k = 0; k < rows; k++)
        {
            pivot[k] *= by;
            Prices[k] += gain * pivot[k];
        }

        var step = Levels[leaving] *= by;
        for (var i = 0; i < rows; i++)
        {
            var factor = Along[i];
            if (i == leaving || Math.Abs(factor) < Tie)
                continue;
            var row = inverse.AsSpan(i * rows, rows);
            for (var k = 0; k < rows; k++)
                row[k] -= factor * pivot[k];
            Levels[i] = Math.Max(0, Levels[i] - factor * step);
        }
    }

    private int Leaving()
    {
        var leaving = -1;
        var least = double.MaxValue;
        for (var i = 0; i < rows; i++)
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
