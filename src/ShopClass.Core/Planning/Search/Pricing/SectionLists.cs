namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>Lists all sections that lose no more than a limit.</summary>
internal static class SectionLists
{
    private const int MostColumns = 120_000;

    /// <summary>The sections of all groups, or null where they are too many.</summary>
    public static List<Column>? Within(
        Packing packing,
        IReadOnlyList<BoardGroup> groups,
        Priced priced,
        Int128 limit,
        Steps steps
    )
    {
        var most = (long)Int128.Min(limit, long.MaxValue / 8);
        var all = new List<Column>();
        foreach (var group in groups)
        {
            var finder = new SectionFinder(packing, group, priced.Prices, steps);
            var found = finder.Within(most, MostColumns - all.Count, priced.Least[group.Index]);
            if (found is null)
                return null;
            all.AddRange(found);
        }

        return all;
    }
}
