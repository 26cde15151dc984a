using System.Numerics;
using System.Runtime.InteropServices;

namespace ShopClass.Core.Planning.Patterns;

/// <summary>
/// The linear programme over patterns: how many boards of each pattern, in fractions, so that at least the wanted pieces of
/// each size come out and as few boards as possible are used. A small dense primal simplex with the inverse of its basis;
/// the worth of a size is its dual value. The figures steer the search only: every bound is proven afterwards in whole numbers.
/// </summary>
internal sealed class CoverProgramme
{
    private const double Tiny = 1e-7;
    private readonly int rows;
    private readonly double[] inverse;
    private readonly double[] level;
    private readonly Pattern?[] basis;
    private readonly int[] slackRow;
    private readonly double[] column;
    private readonly double[] worth;

    /// <summary>Starts with a pattern of each size alone.</summary>
    public CoverProgramme(Lengths lengths, int variation)
    {
        rows = lengths.Sizes.Length;
        inverse = new double[rows * rows];
        level = new double[rows];
        basis = new Pattern?[rows];
        slackRow = new int[rows];
        column = new double[rows];
        worth = new double[rows];
        for (var i = 0; i < rows; i++)
        {
            var most = Math.Min(lengths.Counts[i], lengths.Board / lengths.Sizes[i]);
            basis[i] = new([i], [most]);
            inverse[(i * rows) + i] = 1.0 / most;
            // A little more than wanted, differently for each size: keeps the simplex from standing still.
            level[i] =
                (
                    lengths.Counts[i]
                    + (
                        1e-4
                        * (0.5 + ((i + 1) * (0.6180339887498949 + (variation * 0.41421356)) % 1))
                    )
                ) / most;
            worth[i] = 1.0 / most;
        }
    }

    /// <summary>What a piece of each size is worth in boards.</summary>
    public ReadOnlySpan<double> Worth => worth;

    /// <summary>Boards used, in fractions.</summary>
    public double Boards
    {
        get
        {
            var sum = 0.0;
            for (var i = 0; i < rows; i++)
                sum += basis[i] == null ? 0 : level[i];
            return sum;
        }
    }

    /// <summary>The patterns in use and how often.</summary>
    public IEnumerable<(Pattern Pattern, double Level)> Used()
    {
        for (var i = 0; i < rows; i++)
        {
            if (basis[i] is { } pattern && level[i] > 1e-7)
                yield return (pattern, level[i]);
        }
    }

    /// <summary>What a board less than one the pieces of a pattern are worth; negative when it should come in.</summary>
    public double Saving(Pattern pattern)
    {
        var sum = 1.0;
        for (var k = 0; k < pattern.Kinds.Length; k++)
            sum -= worth[pattern.Kinds[k]] * pattern.Counts[k];
        return sum;
    }

    /// <summary>The size most worth using as the next shorter one (or as nothing, for the shortest), and what each saves: below zero when it does.</summary>
    public (int Size, double Saving) Exchange()
    {
        var most = 0.0;
        var at = -1;
        for (var i = 0; i < rows; i++)
        {
            var saving = worth[i] - (i + 1 < rows ? worth[i + 1] : 0);
            if (saving < most)
                (most, at) = (saving, i);
        }

        return (at, most);
    }

    /// <summary>Takes a pattern into the basis.</summary>
    public void Enter(Pattern pattern)
    {
        Array.Clear(column);
        for (var k = 0; k < pattern.Kinds.Length; k++)
        {
            for (var i = 0; i < rows; i++)
                column[i] += inverse[(i * rows) + pattern.Kinds[k]] * pattern.Counts[k];
        }

        Pivot(pattern, -1, Saving(pattern));
    }

    /// <summary>Allows more of a size than wanted.</summary>
    public void EnterExchange(int row)
    {
        for (var i = 0; i < rows; i++)
            column[i] =
                (row + 1 < rows ? inverse[(i * rows) + row + 1] : 0) - inverse[(i * rows) + row];
        Pivot(null, row, worth[row] - (row + 1 < rows ? worth[row + 1] : 0));
    }

    private void Pivot(Pattern? pattern, int slack, double saving)
    {
        var leaving = Leaving();
        if (leaving < 0)
            return;
        var pivot = column[leaving];
        var step = level[leaving] / pivot;
        var row = inverse.AsSpan(leaving * rows, rows);
        Subtract(worth, row, -saving / pivot);
        for (var i = 0; i < rows; i++)
        {
            if (i == leaving || Math.Abs(column[i]) < 1e-12)
                continue;
            level[i] = Math.Max(0, level[i] - (column[i] * step));
            Subtract(inverse.AsSpan(i * rows, rows), row, column[i] / pivot);
        }

        for (var j = 0; j < rows; j++)
            row[j] /= pivot;
        level[leaving] = step;
        basis[leaving] = pattern;
        slackRow[leaving] = slack;
    }

    private int Leaving()
    {
        var leaving = -1;
        var least = double.MaxValue;
        for (var i = 0; i < rows; i++)
        {
            if (column[i] <= Tiny)
                continue;
            var ratio = level[i] / column[i];
            if (ratio < least - 1e-9 || (ratio < least + 1e-9 && column[i] > column[leaving]))
                (least, leaving) = (Math.Min(ratio, least), i);
        }

        return leaving;
    }

    private static void Subtract(Span<double> from, ReadOnlySpan<double> row, double times)
    {
        var wide = MemoryMarshal.Cast<double, Vector<double>>(from);
        var other = MemoryMarshal.Cast<double, Vector<double>>(row);
        var factor = new Vector<double>(times);
        for (var i = 0; i < wide.Length; i++)
            wide[i] -= factor * other[i];
        for (var i = wide.Length * Vector<double>.Count; i < from.Length; i++)
            from[i] -= times * row[i];
    }
}
