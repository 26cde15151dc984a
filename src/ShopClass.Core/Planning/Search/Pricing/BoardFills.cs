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
    private readonly SectionsByBlank sections;
    private readonly BlankOrder order;
    private readonly long room;
    private readonly Taste taste;
    private readonly Func<Fill, long> linesOf;
    private readonly Steps steps;
    private readonly List<Fill> fills = [];

    /// <summary>For each fill the one before it with the same blanks, or -1.</summary>
    private readonly List<int> sameBefore = [];
    private readonly Dictionary<ulong, int> newest = [];

    /// <summary>The fills by the place of the first blank that is still missing.</summary>
    private readonly List<int>[] byMissing;

    public BoardFills(
        Packing packing,
        IReadOnlyList<Column> columns,
        SectionsByBlank sections,
        long room,
        BlankOrder order,
        Taste taste,
        ColumnLines lines,
        Steps steps
    )
    {
        (this.packing, this.columns, this.order) = (packing, columns, order);
        (this.sections, this.room) = (sections, room);
        (this.taste, this.steps) = (taste, steps);
        linesOf = fill => SectionsOf(fill).Sum(lines.Of);
        byMissing = [.. Enumerable.Range(0, packing.Kinds + 1).Select(_ => new List<int>())];
    }

    /// <summary>Those found.</summary>
    public IEnumerable<Fill> All => fills.Where(f => !f.IsBeaten);

    /// <summary>
    /// Finds whatever a board could yield; false where that is more than so many. The sections of the last blank are added
    /// first, so that each choice comes up in one order only.
    /// </summary>
    public bool FindAny(long budget, int most)
    {
        for (var place = packing.Kinds - 1; place >= 0; place--)
        {
            if (sections.At(place) is not { } some)
                continue;
            var old = fills.Count;
            Begin(some, budget);
            // A blank wanted more than once may be the first of several sections on a board.
            var again = packing.Count(packing.All, order.KindAt(place)) > 1;
            for (var i = 0; i < (again ? fills.Count : old); i++)
            {
                if (!Extend(i, some, budget, most))
                    return false;
            }
        }

        return true;
    }

    /// <summary>
    /// Finds how one board could yield everything; false where there are more than so many ways on the way there. The next
    /// section always holds the first blank that is missing.
    /// </summary>
    public bool FindWhole(long budget, int most)
    {
        for (var place = 0; place < packing.Kinds; place++)
        {
            if (sections.At(place) is not { } some)
                continue;
            if (place == 0)
                Begin(some, budget);
            for (var i = 0; i < byMissing[place].Count; i++)
            {
                if (!Extend(byMissing[place][i], some, budget, most))
                    return false;
            }
        }

        return true;
    }

    /// <summary>A fill of some sections, one after the other.</summary>
    public Fill Of(ReadOnlySpan<int> some)
    {
        var fill = new Fill(0, 0, 0, 0, None, None);
        var before = None;
        foreach (var c in some)
        {
            var column = columns[c];
            fill = new(
                fill.Packed + column.Packed,
                fill.Span + column.Span,
                fill.Loss + column.Loss,
                fill.Effort + column.Effort,
                c,
                before
            );
            before = fills.Count;
            fills.Add(fill);
        }

        return fill;
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

    private void Begin(FillSections some, long budget)
    {
        var within = some.Within(budget);
        for (var n = 0; n < within; n++)
            Add(new(0, 0, 0, 0, None, None), some, n, None);
    }

    /// <summary>Adds each of these sections to a fill where it fits; false where there are too many.</summary>
    private bool Extend(int at, FillSections some, long budget, int most)
    {
        var fill = fills[at];
        var left = budget - fill.Loss;
        if (fill.IsBeaten || fill.Span + some.Shortest > room || some.Losses[0] > left)
            return true;
        var index = some.Index;
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
