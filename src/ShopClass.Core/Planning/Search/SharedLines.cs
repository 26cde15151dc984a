namespace ShopClass.Core.Planning.Search;

/// <summary>
/// Lays the blanks of a section's strips in such orders that as many crosscut lines as possible fall on the same places:
/// these are marked once, right across.
/// </summary>
internal static class SharedLines
{
    private const int MostOrders = 600;

    /// <summary>The fewest different lines inside a section; never more than that, and less only where there are too many orders to try.</summary>
    public static int Fewest(IReadOnlyList<StripOption> strips, long length, long leeway)
    {
        var sum = 0;
        var most = 0;
        var strip1 = -1;
        var several = false;
        for (var i = 0; i < strips.Count; i++)
        {
            var cuts = Cuts(strips[i], length, leeway);
            sum += cuts;
            most = Math.Max(most, cuts);
            several |= cuts > 0 && strip1 >= 0;
            strip1 = cuts > 0 ? i : strip1;
        }

        if (!several || !MayShare(strips, length, leeway))
            return sum;
        return Search(strips, length, leeway, most)?.Lines ?? most;
    }

    /// <summary>Orders of each strip's blanks that give the fewest lines.</summary>
    public static IReadOnlyList<IReadOnlyList<Lie>> Orders(
        IReadOnlyList<StripOption> strips,
        long length,
        long leeway
    )
    {
        var most = strips.Max(s => Cuts(s, length, leeway));
        return strips.Count == 1 || !MayShare(strips, length, leeway)
            ? [.. strips.Select(s => s.Blanks)]
            : Search(strips, length, leeway, most)?.Orders ?? [.. strips.Select(s => s.Blanks)];
    }

    /// <summary>Crosscuts in a strip of a section this long.</summary>
    public static int Cuts(StripOption strip, long length, long leeway) =>
        strip.Blanks.Count - 1 + (length - strip.Length > leeway ? 1 : 0);

    private static bool MayShare(IReadOnlyList<StripOption> strips, long length, long leeway)
    {
        for (var i = 1; i < strips.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (Meet(strips[i].Ends, strips[j].Ends, length - leeway))
                    return true;
            }
        }

        return false;
    }

    /// <summary>Whether two sorted lists share a place short of the section's end.</summary>
    private static bool Meet(long[] a, long[] b, long before)
    {
        int i = 0,
            j = 0;
        while (i < a.Length && j < b.Length && a[i] < before && b[j] < before)
        {
            if (a[i] == b[j])
                return true;
            if (a[i] < b[j])
                i++;
            else
                j++;
        }

        return false;
    }

    /// <summary>Tries the orders strip by strip, and stops where no fewer lines are possible.</summary>
    private static (int Lines, IReadOnlyList<IReadOnlyList<Lie>> Orders)? Search(
        IReadOnlyList<StripOption> strips,
        long length,
        long leeway,
        int least
    )
    {
        var product = 1L;
        foreach (var strip in strips)
            product *= strip.Orders.Count;
        if (product > MostOrders)
            return null;
        var trial = new Trial(strips, length - leeway, least);
        trial.Try(0, 0);
        return (trial.Best, trial.BestOrders);
    }

    private sealed class Trial(IReadOnlyList<StripOption> strips, long before, int least)
    {
        private readonly long[] marks = new long[strips.Sum(s => s.Blanks.Count)];
        private readonly StripOrder[] orders = new StripOrder[strips.Count];

        public int Best { get; private set; } = int.MaxValue;
        public IReadOnlyList<IReadOnlyList<Lie>> BestOrders { get; private set; } = [];

        public void Try(int strip, int count)
        {
            if (count >= Best || Best == least)
                return;
            if (strip == orders.Length)
            {
                Best = count;
                BestOrders = [.. orders.Select(o => o.Blanks)];
                return;
            }

            foreach (var order in strips[strip].Orders)
            {
                orders[strip] = order;
                Try(strip + 1, Mark(order, strips[strip].Length, count));
            }
        }

        private int Mark(StripOrder order, long stripLength, int count)
        {
            foreach (var end in order.Ends)
            {
                var isCut = end < stripLength || end < before;
                if (isCut && Array.IndexOf(marks, end, 0, count) < 0)
                    marks[count++] = end;
            }

            return count;
        }
    }
}
