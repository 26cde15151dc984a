using System.Numerics;
using System.Runtime.InteropServices;

namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>Sums of rows of figures, several figures at a time; each by itself, so that any machine gets the same.</summary>
internal static class Rows
{
    /// <summary>Adds a multiple of one row to another.</summary>
    public static void Add(double[] to, double[] row, double times)
    {
        var many = MemoryMarshal.Cast<double, Vector<double>>(to.AsSpan());
        var others = MemoryMarshal.Cast<double, Vector<double>>(row.AsSpan());
        for (var v = 0; v < many.Length; v++)
            many[v] += others[v] * times;
        for (var i = many.Length * Vector<double>.Count; i < to.Length; i++)
            to[i] += row[i] * times;
    }

    /// <summary>Divides a row.</summary>
    public static void Divide(double[] row, double by)
    {
        var many = MemoryMarshal.Cast<double, Vector<double>>(row.AsSpan());
        for (var v = 0; v < many.Length; v++)
            many[v] /= by;
        for (var i = many.Length * Vector<double>.Count; i < row.Length; i++)
            row[i] /= by;
    }
}
