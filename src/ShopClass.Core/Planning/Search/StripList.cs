namespace ShopClass.Core.Planning.Search;

/// <summary>Every strip that could be ripped from a kind of board.</summary>
internal sealed class StripList
{
    private readonly Bench bench;
    private readonly Lattice lattice;
    private readonly Stock stock;
    private readonly long longest;
    private readonly Steps steps;
    private readonly List<StripOption> found = [];
    private readonly List<Lie> lies = [];

    private StripList(Bench bench, Lattice lattice, Stock stock, long longest, Steps steps)
    {
        (this.bench, this.lattice, this.stock) = (bench, lattice, stock);
        (this.longest, this.steps) = (longest, steps);
    }

    /// <summary>The strips, widest first; all of them unless the steps are up.</summary>
    public static IReadOnlyList<StripOption> Of(
        Bench bench,
        Lattice lattice,
        Stock stock,
        long longest,
        Steps steps
    )
    {
        var list = new StripList(bench, lattice, stock, longest, steps);
        list.Grow(0, 0, -stock.CrosscutKerf, 0, whole: false);
        return
        [
            .. list
                .found.OrderByDescending(s => s.Width)
                .ThenByDescending(s => s.Length)
                .ThenByDescending(s => s.Code),
        ];
    }

    private void Grow(int kindIndex, int code, long length, long width, bool whole)
    {
        if (!steps.Take())
            return;
        if (kindIndex == bench.Kinds.Count)
        {
            if (code != 0)
                Add(code, length, width, whole);
            return;
        }

        var kind = bench.Kinds[kindIndex];
        var most = kind.Suits[stock.Index] ? kind.Items.Count : 0;
        var mark = lies.Count;
        for (var count = 0; count <= most; count++)
        {
            for (var turned = 0; turned <= (kind.MayTurn ? count : 0); turned++)
                GrowBy(kind, count, turned, code, length, width, whole);
            lies.RemoveRange(mark, lies.Count - mark);
        }
    }

    private void GrowBy(
        Kind kind,
        int count,
        int turned,
        int code,
        long length,
        long width,
        bool whole
    )
    {
        var straight = count - turned;
        var grown =
            length
            + straight * (kind.Length + stock.CrosscutKerf)
            + turned * (kind.Width + stock.CrosscutKerf);
        if (grown > longest)
            return;
        var narrow = straight > 0 && kind.Width > stock.Width;
        if (
            narrow
            && !(stock.Board.HasStraightEdges && kind.WidthBetweenStraightEdges <= stock.Width)
        )
            return;
        var wide = Math.Max(
            width,
            straight == 0 ? 0
                : narrow ? kind.WidthBetweenStraightEdges
                : kind.Width
        );
        wide = Math.Max(wide, turned == 0 ? 0 : kind.Length);
        if (wide > stock.Width)
            return;
        var mark = lies.Count;
        for (var i = 0; i < count; i++)
            lies.Add(new(kind.Index, i >= straight, kind.Along(i >= straight)));
        Grow(kind.Index + 1, code + count * lattice.One(kind.Index), grown, wide, whole || narrow);
        lies.RemoveRange(mark, lies.Count - mark);
    }

    private void Add(int code, long length, long width, bool whole) =>
        found.Add(
            new(
                code,
                whole ? stock.Width : width,
                width,
                length,
                stock.CrosscutKerf,
                [.. lies.OrderByDescending(l => l.Along).ThenBy(l => l.Kind)]
            )
        );
}
