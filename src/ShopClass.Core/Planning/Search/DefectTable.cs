namespace ShopClass.Core.Planning.Search;

/// <summary>
/// For every choice of blanks: ways to get these out of one board with bad places, section after section from its start.
/// Here the order of sections counts. A few ways are kept for each choice, so it finds plans but proves nothing: that is for
/// <see cref="BadPlaces.BadBoardSearch"/>.
/// </summary>
internal sealed class DefectTable
{
    private const int MostKept = 4;
    private readonly Lattice lattice;
    private readonly Stock stock;
    private readonly Taste taste;
    private readonly Steps steps;
    private readonly SectionPlacer placer;
    private readonly List<Way>?[] ways;

    private DefectTable(Bench bench, Lattice lattice, Stock stock, Steps steps)
    {
        (this.lattice, this.stock, this.steps) = (lattice, stock, steps);
        taste = new(bench);
        placer = new(bench, stock, steps);
        ways = new List<Way>?[lattice.Size];
        ways[0] = [new(stock.Start - stock.CrosscutKerf, default, null, null)];
    }

    /// <summary>One way: sections placed from the start, the newest first.</summary>
    internal sealed record Way(long End, Cost Cost, DraftSection? Section, Way? Before)
    {
        public IReadOnlyList<DraftSection> Sections()
        {
            var sections = new List<DraftSection>();
            for (var way = this; way?.Section is not null; way = way.Before)
                sections.Add(way.Section);
            sections.Reverse();
            return sections;
        }
    }

    public static DefectTable For(
        Bench bench,
        Lattice lattice,
        Stock stock,
        IReadOnlyList<SectionOption> sections,
        Steps steps
    )
    {
        var table = new DefectTable(bench, lattice, stock, steps);
        for (var code = 1; code < lattice.Size && !steps.AreUp; code++)
        {
            steps.Take(1 + sections.Count / 16);
            foreach (var section in sections)
            {
                if (lattice.Holds(lattice.Packed(code), section.Packed))
                    table.Extend(code, section);
            }
        }

        return table;
    }

    /// <summary>The best way for a choice, or null.</summary>
    public Way? Best(int code)
    {
        Way? best = null;
        foreach (var way in ways[code] ?? [])
        {
            if (best is null || taste.Compare(way.Cost, way.End, best.Cost, best.End) < 0)
                best = way;
        }

        return best;
    }

    private void Extend(int code, SectionOption option)
    {
        if (ways[code - option.Code] is not { } before || !steps.Take(before.Count * 2))
            return;
        foreach (var way in before)
        {
            var from = way.End + stock.CrosscutKerf;
            var section = placer.Place(option, from);
            if (section is not null)
                Keep(code, new(section.To, way.Cost + CostOf(option, section, from), section, way));
        }
    }

    /// <summary>The option's cost on clear wood and the cuts its gaps add.</summary>
    private Cost CostOf(SectionOption option, DraftSection section, long from)
    {
        var crosscuts = section.From > from ? (Int128)stock.Width : 0;
        var lines = section.From > from ? 1 : 0;
        Int128 ripped = (section.To - section.From - option.Length) * (section.Strips.Count - 1);
        var ready = 0L;
        foreach (var strip in section.Strips)
        {
            var gap = strip.Near > ready;
            lines += gap ? 1 : 0;
            ripped += gap ? section.To - section.From : 0;
            ready = strip.Far + stock.RipKerf;
            var gaps = Gaps(section, strip);
            crosscuts += (Int128)gaps * strip.Width;
            lines += gaps;
        }

        var effort = Score.RipWeight * ripped + Score.CrosscutWeight * crosscuts;
        return option.Cost + new Cost(effort * stock.Board.Thickness.Ticks, lines);
    }

    private int Gaps(DraftSection section, DraftStrip strip)
    {
        var gaps = 0;
        var ready = section.From;
        foreach (var blank in strip.Blanks)
        {
            gaps += blank.From > ready ? 1 : 0;
            ready = blank.To + stock.CrosscutKerf;
        }

        return gaps;
    }

    private void Keep(int code, Way way)
    {
        var list = ways[code] ??= [];
        if (list.Any(w => w.End <= way.End && taste.Compare(w.Cost, way.Cost) <= 0))
            return;
        list.RemoveAll(w => w.End >= way.End && taste.Compare(w.Cost, way.Cost) >= 0);
        var at = list.FindIndex(w => w.End > way.End);
        list.Insert(at < 0 ? list.Count : at, way);
        // The shortest and the cheapest stay; one in the middle goes.
        if (list.Count > MostKept)
            list.RemoveAt(list.Count - 2);
    }
}
