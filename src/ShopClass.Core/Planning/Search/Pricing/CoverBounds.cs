namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// What the blanks left must still lose at least: each section's loss is shared out among its blanks, and each blank left
/// takes at least the smallest share that a section offers it; what is left of a board where nothing more goes is paid
/// for in vain. The same is done with length.
/// </summary>
internal sealed class CoverBounds
{
    private readonly Packing packing;
    private readonly IReadOnlyList<Column> columns;
    private readonly CoverBoards boards;
    private readonly Contents contents;
    private readonly long[] share;
    private readonly long[] span;
    private readonly int[] sections;

    public CoverBounds(
        Packing packing,
        IReadOnlyList<Column> columns,
        Contents contents,
        CoverBoards boards,
        int groups
    )
    {
        (this.packing, this.columns, this.boards) = (packing, columns, boards);
        this.contents = contents;
        share = new long[packing.Kinds];
        span = new long[packing.Kinds];
        sections = new int[packing.Kinds];
        Shortest = new long[groups];
    }

    /// <summary>The shortest section of each group among those looked at last.</summary>
    public long[] Shortest { get; }

    /// <summary>How many blanks were left.</summary>
    public int BlanksLeft { get; private set; }

    /// <summary>Keeps, in their order, those sections that could be in a plan within the budget; none where there is no such plan.</summary>
    public Span<Listed> Narrow(Span<Listed> list, ulong left, long[] perTick, long budget)
    {
        Count(list);
        var (room, least) = boards.Left(Shortest, perTick);
        var length = 0L;
        BlanksLeft = 0;
        for (var k = 0; k < share.Length; k++)
        {
            var count = packing.Count(left, k);
            if (count == 0)
                continue;
            if (sections[k] == 0)
                return [];
            BlanksLeft += count;
            least += share[k] * count;
            length += span[k] * count;
        }

        return least > budget || length > room ? [] : Kept(list, budget - least);
    }

    /// <summary>The kind left that fewest of the sections kept hold.</summary>
    public int Scarcest(ulong left)
    {
        var scarcest = -1;
        for (var k = 0; k < sections.Length; k++)
        {
            if (packing.HasAny(left, k) && (scarcest < 0 || sections[k] < sections[scarcest]))
                scarcest = k;
        }

        return scarcest;
    }

    private void Count(ReadOnlySpan<Listed> list)
    {
        Array.Fill(share, long.MaxValue);
        Array.Fill(span, long.MaxValue);
        Array.Fill(Shortest, long.MaxValue);
        Array.Clear(sections);
        foreach (var (c, own) in list)
        {
            var column = columns[c];
            ref var shortest = ref Shortest[column.Group.Index];
            shortest = Math.Min(shortest, column.Span);
            var loss = Share(own, contents.Blanks(c));
            var along = column.Span / contents.Blanks(c);
            foreach (var k in contents.Kinds(c))
            {
                share[k] = Math.Min(share[k], loss);
                span[k] = Math.Min(span[k], along);
                sections[k]++;
            }
        }
    }

    private Span<Listed> Kept(Span<Listed> list, long spare)
    {
        var kept = 0;
        foreach (var item in list)
        {
            var (c, own) = item;
            var kinds = contents.Kinds(c);
            var counts = contents.Counts(c);
            for (var i = 0; i < kinds.Length; i++)
                own -= share[kinds[i]] * counts[i];
            if (own <= spare)
            {
                list[kept++] = item;
                continue;
            }

            foreach (var k in kinds)
                sections[k]--;
        }

        return list[..kept];
    }

    /// <summary>A loss divided, rounded down.</summary>
    private static long Share(long loss, int by) =>
        loss >= 0 ? loss / by : -((-loss + by - 1) / by);
}
