using System.Runtime.InteropServices;

namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// Every choice of blanks that one board of a group could yield within a budget of losses, each in the ways that are not
/// beaten in both length and cost.
/// </summary>
internal sealed class BoardFills
{
    private const int LooksCounted = 400;
    private const int None = -1;
    private readonly Packing packing;
    private readonly IReadOnlyList<Column> columns;
    private readonly BlankOrder order;
    private readonly Taste taste;
    private readonly Func<Fill, long> linesOf;
    private readonly Steps steps;
    private readonly BlankIndex index;
    private readonly List<Fill> fills = [];

    /// <summary>For each fill the one before it with the same blanks, or -1.</summary>
    private readonly List<int> sameBefore = [];
    private readonly Dictionary<ulong, int> newest = [];

    /// <summary>The fills by the place of the first blank that is still missing.</summary>
    private readonly List<int>[] byMissing;
    private List<int>[] byFirst = [];

    public BoardFills(
        Packing packing,
        IReadOnlyList<Column> columns,
        BlankOrder order,
        Taste taste,
        ColumnLines lines,
        Steps steps
    )
    {
        (this.packing, this.columns, this.order) = (packing, columns, order);
        (this.taste, this.steps) = (taste, steps);
        linesOf = fill => SectionsOf(fill).Sum(lines.Of);
        index = new(packing);
        byMissing = [.. Enumerable.Range(0, packing.Kinds + 1).Select(_ => new List<int>())];
    }

    /// <summary>Those found.</summary>
    public IEnumerable<Fill> All => fills.Where(f => !f.IsBeaten);

    /// <summary>
    /// Finds whatever a board could yield; false where that is more than so many. The sections of the last blank are added
    /// first, so that each choice comes up in one order only.
    /// </summary>
    public bool FindAny(BoardGroup group, long budget, int most)
    {
        for (var place = packing.Kinds - 1; place >= 0; place--)
        {
            if (Sections(group, place, budget) is not { } some)
                continue;
            var old = fills.Count;
            Begin(some);
            // A blank wanted more than once may be the first of several sections on a board.
            var again = packing.Count(packing.All, order.KindAt(place)) > 1;
            for (var i = 0; i < (again ? fills.Count : old); i++)
            {
                if (!Extend(i, some, group.Room, budget, most))
                    return false;
            }
        }

        return true;
    }

    /// <summary>
    /// Finds how one board could yield everything; false where there are more than so many ways on the way there. The next
    /// section always holds the first blank that is missing.
    /// </summary>
    public bool FindWhole(BoardGroup group, long budget, int most)
    {
        for (var place = 0; place < packing.Kinds; place++)
        {
            if (Sections(group, place, budget) is not { } some)
                continue;
            if (place == 0)
                Begin(some);
            for (var i = 0; i < byMissing[place].Count; i++)
            {
                if (!Extend(byMissing[place][i], some, group.Room, budget, most))
                    return false;
            }
        }

        return true;
    }

    /// <summary>Compares what two fills cost and use.</summary>
    public int Compare(Fill a, Fill b) =>
        taste.Compare((a, a.Effort, a.Span), (b, b.Effort, b.Span), linesOf);

    /// <summary>Sawing and lines of a fill.</summary>
    public Cost CostOf(Fill fill) => new(fill.Effort, linesOf(fill));

    /// <summary>The sections of a fill, the last first.</summary>
    public IEnumerable<int> SectionsOf(Fill fill)
    {
        yield return fill.Column;
        for (var i = fill.Before; i != None; i = fills[i].Before)
            yield return fills[i].Column;
    }

    /// <summary>The sections whose first blank is at a place, least loss first; null where there are none.</summary>
    private FillSections? Sections(BoardGroup group, int place, long budget)
    {
        var some = SectionsAt(group, budget)[place];
        if (some.Count == 0)
            return null;
        var sections = new FillSections([.. some.OrderBy(c => columns[c].Loss)], columns);
        index.Fill(sections.Packed);
        return sections;
    }

    private List<int>[] SectionsAt(BoardGroup group, long budget)
    {
        if (byFirst.Length > 0)
            return byFirst;
        byFirst = [.. Enumerable.Range(0, packing.Kinds).Select(_ => new List<int>())];
        for (var c = 0; c < columns.Count; c++)
        {
            var column = columns[c];
            if (column.Group == group && column.Loss <= budget)
                byFirst[order.First(column.Packed)].Add(c);
        }

        return byFirst;
    }

    private void Begin(FillSections some)
    {
        for (var n = 0; n < some.Columns.Length; n++)
            Add(new(0, 0, 0, 0, None, None), some, n, None);
    }

    /// <summary>Adds each of these sections to a fill where it fits; false where there are too many.</summary>
    private bool Extend(int at, FillSections some, long room, long budget, int most)
    {
        var fill = fills[at];
        var left = budget - fill.Loss;
        if (fill.IsBeaten || fill.Span + some.Shortest > room || some.Losses[0] > left)
            return true;
        var looks = index.Start(packing.All - fill.Packed, some.Within(left));
        for (var n = index.Next(); n >= 0; n = index.Next())
        {
            looks++;
            if (fill.Span + some.Spans[n] <= room)
                Add(fill, some, n, at);
        }

        return steps.Take(1 + looks / LooksCounted) && fills.Count <= most;
    }

    private void Add(Fill fill, FillSections some, int n, int before)
    {
        var longer = new Fill(
            fill.Packed + some.Packed[n],
            fill.Span + some.Spans[n],
            fill.Loss + some.Losses[n],
            fill.Effort + some.Efforts[n],
            some.Columns[n],
            before
        );
        ref var last = ref CollectionsMarshal.GetValueRefOrAddDefault(
            newest,
            longer.Packed,
            out var isKnown
        );
        var same = isKnown ? last : None;
        for (var i = same; i != None; i = sameBefore[i])
        {
            var other = fills[i];
            if (!other.IsBeaten && other.Span <= longer.Span && Compare(other, longer) <= 0)
                return;
        }

        for (var i = same; i != None; i = sameBefore[i])
        {
            if (fills[i].Span >= longer.Span && Compare(fills[i], longer) >= 0)
                fills[i] = fills[i] with { IsBeaten = true };
        }

        last = fills.Count;
        byMissing[order.First(packing.All - longer.Packed)].Add(fills.Count);
        fills.Add(longer);
        sameBefore.Add(same);
    }
}
