namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>The most valuable set of strips beside each other, for every width at once.</summary>
internal sealed class SectionValues(int[] widths, int widest)
{
    private readonly long[] most = new long[widest + 1];
    private readonly short[] last = new short[widest + 1];

    /// <summary>The most value there is for a step of width, rounded up a little.</summary>
    public double MostPerWidth(long[] row)
    {
        var best = 0.0;
        for (var s = 0; s < widths.Length; s++)
            best = Math.Max(best, (double)row[s] / widths[s]);
        return best * (1 + 1e-9);
    }

    /// <summary>Fills the table for strips of these values; tells the looks it took.</summary>
    public long Fill(long[] row)
    {
        Array.Clear(most);
        Array.Fill(last, (short)-1);
        var before = 0L;
        var looks = 0L;
        for (var s = 0; s < widths.Length; s++)
        {
            // A wider strip that is worth no more than a narrower one is never needed.
            if (row[s] <= before)
                continue;
            before = row[s];
            looks += (widest - widths[s]) / 8;
            for (var y = widths[s]; y <= widest; y++)
            {
                var with = most[y - widths[s]] + row[s];
                if (with > most[y])
                {
                    most[y] = with;
                    last[y] = (short)s;
                }
            }
        }

        return looks;
    }

    /// <summary>The best value within a width.</summary>
    public long At(int width) => most[width];

    /// <summary>The strips that make up the best value within a width.</summary>
    public IEnumerable<int> Strips(long[] row, int width)
    {
        _ = Fill(row);
        var strips = new List<int>();
        for (var y = width; last[y] >= 0; y -= widths[last[y]])
            strips.Add(last[y]);
        return strips;
    }
}
