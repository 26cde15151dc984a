namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// Puts listed sections together so that every blank is had exactly once: depth first, always next the blank that fewest
/// of the sections left hold, as long as the sections' losses together stay within what a better plan may lose. Of two
/// ways to have the same blanks the one is dropped that costs no less and uses no less of any board.
/// </summary>
internal sealed class CoverSearch
{
    private const int LooksCounted = 192;

    private readonly IReadOnlyList<Column> columns;
    private readonly Packing packing;
    private readonly Taste taste;
    private readonly Steps steps;
    private readonly CoverBounds bounds;
    private readonly CoverBoards boards;
    private readonly CoverStates states;
    private readonly RestProgramme rest;
    private readonly TurnPrices prices;
    private readonly ColumnLines lines;
    private readonly List<Listed[]> lists = [];
    private long most;
    private int looks;
    private int begun;
    private ClearPlan? best;

    public CoverSearch(
        Bench bench,
        Packing packing,
        IReadOnlyList<BoardGroup> groups,
        IReadOnlyList<Column> columns,
        ColumnLines lines,
        long[] perTick,
        Aim aim,
        Steps steps
    )
    {
        (this.packing, this.columns, this.steps) = (packing, columns, steps);
        taste = new(bench);
        boards = new(groups);
        this.lines = lines;
        var contents = new Contents(packing, columns);
        bounds = new(packing, columns, contents, boards, groups.Count);
        states = new(taste, lines.Of, steps);
        rest = new(packing, groups, columns, contents, aim);
        prices = new(packing, boards, rest, perTick, steps);
    }

    /// <summary>What a plan may cost at most, in the numbers of the prices.</summary>
    public required Int128 Most
    {
        get => most;
        set => most = (long)Int128.Min(value, long.MaxValue / 4);
    }

    /// <summary>What every plan costs at least, losses not counted.</summary>
    public required long Bound { get; init; }

    /// <summary>The most a plan may cost once one with such a cost and length used is known.</summary>
    public required Func<Cost, long, Int128> MostAfter { get; init; }

    /// <summary>Whether the first plan will do.</summary>
    public bool AnyWillDo { get; init; }

    /// <summary>A list of so many sections gets new prices for what is left.</summary>
    public int WorthPricing { get; init; } = int.MaxValue;

    /// <summary>After so many looks at what is left the search ends, whether it is through or not.</summary>
    public int MostLooks { get; init; } = int.MaxValue;

    /// <summary>After so many steps the search ends, whether it is through or not.</summary>
    public int MostSteps { get; init; } = int.MaxValue;

    /// <summary>Whether it went on to its end.</summary>
    public bool IsThrough => looks <= MostLooks && steps.Taken - begun <= MostSteps;

    /// <summary>The best plan within the budget, or null.</summary>
    public ClearPlan? Run()
    {
        Listed[] all =
        [
            .. Enumerable
                .Range(0, columns.Count)
                .Select(c => new Listed(c, columns[c].Loss))
                .OrderBy(l => l.Loss),
        ];
        begun = steps.Taken;
        Place(new(0, packing.All, Bound, 0, 0, null), all, null);
        return best;
    }

    private bool IsOver => steps.AreUp || !IsThrough || (AnyWillDo && best is not null);

    private void Place(CoverTurn turn, ReadOnlySpan<Listed> among, Listed? again)
    {
        if (turn.Left == 0)
        {
            Judge(turn.Path!);
            return;
        }

        looks++;
        if (IsOver || !steps.Take(1 + among.Length / LooksCounted))
            return;
        while (lists.Count <= turn.Depth)
            lists.Add([]);
        if (lists[turn.Depth].Length <= among.Length)
            lists[turn.Depth] = new Listed[among.Length + 1];
        var list = Fitting(among, again, turn, lists[turn.Depth]);
        list = bounds.Narrow(list, turn.Left, prices.PerTick(turn.Prices), most - turn.Bound);
        if (list.Length == 0 || IsBeaten(turn))
            return;
        if (list.Length >= WorthPricing)
        {
            list = prices.Find(ref turn, list, bounds.BlanksLeft, bounds.Shortest, most);
            list = bounds.Narrow(list, turn.Left, prices.PerTick(turn.Prices), most - turn.Bound);
            if (list.Length == 0)
                return;
        }

        var kind = bounds.Scarcest(turn.Left);
        var from = 0;
        for (var i = 0; i < list.Length && !IsOver; i++)
        {
            var item = list[i];
            if (!packing.HasAny(columns[item.Column].Packed, kind) || turn.Bound + item.Loss > most)
                continue;
            // Whatever holds a section tried before was looked at there, so it need not come again beside this one.
            list[from..i].CopyTo(list[(from + 1)..]);
            list[from++] = item;
            PlaceOnEach(turn, list[from..], item);
        }
    }

    /// <summary>Sections that hold only blanks that are left, with room and within the budget.</summary>
    private Span<Listed> Fitting(
        ReadOnlySpan<Listed> among,
        Listed? again,
        CoverTurn turn,
        Listed[] into
    )
    {
        var longest = boards.Longest();
        var count = 0;
        foreach (var item in among)
        {
            if (turn.Bound + item.Loss > most)
                break;
            if (again is { } once && item.Loss >= once.Loss)
            {
                if (Fits(once, turn.Left, longest))
                    into[count++] = once;
                again = null;
            }

            if (Fits(item, turn.Left, longest))
                into[count++] = item;
        }

        if (again is { } last && turn.Bound + last.Loss <= most && Fits(last, turn.Left, longest))
            into[count++] = last;
        return into.AsSpan(0, count);
    }

    private bool Fits(Listed item, ulong left, long[] longest)
    {
        var column = columns[item.Column];
        return packing.Holds(left, column.Packed) && column.Span <= longest[column.Group.Index];
    }

    private void PlaceOnEach(CoverTurn turn, ReadOnlySpan<Listed> among, Listed item)
    {
        var column = columns[item.Column];
        var path = turn.Path;
        for (var b = 0; b < boards.Stocks.Count && !IsOver; b++)
        {
            if (!boards.MayGoOn(b, column))
                continue;
            boards.Use(b, column.Span);
            var placed = new Placed(item.Column, b, path, (path?.Effort ?? 0) + column.Effort);
            var next = turn with
            {
                Depth = turn.Depth + 1,
                Left = turn.Left - column.Packed,
                Bound = turn.Bound + item.Loss,
                Own = turn.Own + rest.OwnOf(item.Column),
                Path = placed,
            };
            Place(next, among, item);
            boards.Use(b, -column.Span);
        }
    }

    private bool IsBeaten(CoverTurn turn) =>
        states.Beat(turn.Left, turn.Path, boards.Length, boards.Usage(bounds.Shortest));

    private void Judge(Placed path)
    {
        if (!boards.AllAreCut)
            return;
        var cost = new Cost(path.Effort, lines.Of(path)) + boards.Before.Cost;
        var length = boards.Length + boards.Before.Length;
        if (best is not null && taste.Compare(cost, length, best.Cost, best.LengthUsed) >= 0)
            return;
        best = new(cost, length, Sections(path));
        Most = Int128.Min(Most, MostAfter(cost, length));
    }

    private List<(Stock, IReadOnlyList<SectionOption>)> Sections(Placed last)
    {
        var sections = boards.Stocks.Select(_ => new List<SectionOption>()).ToList();
        for (var path = last; path is not null; path = path.Before)
            sections[path.Board].Add(columns[path.Column].Option(lines.Of(path.Column)));
        return [.. boards.Stocks.Zip(sections, (b, s) => (b, (IReadOnlyList<SectionOption>)s))];
    }
}
