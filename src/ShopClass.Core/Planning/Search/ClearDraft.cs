namespace ShopClass.Core.Planning.Search;

/// <summary>Lays a way out along a clear board.</summary>
internal static class ClearDraft
{
    /// <summary>
    /// Sections that are ripped alike lie beside each other, longer ones first; in a section the widest strip lies at the
    /// near edge and crosscut lines fall together where they can.
    /// </summary>
    public static IReadOnlyList<DraftSection> Of(Stock stock, BoardTable.Way way)
    {
        var sections = new List<DraftSection>();
        var at = stock.Start;
        foreach (var option in InOrder(way.Sections()))
        {
            var section = Place(option, at, stock.CrosscutKerf, stock.RipKerf);
            sections.Add(section);
            at = section.To + stock.CrosscutKerf;
        }

        return sections;
    }

    private static IEnumerable<SectionOption> InOrder(IReadOnlyList<SectionOption> sections) =>
        sections
            .OrderByDescending(s => s.Strips.Count)
            .ThenByDescending(s => s.Strips[0].Width)
            .ThenByDescending(s => s.Strips[^1].Width)
            .ThenByDescending(s => s.Length)
            .ThenByDescending(s => s.Code);

    private static DraftSection Place(SectionOption option, long from, long kerf, long ripKerf)
    {
        var near = 0L;
        var strips = new List<DraftStrip>();
        var marks = new SortedSet<long>();
        foreach (var strip in option.Strips)
        {
            var blanks = LineUp(strip, from, from + option.Length, kerf, marks);
            marks.UnionWith(blanks.Select(b => b.To));
            strips.Add(new(near, near + strip.Width, blanks));
            near += strip.Width + ripKerf;
        }

        return new(from, from + option.Length, strips);
    }

    /// <summary>The order of a strip's blanks that shares most lines with the strips before it.</summary>
    private static List<DraftBlank> LineUp(
        StripOption strip,
        long from,
        long to,
        long kerf,
        SortedSet<long> marks
    )
    {
        List<DraftBlank>? best = null;
        var bestShared = -1;
        foreach (var order in SectionPlacer.Orders(strip.Blanks))
        {
            var at = from;
            var blanks = new List<DraftBlank>(order.Count);
            foreach (var lie in order)
            {
                blanks.Add(new(lie.Kind, lie.Turned, at, at + lie.Along));
                at += lie.Along + kerf;
            }

            var shared = blanks.Count(b => b.To < to && marks.Contains(b.To));
            if (shared > bestShared)
                (best, bestShared) = (blanks, shared);
        }

        return best!;
    }
}
