namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>A section of a plan on one of the chosen boards, and those before it.</summary>
internal sealed class Placed(int column, int board, Placed? before, long effort)
{
    public int Column => column;
    public int Board => board;
    public Placed? Before => before;

    /// <summary>Sawing of it and all before it.</summary>
    public long Effort => effort;

    /// <summary>Lines of it and all before it; -1 until asked for.</summary>
    public long Lines { get; set; } = -1;
}

/// <summary>
/// Puts listed sections together so that every blank is had exactly once: depth first, always next the blank that fewest
/// sections hold, as long as the sections' losses together stay within what a better plan may lose. Of two ways to have
/// the same blanks the one is dropped that costs no less and uses no less of any board.
/// </summary>
internal sealed class CoverSearch
{
    private readonly IReadOnlyList<Column> columns;
    private readonly Packing packing;
    private readonly Taste taste;
    private readonly Steps steps;
    private readonly int[][] byKind;
    private readonly int[] kindOrder;
    private readonly BoardGroup[] groupOf;
    private readonly Stock[] boards;
    private readonly long[] used;
    private readonly int[] lines;
    private readonly Dictionary<ulong, List<(Placed? Path, long[] Used)>> seen = [];
    private readonly (Cost Cost, long Length) before;
    private ClearPlan? best;

    public CoverSearch(
        Bench bench,
        Packing packing,
        IReadOnlyList<BoardGroup> groups,
        IReadOnlyList<Column> columns,
        Steps steps
    )
    {
        (this.packing, this.columns, this.steps) = (packing, columns, steps);
        taste = new(bench);
        boards = [.. groups.SelectMany(g => g.Stocks)];
        groupOf = [.. groups.SelectMany(g => g.Stocks.Select(_ => g))];
        before = ClearPlan.Before(boards);
        used = new long[boards.Length];
        lines = new int[columns.Count];
        Array.Fill(lines, -1);
        byKind = [.. Enumerable.Range(0, packing.Kinds).Select(Holding)];
        kindOrder = [.. Enumerable.Range(0, packing.Kinds).OrderBy(k => byKind[k].Length)];
    }

    /// <summary>What all losses together may be.</summary>
    public required Int128 Budget { get; set; }

    /// <summary>The budget once a plan with such a cost and length used is known.</summary>
    public required Func<Cost, long, Int128> BudgetAfter { get; init; }

    /// <summary>Whether the first plan will do.</summary>
    public bool AnyWillDo { get; init; }

    /// <summary>The best plan within the budget, or null.</summary>
    public ClearPlan? Run()
    {
        Place(packing.All, 0, null);
        return best;
    }

    /// <summary>Sections that hold a kind, those that lose least first.</summary>
    private int[] Holding(int kind) =>
        [
            .. Enumerable
                .Range(0, columns.Count)
                .Where(c => packing.Count(columns[c].Packed, kind) > 0)
                .OrderBy(c => columns[c].Loss),
        ];

    private void Place(ulong left, long loss, Placed? path)
    {
        if (left == 0)
        {
            Judge(path!);
            return;
        }

        if (IsBeaten(left, path))
            return;
        foreach (var c in byKind[Next(left)])
        {
            var column = columns[c];
            if (loss + column.Loss > Budget || steps.AreUp || (AnyWillDo && best is not null))
                break;
            if (packing.Holds(left, column.Packed))
                PlaceOnEach(c, column, left, loss, path);
        }
    }

    private void PlaceOnEach(int c, Column column, ulong left, long loss, Placed? path)
    {
        for (var b = 0; b < boards.Length; b++)
        {
            if (!MayGoOn(b, column))
                continue;
            if (!steps.Take(2))
                return;
            used[b] += column.Span;
            var placed = new Placed(c, b, path, (path?.Effort ?? 0) + column.Effort);
            Place(left - column.Packed, loss + column.Loss, placed);
            used[b] -= column.Span;
        }
    }

    /// <summary>Of boards that are alike the first empty one is taken.</summary>
    private bool MayGoOn(int b, Column column)
    {
        if (groupOf[b] != column.Group || used[b] + column.Span > column.Group.Room)
            return false;
        var isFirst = b == 0 || groupOf[b - 1] != groupOf[b];
        return isFirst || used[b] > 0 || used[b - 1] > 0;
    }

    private int Next(ulong left) => kindOrder.First(kind => packing.Count(left, kind) > 0);

    private bool IsBeaten(ulong left, Placed? path)
    {
        if (!seen.TryGetValue(left, out var states))
            seen.Add(left, states = []);
        foreach (var (other, room) in states)
        {
            if (FitsWithin(room, used) && Compare(other, path) <= 0)
                return true;
        }

        states.RemoveAll(s => FitsWithin(used, s.Used) && Compare(path, s.Path) <= 0);
        states.Add((path, [.. used]));
        return false;
    }

    /// <summary>Whether the first uses no more of any board, and has cut every board that the second has: in the end all must be.</summary>
    private static bool FitsWithin(long[] a, long[] b)
    {
        for (var i = 0; i < a.Length; i++)
        {
            if (a[i] > b[i] || (a[i] == 0 && b[i] > 0))
                return false;
        }

        return true;
    }

    private int Compare(Placed? a, Placed? b)
    {
        var (effortA, effortB) = (a?.Effort ?? 0, b?.Effort ?? 0);
        return effortA != effortB && !taste.LinesFirst && taste.CostMatters
            ? effortA.CompareTo(effortB)
            : taste.Compare(new(effortA, LinesOf(a)), new(effortB, LinesOf(b)));
    }

    private void Judge(Placed path)
    {
        if (used.Any(u => u == 0))
            return;
        var cost = new Cost(path.Effort, LinesOf(path)) + before.Cost;
        var length = used.Sum() + before.Length;
        if (best is not null && taste.Compare(cost, length, best.Cost, best.LengthUsed) >= 0)
            return;
        best = new(cost, length, Sections(path));
        Budget = Int128.Min(Budget, BudgetAfter(cost, length));
    }

    private List<(Stock, IReadOnlyList<SectionOption>)> Sections(Placed last)
    {
        var sections = boards.Select(_ => new List<SectionOption>()).ToList();
        for (var path = last; path is not null; path = path.Before)
            sections[path.Board].Add(columns[path.Column].Option(lines[path.Column]));
        return [.. boards.Zip(sections, (b, s) => (b, (IReadOnlyList<SectionOption>)s))];
    }

    private long LinesOf(Placed? path)
    {
        if (path is null)
            return 0;
        if (path.Lines < 0)
            path.Lines = LinesOf(path.Before) + LinesOf(path.Column);
        return path.Lines;
    }

    private int LinesOf(int c) => lines[c] >= 0 ? lines[c] : lines[c] = columns[c].Lines();
}
