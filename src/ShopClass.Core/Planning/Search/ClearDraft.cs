namespace ShopClass.Core.Planning.Search;

/// <summary>Lays a way out along a clear board.</summary>
internal static class ClearDraft
{
    /// <summary>
    /// Sections that are ripped alike lie beside each other, longer ones first; in a section the widest strip lies at the
    /// near edge and crosscut lines fall together where they can.
    /// </summary>
    public static IReadOnlyList<DraftSection> Of(
        Stock stock,
        IReadOnlyList<SectionOption> options,
        long leeway
    )
    {
        var sections = new List<DraftSection>();
        var at = stock.Start;
        foreach (var option in InOrder(options))
        {
            var section = Place(option, stock, at, leeway);
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

    /// <summary>One section in its place, its crosscut lines falling together where they can.</summary>
    public static DraftSection Place(SectionOption option, Stock stock, long from, long leeway)
    {
        var near = 0L;
        var strips = new List<DraftStrip>();
        var orders = SharedLines.Orders(option.Strips, option.Length, leeway);
        foreach (var (strip, order) in option.Strips.Zip(orders))
        {
            strips.Add(new(near, near + strip.Width, EndToEnd(order, from, strip.Kerf)));
            near += strip.Width + stock.RipKerf;
        }

        return new(from, from + option.Length, strips);
    }

    private static List<DraftBlank> EndToEnd(IReadOnlyList<Lie> order, long from, long kerf)
    {
        var blanks = new List<DraftBlank>(order.Count);
        var at = from;
        foreach (var lie in order)
        {
            blanks.Add(new(lie.Kind, lie.Turned, at, at + lie.Along));
            at += lie.Along + kerf;
        }

        return blanks;
    }
}
