using ShopClass.Core.Lumber;

namespace ShopClass.Core.Drawings;

/// <summary>Cuts lines off where a piece of wood ends.</summary>
internal static class Clip
{
    /// <summary>The runs of a line that lie within a piece, cut where they cross its sides.</summary>
    public static IEnumerable<List<(double Along, double Across)>> Within(
        List<(double Along, double Across)> line,
        BoardRect piece,
        double pointsPerTick
    )
    {
        var low = (
            Along: piece.From.Ticks * pointsPerTick,
            Across: piece.Near.Ticks * pointsPerTick
        );
        var high = (Along: piece.To.Ticks * pointsPerTick, Across: piece.Far.Ticks * pointsPerTick);
        var run = new List<(double Along, double Across)>();
        for (var i = 1; i < line.Count; i++)
        {
            var (from, to) = Shares(line[i - 1], line[i], low, high);
            if (from >= to)
                continue;
            if (from > 0 || run.Count == 0)
            {
                if (run.Count > 1)
                    yield return run;
                run = [Between(line[i - 1], line[i], from)];
            }

            run.Add(Between(line[i - 1], line[i], to));
        }

        if (run.Count > 1)
            yield return run;
    }

    // Liang and Barsky, 1984: the share of a segment within a rectangle.
    private static (double From, double To) Shares(
        (double Along, double Across) a,
        (double Along, double Across) b,
        (double Along, double Across) low,
        (double Along, double Across) high
    )
    {
        var (along, across) = (
            Side(a.Along, b.Along, low.Along, high.Along),
            Side(a.Across, b.Across, low.Across, high.Across)
        );
        return (Math.Max(along.From, across.From), Math.Min(along.To, across.To));
    }

    private static (double From, double To) Side(double a, double b, double low, double high)
    {
        if (a == b)
            return low <= a && a <= high ? (0, 1) : (1, 0);
        var (first, second) = ((low - a) / (b - a), (high - a) / (b - a));
        return (Math.Max(0, Math.Min(first, second)), Math.Min(1, Math.Max(first, second)));
    }

    private static (double Along, double Across) Between(
        (double Along, double Across) a,
        (double Along, double Across) b,
        double share
    ) => (a.Along + (b.Along - a.Along) * share, a.Across + (b.Across - a.Across) * share);
}
