namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// Puts listed sections together so that every blank is had exactly once: depth first, always next the blank that fewest
/// of the sections left hold, as long as the sections' losses together stay within what a better plan may lose. Of two
/// ways to have the same blanks the one is dropped that costs no less and uses no less of any board.
/// </summary>
internal sealed class CoverSearch
{
    private const int LooksCounted = 192;
    private const int StatesCounted = 32;

    /// <summary>Ways to have the same blanks that are kept to compare with.</summary>
    private const int MostStates = 256;
    private readonly IReadOnlyList<Column> columns;
    private readonly Packing packing;
    private readonly Taste taste;
    private readonly Steps steps;
    private readonly CoverBounds bounds;
    private readonly CoverBoards boards;
    private readonly int[] lines;
    private readonly List<int[]> lists = [];
    private readonly Dictionary<ulong, List<(Placed? Path, long Length, long[] Usage)>> seen = [];
    private long budget;
    private int looks;
    private ClearPlan? best;

    public CoverSearch(
        Bench bench,
        Packing packing,
        IReadOnlyList<BoardGroup> groups,
        IReadOnlyList<Column> columns,
        IReadOnlyList<long> perTick,
        Steps steps
    )
    {
        (this.packing, this.columns, this.steps) = (packing, columns, steps);
        taste = new(bench);
        boards = new(groups, perTick);
        lines = new int[columns.Count];
        Array.Fill(lines, -1);
        bounds = new(packing, columns, boards, groups.Count);
    }

    /// <summary>What all losses together may be.</summary>
    public required Int128 Budget
    {
        get => budget;
        set => budget = (long)Int128.Min(value, long.MaxValue / 4);
    }

    /// <summary>The budget once a plan with such a cost and length used is known.</summary>
    public required Func<Cost, long, Int128> BudgetAfter { get; init; }

    /// <summary>Whether the first plan will do.</summary>
    public bool AnyWillDo { get; init; }

    /// <summary>After so many looks at what is left the search ends, whether it is through or not.</summary>
    public int MostLooks { get; init; } = int.MaxValue;

    /// <summary>The best plan within the budget, or null.</summary>
    public ClearPlan? Run()
    {
        int[] all = [.. Enumerable.Range(0, columns.Count).OrderBy(c => columns[c].Loss)];
        Place(0, all, packing.All, 0, null);
        return best;
    }

    private bool IsOver => steps.AreUp || looks > MostLooks || (AnyWillDo && best is not null);

    private void Place(int depth, ReadOnlySpan<int> among, ulong left, long loss, Placed? path)
    {
        if (left == 0)
        {
            Judge(path!);
            return;
        }

        looks++;
        if (IsOver || !steps.Take(1 + among.Length / LooksCounted))
            return;
        while (lists.Count <= depth)
            lists.Add([]);
        if (lists[depth].Length < among.Length)
            lists[depth] = new int[among.Length];
        var list = Fitting(among, left, loss, lists[depth]);
        list = bounds.Narrow(list, left, budget - loss);
        if (list.Length == 0 || IsBeaten(left, path))
            return;
        var kind = bounds.Scarcest(left);
        var from = 0;
        for (var i = 0; i < list.Length && !IsOver; i++)
        {
            var c = list[i];
            if (!packing.HasAny(columns[c].Packed, kind) || loss + columns[c].Loss > budget)
                continue;
            // Whatever holds a section tried before was looked at there, so it need not come again beside this one.
            list[from..i].CopyTo(list[(from + 1)..]);
            list[from++] = c;
            PlaceOnEach(depth + 1, list[(from - 1)..], c, left, loss, path);
        }
    }

    /// <summary>Sections that hold only blanks that are left, with room and within the budget.</summary>
    private Span<int> Fitting(ReadOnlySpan<int> among, ulong left, long loss, int[] into)
    {
        var longest = boards.Longest();
        var count = 0;
        foreach (var c in among)
        {
            var column = columns[c];
            if (
                loss + column.Loss <= budget
                && packing.Holds(left, column.Packed)
                && column.Span <= longest[column.Group.Index]
            )
                into[count++] = c;
        }

        return into.AsSpan(0, count);
    }

    private void PlaceOnEach(
        int depth,
        ReadOnlySpan<int> among,
        int c,
        ulong left,
        long loss,
        Placed? path
    )
    {
        var column = columns[c];
        for (var b = 0; b < boards.Stocks.Count && !IsOver; b++)
        {
            if (!boards.MayGoOn(b, column))
                continue;
            boards.Use(b, column.Span);
            var placed = new Placed(c, b, path, (path?.Effort ?? 0) + column.Effort);
            Place(depth, among, left - column.Packed, loss + column.Loss, placed);
            boards.Use(b, -column.Span);
        }
    }

    private bool IsBeaten(ulong left, Placed? path)
    {
        if (!seen.TryGetValue(left, out var states))
            seen.Add(left, states = []);
        var usage = boards.Usage(bounds.Shortest);
        var length = boards.Length;
        foreach (var (other, its, before) in states)
        {
            if (FitsWithin(before, usage) && Compare(other, its, path, length) <= 0)
                return true;
        }

        steps.Take(states.Count / StatesCounted);
        if (states.Count >= MostStates)
            return false;
        states.RemoveAll(s =>
            FitsWithin(usage, s.Usage) && Compare(path, length, s.Path, s.Length) <= 0
        );
        states.Add((path, length, usage));
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

    /// <summary>Compares what two ways cost and use; what they are completed with adds the same to both.</summary>
    private int Compare(Placed? a, long lengthA, Placed? b, long lengthB)
    {
        if (!taste.CostMatters)
            return 0;
        var (effortA, effortB) = (a?.Effort ?? 0, b?.Effort ?? 0);
        return effortA != effortB && taste.Inner[0] is PlanGoal.SawingEffort
            ? effortA.CompareTo(effortB)
            : taste.Compare(new(effortA, LinesOf(a)), lengthA, new(effortB, LinesOf(b)), lengthB);
    }

    private void Judge(Placed path)
    {
        if (!boards.AllAreCut)
            return;
        var cost = new Cost(path.Effort, LinesOf(path)) + boards.Before.Cost;
        var length = boards.Length + boards.Before.Length;
        if (best is not null && taste.Compare(cost, length, best.Cost, best.LengthUsed) >= 0)
            return;
        best = new(cost, length, Sections(path));
        Budget = Int128.Min(Budget, BudgetAfter(cost, length));
    }

    private List<(Stock, IReadOnlyList<SectionOption>)> Sections(Placed last)
    {
        var sections = boards.Stocks.Select(_ => new List<SectionOption>()).ToList();
        for (var path = last; path is not null; path = path.Before)
            sections[path.Board].Add(columns[path.Column].Option(lines[path.Column]));
        return [.. boards.Stocks.Zip(sections, (b, s) => (b, (IReadOnlyList<SectionOption>)s))];
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
