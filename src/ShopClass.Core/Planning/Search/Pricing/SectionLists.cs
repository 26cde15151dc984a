namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>Lists all sections that lose no more than a limit.</summary>
internal static class SectionLists
{
    private const int MostColumns = 400_000;

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
            var found = finder.Within(most, MostColumns - all.Count);
            if (found is null)
                return null;
            all.AddRange(found);
        }

        return priced.Aim is Aim.Sawing ? Unbeaten(all) : all;
    }

    /// <summary>
    /// Leaves out sections that another one with the same blanks beats: less sawing and no more length. No best plan holds
    /// them.
    /// </summary>
    private static List<Column> Unbeaten(List<Column> all)
    {
        all.Sort(
            (a, b) =>
                a.Packed != b.Packed ? a.Packed.CompareTo(b.Packed)
                : a.Group.Index != b.Group.Index ? a.Group.Index.CompareTo(b.Group.Index)
                : a.Effort != b.Effort ? a.Effort.CompareTo(b.Effort)
                : a.Span.CompareTo(b.Span)
        );
        long[] spans = [.. all.Select(c => c.Span)];
        var kept = 0;
        var (from, shortest) = (0, long.MaxValue);
        Column? before = null;
        for (var i = 0; i < all.Count; i++)
        {
            var column = all[i];
            if (before is null || before.Packed != column.Packed || before.Group != column.Group)
                (from, shortest) = (i, long.MaxValue);
            else if (before.Effort < column.Effort)
            {
                for (; from < i; from++)
                    shortest = Math.Min(shortest, spans[from]);
            }

            if (shortest > column.Span)
                all[kept++] = column;
            before = column;
        }

        all.RemoveRange(kept, all.Count - kept);
        return all;
    }
}
