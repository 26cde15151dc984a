namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>The boards sections are put on, and how much of each is used.</summary>
internal sealed class CoverBoards
{
    private readonly BoardGroup[] groupOf;
    private readonly long[] used;
    private readonly long[] rooms;
    private readonly bool[] isLikeBefore;

    public CoverBoards(IReadOnlyList<BoardGroup> groups)
    {
        Stocks = [.. groups.SelectMany(g => g.Stocks)];
        groupOf = [.. groups.SelectMany(g => g.Stocks.Select(_ => g))];
        isLikeBefore = [.. groupOf.Select((g, b) => b > 0 && groupOf[b - 1] == g)];
        Before = ClearPlan.Before(Stocks);
        used = new long[Stocks.Count];
        rooms = new long[groups.Count];
    }

    public IReadOnlyList<Stock> Stocks { get; }

    /// <summary>What the boards cost before their first section, and what is to be added to the sections' length.</summary>
    public (Cost Cost, long Length) Before { get; }

    /// <summary>Length used of all boards.</summary>
    public long Length => used.Sum();

    public bool AllAreCut => Array.TrueForAll(used, u => u > 0);

    /// <summary>Of boards that are alike the first empty one is taken.</summary>
    public bool MayGoOn(int board, Column column) =>
        groupOf[board] == column.Group
        && used[board] + column.Span <= column.Group.Room
        && (!isLikeBefore[board] || used[board] > 0 || used[board - 1] > 0);

    public void Use(int board, long span) => used[board] += span;

    /// <summary>The longest room left on a board of each group.</summary>
    public long[] Longest()
    {
        Array.Clear(rooms);
        for (var b = 0; b < used.Length; b++)
        {
            ref var room = ref rooms[groupOf[b].Index];
            room = Math.Max(room, groupOf[b].Room - used[b]);
        }

        return rooms;
    }

    /// <summary>
    /// Length left where a section still goes, the shortest of each group being given, and the price of what is left in
    /// vain.
    /// </summary>
    public (long Room, long InVain) Left(long[] shortest, long[] perTick)
    {
        var (room, vain) = (0L, 0L);
        for (var b = 0; b < used.Length; b++)
        {
            var left = groupOf[b].Room - used[b];
            if (left < shortest[groupOf[b].Index])
                vain += left * perTick[groupOf[b].Index];
            else
                room += left;
        }

        return (room, vain);
    }

    /// <summary>Length left of each group's boards where a section still goes, or of all of them.</summary>
    public void RoomFor(long[]? shortest, long[] into)
    {
        Array.Clear(into);
        for (var b = 0; b < used.Length; b++)
        {
            var (left, group) = (groupOf[b].Room - used[b], groupOf[b].Index);
            if (shortest is null || left >= shortest[group])
                into[group] += left;
        }
    }

    /// <summary>What is used of each board; of boards that are alike in order, and all of those on which nothing more goes.</summary>
    public long[] Usage(long[] shortest)
    {
        var usage = new long[used.Length];
        for (var b = 0; b < used.Length; b++)
        {
            var group = groupOf[b];
            var isFull = used[b] > 0 && group.Room - used[b] < shortest[group.Index];
            usage[b] = isFull ? group.Room : used[b];
        }

        for (var from = 0; from < usage.Length; )
        {
            var to = from + 1;
            while (to < usage.Length && isLikeBefore[to])
                to++;
            Array.Sort(usage, from, to - from);
            from = to;
        }

        return usage;
    }
}
