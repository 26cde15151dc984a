namespace ShopClass.Core.Planning.Search;

/// <summary>Puts given sections on a board with bad places in the order that ends soonest.</summary>
internal static class SectionShuffle
{
    private const int MostSections = 9;

    /// <summary>The sections placed from the board's start, or null when no order has room.</summary>
    public static IReadOnlyList<DraftSection>? Place(
        Stock stock,
        IReadOnlyList<SectionOption> sections,
        SectionPlacer placer,
        Steps steps
    )
    {
        if (sections.Count > MostSections)
            return null;
        var reached = new DraftPath?[1 << sections.Count];
        reached[0] = new(stock.Start - stock.CrosscutKerf, null, null);
        for (var mask = 0; mask < reached.Length - 1; mask++)
        {
            if (reached[mask] is not { } path)
                continue;
            for (var i = 0; i < sections.Count; i++)
            {
                var next = mask | (1 << i);
                if (next == mask || !steps.Take())
                    continue;
                var placed = placer.Place(sections[i], path.End + stock.CrosscutKerf);
                if (placed is not null && (reached[next] is null || placed.To < reached[next]!.End))
                    reached[next] = new(placed.To, placed, path);
            }
        }

        return reached[^1]?.Sections();
    }

    private sealed record DraftPath(long End, DraftSection? Section, DraftPath? Before)
    {
        public List<DraftSection> Sections()
        {
            var sections = new List<DraftSection>();
            for (var path = this; path?.Section is not null; path = path.Before)
                sections.Add(path.Section);
            sections.Reverse();
            return sections;
        }
    }
}
