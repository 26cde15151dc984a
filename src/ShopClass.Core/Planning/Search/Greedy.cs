namespace ShopClass.Core.Planning.Search;

/// <summary>
/// A good plan at once: section after section along each board, each time the one that uses its wood best. Run in several
/// ways, which differ in what a section must begin with.
/// </summary>
internal sealed class Greedy(Bench bench)
{
    private const int MostPaired = 6;
    private const int MostLengths = 48;
    private readonly SectionFiller?[] fillers = new SectionFiller?[bench.Stocks.Count];
    private readonly Dictionary<Place, DraftSection?> known = [];

    /// <summary>What the next section must hold.</summary>
    internal enum Lead
    {
        Anything,
        Longest,
        Widest,
        Largest,
        Scarcest,
    }

    /// <summary>All ways of leading, in a fixed order.</summary>
    public static IReadOnlyList<Lead> Leads { get; } = Enum.GetValues<Lead>();

    /// <summary>A layout on these boards, in this order.</summary>
    public Draft LayOut(IReadOnlyList<Stock> stocks, Lead lead)
    {
        int[] left = [.. bench.Demand];
        var boards = new List<DraftBoard>();
        foreach (var stock in stocks)
        {
            var sections = Sections(stock, left, lead);
            if (sections.Count > 0)
                boards.Add(new(stock, sections));
        }

        return new(boards, left);
    }

    private List<DraftSection> Sections(Stock stock, int[] left, Lead lead)
    {
        var sections = new List<DraftSection>();
        var at = stock.Start;
        while (at < stock.End && left.Any(n => n > 0))
        {
            var section = BestSection(stock, at, left, Must(stock, left, lead));
            if (section is null && lead is not Lead.Anything)
                section = BestSection(stock, at, left, -1);
            if (section is not null)
            {
                sections.Add(section);
                foreach (var blank in section.Blanks)
                    left[blank.Kind]--;
                at = section.To + stock.CrosscutKerf;
                continue;
            }

            var past = stock.Bad.Where(b => b.To > at).Select(b => b.To).DefaultIfEmpty(stock.End);
            at = past.Min();
        }

        return sections;
    }

    private int Must(Stock stock, int[] left, Lead lead)
    {
        var open = bench.Kinds.Where(k => left[k.Index] > 0 && k.Suits[stock.Index]).ToList();
        if (open.Count == 0 || lead is Lead.Anything)
            return -1;
        var must = lead switch
        {
            Lead.Longest => open.MaxBy(k => (k.Length, k.Width)),
            Lead.Widest => open.MaxBy(k => (k.Width, k.Length)),
            Lead.Scarcest => open.MinBy(k => (k.Suits.Count(s => s), -k.Area)),
            _ => open.MaxBy(k => k.Area),
        };
        return must!.Index;
    }

    /// <summary>Orders of boards and ways of leading come to the same places with the same blanks left again and again.</summary>
    private DraftSection? BestSection(Stock stock, long at, int[] left, int must)
    {
        var place = new Place(stock.Index, at, must, left);
        if (!known.TryGetValue(place, out var section))
        {
            section = FindSection(stock, at, left, must);
            known.Add(place with { Left = [.. left] }, section);
        }

        return section;
    }

    private DraftSection? FindSection(Stock stock, long at, int[] left, int must)
    {
        var filler = fillers[stock.Index] ??= new(bench, stock);
        DraftSection? best = null;
        Int128 bestUsed = 0;
        var rest = new int[left.Length];
        var reach = long.MaxValue;
        foreach (var length in Lengths(stock, at, left))
        {
            // The same section as for the length before.
            if (at + length >= reach)
                continue;
            left.CopyTo(rest, 0);
            var section = filler.Fill(at, at + length, rest, must);
            reach = filler.Reach;
            if (section is null)
                continue;
            Int128 used = 0;
            for (var kind = 0; kind < rest.Length; kind++)
                used += (left[kind] - rest[kind]) * bench.Kinds[kind].Area;
            var span = section.To - at + stock.CrosscutKerf;
            var bestSpan = best is null ? 1 : best.To - at + stock.CrosscutKerf;
            if (best is null || used * bestSpan > bestUsed * span)
                (best, bestUsed) = (section, used);
        }

        return best;
    }

    /// <summary>Lengths worth trying: those of one blank, of two end to end, and as far as each bad place or the end.</summary>
    private IEnumerable<long> Lengths(Stock stock, long at, int[] left)
    {
        long[] single =
        [
            .. bench
                .Kinds.Where(k => left[k.Index] > 0 && k.Suits[stock.Index])
                .SelectMany(k => k.MayTurn ? new[] { k.Length, k.Width } : [k.Length])
                .Distinct(),
        ];
        var pairs =
            single.Length > MostPaired
                ? []
                : single.SelectMany(a => single.Select(b => a + b + stock.CrosscutKerf));
        var places = stock.Bad.SelectMany(b => new[] { b.From - at, b.To - at });
        long[] all =
        [
            .. single
                .Concat(pairs)
                .Concat(places)
                .Concat(stock.Bad.SelectMany(b => single.Select(s => b.To - at + s)))
                .Append(stock.End - at)
                .Where(length => length > 0 && at + length <= stock.End)
                .Distinct()
                .OrderDescending(),
        ];
        return Thinned(all, MostLengths);
    }

    /// <summary>So many of a sorted list at most, evenly from end to end: keeps very long parts lists quick.</summary>
    internal static IEnumerable<long> Thinned(long[] all, int most) =>
        all.Length <= most
            ? all
            : Enumerable.Range(0, most).Select(i => all[(long)i * (all.Length - 1) / (most - 1)]);

    /// <summary>Where the next section is to begin, what it must hold, and what is left to choose from.</summary>
    private readonly record struct Place(int Stock, long At, int Must, int[] Left)
    {
        public bool Equals(Place other) =>
            (Stock, At, Must) == (other.Stock, other.At, other.Must)
            && Left.AsSpan().SequenceEqual(other.Left);

        public override int GetHashCode()
        {
            var hash = new HashCode();
            hash.Add(Stock);
            hash.Add(At);
            hash.Add(Must);
            foreach (var count in Left)
                hash.Add(count);
            return hash.ToHashCode();
        }
    }
}
