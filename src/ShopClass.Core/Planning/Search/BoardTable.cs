namespace ShopClass.Core.Planning.Search;

/// <summary>
/// For every choice of blanks: the ways to get exactly these out of one clear board that are not beaten in both length and
/// cost. Built up section by section; a choice's first blank decides which section comes next, so no order of sections is
/// looked at twice.
/// </summary>
internal sealed class BoardTable
{
    private readonly Lattice lattice;
    private readonly Stock stock;
    private readonly Taste taste;
    private readonly long leeway;
    private readonly List<Way>?[] ways;

    private BoardTable(Bench bench, Lattice lattice, Stock stock)
    {
        (this.lattice, this.stock) = (lattice, stock);
        taste = new(bench);
        leeway = bench.Request.Rules.LengthAllowance.Ticks;
        ways = new List<Way>?[lattice.Size];
        ways[0] = [new(-stock.CrosscutKerf, default, null, null)];
    }

    /// <summary>One way: sections end to end, the newest first.</summary>
    internal sealed record Way(long Length, Cost Cost, SectionOption? Section, Way? Before)
    {
        public IReadOnlyList<SectionOption> Sections()
        {
            var sections = new List<SectionOption>();
            for (var way = this; way?.Section is not null; way = way.Before)
                sections.Add(way.Section);
            return sections;
        }
    }

    /// <summary>The sections it is built from.</summary>
    public IReadOnlyList<SectionOption> Options { get; private set; } = [];

    /// <summary>Whether the table holds everything, not cut short by the steps.</summary>
    public bool IsWhole { get; private set; }

    /// <summary>The table for boards like this one, up to a usable length; lines counted as <see cref="SectionList"/> says.</summary>
    public static BoardTable For(
        Bench bench,
        Lattice lattice,
        Stock stock,
        long longest,
        Steps steps,
        bool linesMayMeet = false
    )
    {
        var table = new BoardTable(bench, lattice, stock);
        var sections = SectionList.Of(bench, lattice, stock, longest, steps, linesMayMeet);
        for (var code = 1; code < lattice.Size && !steps.AreUp; code++)
            table.Fill(code, sections[lattice.First(code)], longest, steps);
        table.Options = [.. sections.SelectMany(s => s)];
        table.IsWhole = !steps.AreUp;
        return table;
    }

    /// <summary>The best way to get this choice out of a board with so much usable length, or null.</summary>
    private Way? Best(int code, long usable)
    {
        Way? best = null;
        foreach (var way in ways[code] ?? [])
        {
            if (
                way.Length <= usable
                && (best is null || taste.Compare(way.Cost, way.Length, best.Cost, best.Length) < 0)
            )
                best = way;
        }

        return best;
    }

    /// <summary>The best way on this board, or null.</summary>
    public BoardWay? BestOn(Stock board, int code) =>
        Best(code, board.Usable) is { } way
            ? new(
                way.Cost,
                board.Start + way.Length,
                () => ClearDraft.Of(board, way.Sections(), leeway),
                way.Sections
            )
            : null;

    /// <summary>
    /// The least cost and, for itself, the least length of this choice out of clear wood so long; null where it does not go.
    /// </summary>
    public (Cost Cost, long Length)? Least(int code, long usable)
    {
        if (ways[code] is not { Count: > 0 } list || list[0].Length > usable)
            return null;
        var cost = list[0].Cost;
        for (var i = 1; i < list.Count && list[i].Length <= usable; i++)
            cost = list[i].Cost;
        return (cost, list[0].Length);
    }

    private void Fill(int code, IReadOnlyList<SectionOption> sections, long longest, Steps steps)
    {
        var whole = lattice.Packed(code);
        foreach (var section in sections)
        {
            if (!lattice.Holds(whole, section.Packed))
                continue;
            if (!steps.Take())
                return;
            foreach (var before in ways[code - section.Code] ?? [])
            {
                var length = before.Length + stock.CrosscutKerf + section.Length;
                if (length > longest)
                    break;
                Add(code, length, before, section);
            }
        }

        steps.Take(1 + sections.Count / 16);
    }

    /// <summary>Keeps ways by length, each longer one better in cost.</summary>
    private void Add(int code, long length, Way before, SectionOption section)
    {
        var cost = before.Cost + section.Cost;
        var list = ways[code] ??= [];
        var at = 0;
        while (at < list.Count && list[at].Length <= length)
        {
            if (taste.Compare(list[at].Cost, cost) <= 0)
                return;
            at++;
        }

        while (at < list.Count && taste.Compare(list[at].Cost, cost) >= 0)
            list.RemoveAt(at);
        // A way as long as this one but dearer may stand just before.
        if (at > 0 && list[at - 1].Length == length)
            list.RemoveAt(--at);
        list.Insert(at, new(length, cost, section, before));
    }
}
