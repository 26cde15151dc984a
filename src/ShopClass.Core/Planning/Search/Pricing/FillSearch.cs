namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// Puts listed sections together board by board: what each board alone could yield is listed first, then the boards'
/// choices are matched. Where prices tell little it takes far less than <see cref="CoverSearch"/>, which goes blank by
/// blank: what is on one board is looked at once, and not again for everything on the others.
/// </summary>
internal sealed class FillSearch
{
    /// <summary>The most choices of blanks there may be at all.</summary>
    private const long MostChoices = 8_000_000;

    /// <summary>The most fills of one group's boards.</summary>
    private const int MostFills = 1_000_000;
    private const int LooksCounted = 400;
    private readonly Packing packing;
    private readonly IReadOnlyList<BoardGroup> groups;
    private readonly IReadOnlyList<Column> columns;
    private readonly long[] perTick;
    private readonly Taste taste;
    private readonly Steps steps;
    private readonly ColumnLines lines;
    private readonly BlankOrder order;
    private readonly (Cost Cost, long Length) begun;
    private readonly List<BoardFills> fills = [];
    private readonly List<LastFills> last = [];
    private readonly List<Dictionary<ulong, Fill>> byBlanks = [];
    private readonly List<Fill[]> kept = [];
    private readonly int[] boards;
    private readonly List<(int Group, Fill Fill)> placed = [];
    private long budget;

    /// <summary>The most that a board may lose whose fills are all listed.</summary>
    private long share;
    private long looks;

    public FillSearch(
        Bench bench,
        Packing packing,
        IReadOnlyList<BoardGroup> groups,
        IReadOnlyList<Column> columns,
        ColumnLines lines,
        long[] perTick,
        Steps steps
    )
    {
        (this.packing, this.groups, this.columns) = (packing, groups, columns);
        (this.perTick, this.steps, taste) = (perTick, steps, new(bench));
        this.lines = lines;
        order = new(packing, columns);
        begun = ClearPlan.Before(groups.SelectMany(g => g.Stocks));
        boards = [.. groups.Select(g => g.Stocks.Count)];
    }

    /// <summary>The most the losses and what is left of the boards may cost together.</summary>
    public required long Budget { get; init; }

    /// <summary>What losses below zero can make up at most.</summary>
    public required long Slack { get; init; }

    /// <summary>The budget once a plan of such a cost and length used is known.</summary>
    public required Func<Cost, long, long> BudgetAfter { get; init; }

    /// <summary>The best plan within the budget, or null.</summary>
    public ClearPlan? Best { get; private set; }

    /// <summary>Whether blanks are few enough.</summary>
    public static bool Suits(Bench bench)
    {
        var choices = 1L;
        foreach (var demand in bench.Demand)
            choices = Math.Min(MostChoices + 1, choices * (demand + 1));
        return choices <= MostChoices;
    }

    /// <summary>Looks for the best plan; false where there is too much to look through.</summary>
    public bool Run()
    {
        budget = Budget;
        var isOnly = boards.Sum() == 1;
        // Of several boards each but the last loses no more than another one, and the last has just what is left.
        share = isOnly ? budget : (budget + Slack) / 2 + 1;
        foreach (var group in groups)
        {
            var sections = new SectionsByBlank(packing, columns, order, group, budget);
            var its = new BoardFills(
                packing,
                columns,
                sections,
                group.Room,
                order,
                taste,
                lines,
                steps
            );
            var found = isOnly
                ? its.FindWhole(budget, MostFills)
                : its.FindAny(share + Slack, MostFills);
            if (!found)
                return false;
            fills.Add(its);
            var perBoard = perTick[group.Index];
            last.Add(new(group, sections, order, its, perBoard, steps));
            Keep(group, its);
        }

        Match(packing.All, 0, long.MinValue);
        return !steps.AreUp;
    }

    /// <summary>Of each choice of blanks the best fill, by what it loses with what is left of the board.</summary>
    private void Keep(BoardGroup group, BoardFills its)
    {
        var best = new Dictionary<ulong, Fill>();
        foreach (var fill in its.All)
        {
            var vain = fill with
            {
                Loss = fill.Loss + (group.Room - fill.Span) * perTick[group.Index],
            };
            if (vain.Loss > share)
                continue;
            if (!best.TryGetValue(fill.Packed, out var other) || its.Compare(fill, other) < 0)
                best[fill.Packed] = vain;
        }

        byBlanks.Add(best);
        kept.Add([.. best.Values.OrderBy(f => f.Loss).ThenBy(f => f.Packed)]);
    }

    /// <summary>
    /// Boards come by what they lose, least first: none but the last loses more than its share of what may still be lost.
    /// </summary>
    private void Match(ulong left, long lost, long before)
    {
        var open = boards.Sum();
        for (var g = 0; g < boards.Length && !steps.AreUp; g++)
        {
            if (boards[g] == 0)
                continue;
            boards[g]--;
            if (open == 1)
                TryLast(g, left, lost);
            else
                Try(g, left, lost, before, open);
            boards[g]++;
        }
    }

    private void Try(int g, ulong left, long lost, long before, int open)
    {
        foreach (var fill in kept[g])
        {
            if (fill.Loss < before)
                continue;
            if (lost + open * fill.Loss > budget)
                break;
            looks++;
            if (fill.Packed == left || !packing.Holds(left, fill.Packed))
                continue;
            placed.Add((g, fill));
            Match(left - fill.Packed, lost + fill.Loss, fill.Loss);
            placed.RemoveAt(placed.Count - 1);
        }

        var counted = looks / LooksCounted;
        looks -= counted * LooksCounted;
        steps.Take(1 + (int)counted);
    }

    private void TryLast(int g, ulong left, long lost)
    {
        if (LastOn(g, left, budget - lost) is not { } fill)
            return;
        placed.Add((g, fill));
        Judge();
        placed.RemoveAt(placed.Count - 1);
    }

    /// <summary>The best fill of just what is left; those that lose up to a share are known.</summary>
    private Fill? LastOn(int g, ulong left, long within)
    {
        if (byBlanks[g].TryGetValue(left, out var fill))
            return fill.Loss <= within ? fill : null;
        return within > share ? last[g].Of(left, within) : null;
    }

    private void Judge()
    {
        var cost = begun.Cost;
        var length = begun.Length;
        foreach (var (g, fill) in placed)
        {
            cost += fills[g].CostOf(fill);
            length += fill.Span;
        }

        if (Best is not null && taste.Compare(cost, length, Best.Cost, Best.LengthUsed) >= 0)
            return;
        Best = new(cost, length, Sections());
        budget = Math.Min(budget, BudgetAfter(cost, length));
    }

    private List<(Stock, IReadOnlyList<SectionOption>)> Sections()
    {
        var sections = new List<(Stock, IReadOnlyList<SectionOption>)>();
        foreach (var group in groups)
        {
            var its = placed.Where(p => p.Group == group.Index).Select(p => p.Fill);
            sections.AddRange(
                group.Stocks.Zip(its, (s, f) => (s, Options(fills[group.Index].SectionsOf(f))))
            );
        }

        return sections;
    }

    private IReadOnlyList<SectionOption> Options(IEnumerable<int> sections) =>
        [.. sections.Select(c => columns[c].Option(lines.Of(c)))];
}
