namespace ShopClass.Core.Planning.Search.BadPlaces;

/// <summary>How sections' strips can lie across a board, and which bad places they meet there.</summary>
internal sealed class SectionWays(Stock stock, long keepable, Steps steps)
{
    private readonly Across across = new(stock, keepable);
    private readonly Dictionary<(SectionOption, int), IReadOnlyList<Arrangement>> ways = new(
        new ByReference<SectionOption, int>()
    );
    private readonly Dictionary<(SectionOption, int), List<(int, int[])>> kinds = new(
        new ByReference<SectionOption, int>()
    );

    /// <summary>The ways to lay its strips across where it may meet these bad places (bits).</summary>
    public IReadOnlyList<Arrangement> All(SectionOption option, int bad)
    {
        if (!ways.TryGetValue((option, bad), out var found))
        {
            found = across.Of(option.Strips, bad);
            steps.Take(found.Count);
            ways.Add((option, bad), found);
        }

        return found;
    }

    /// <summary>Those of its ways that no other is at least as good as: rips, and the bad places each strip meets (bits).</summary>
    public IReadOnlyList<(int Rips, int[] Meets)> Kinds(SectionOption option, int bad)
    {
        if (kinds.TryGetValue((option, bad), out var kept))
            return kept;
        kept = [];
        foreach (var way in All(option, bad))
        {
            var meets = way.Bands.Select(b => Meets(b, bad)).ToArray();
            if (kept.Exists(k => IsAsGood(k, (way.Rips, meets))))
                continue;
            kept.RemoveAll(k => IsAsGood((way.Rips, meets), k));
            kept.Add((way.Rips, meets));
        }

        kinds.Add((option, bad), kept);
        return kept;
    }

    private static bool IsAsGood((int Rips, int[] Meets) a, (int Rips, int[] Meets) b)
    {
        if (a.Rips > b.Rips)
            return false;
        for (var i = 0; i < a.Meets.Length; i++)
        {
            if ((a.Meets[i] & ~b.Meets[i]) != 0)
                return false;
        }

        return true;
    }

    /// <summary>The bad places that reach into a band, among some (bits).</summary>
    public int Meets(Band band, int among)
    {
        var bits = 0;
        for (var i = 0; among >> i != 0; i++)
        {
            var bad = stock.Bad[i];
            if ((among >> i & 1) == 1 && bad.Near < band.Far && bad.Far > band.Near)
                bits |= 1 << i;
        }

        return bits;
    }

    /// <summary>The bad places between two places along the board, as bits.</summary>
    public int Between(long from, long to)
    {
        var bits = 0;
        for (var i = 0; i < stock.Bad.Count; i++)
        {
            if (stock.Bad[i].From < to && stock.Bad[i].To > from)
                bits |= 1 << i;
        }

        return bits;
    }

    /// <summary>Rips of a section on clear wood.</summary>
    public int Rips(SectionOption option)
    {
        var beside = stock.Width + stock.RipKerf - option.Strips.Sum(s => s.Width + stock.RipKerf);
        return option.Strips.Count - 1 + (beside > 0 && beside >= keepable ? 1 : 0);
    }
}
