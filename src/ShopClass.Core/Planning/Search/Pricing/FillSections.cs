namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>Sections that could be added to fills, least loss first.</summary>
internal sealed class FillSections(int[] some, IReadOnlyList<Column> all, Packing packing)
{
    private BlankIndex? index;

    public int[] Columns => some;
    public long[] Losses { get; } = [.. some.Select(c => all[c].Loss)];
    public long[] Spans { get; } = [.. some.Select(c => all[c].Span)];
    public long[] Efforts { get; } = [.. some.Select(c => all[c].Effort)];
    public ulong[] Packed { get; } = [.. some.Select(c => all[c].Packed)];
    public long Shortest { get; } = some.Min(c => all[c].Span);

    /// <summary>Which of them hold which blanks.</summary>
    public BlankIndex Index
    {
        get
        {
            if (index is not null)
                return index;
            index = new(packing);
            index.Fill(Packed);
            return index;
        }
    }

    /// <summary>How many of them lose no more than a limit.</summary>
    public int Within(long limit)
    {
        var (from, to) = (0, some.Length);
        while (from < to)
        {
            var middle = (from + to) / 2;
            (from, to) = Losses[middle] <= limit ? (middle + 1, to) : (from, middle);
        }

        return from;
    }
}

/// <summary>A group's listed sections by the first blank they hold.</summary>
internal sealed class SectionsByBlank
{
    private readonly FillSections?[] at;

    public SectionsByBlank(
        Packing packing,
        IReadOnlyList<Column> columns,
        BlankOrder order,
        BoardGroup group,
        long budget
    )
    {
        List<int>[] byFirst = [.. Enumerable.Range(0, packing.Kinds).Select(_ => new List<int>())];
        for (var c = 0; c < columns.Count; c++)
        {
            var column = columns[c];
            if (column.Group == group && column.Loss <= budget)
                byFirst[order.First(column.Packed)].Add(c);
        }

        at =
        [
            .. byFirst.Select(some =>
                some.Count == 0
                    ? null
                    : new FillSections([.. some.OrderBy(c => columns[c].Loss)], columns, packing)
            ),
        ];
    }

    /// <summary>Those whose first blank is at a place of the order; null where there are none.</summary>
    public FillSections? At(int place) => at[place];
}
