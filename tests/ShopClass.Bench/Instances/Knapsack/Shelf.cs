namespace ShopClass.Bench.Instances.Knapsack;

/// <summary>A first-stage piece of one board: its height (by number, tallest first) and how many of each item lie side by side on it.</summary>
internal record Shelf(int Height, int[] Counts)
{
    /// <summary>The items on it.</summary>
    public int[] Kinds { get; } = [.. Enumerable.Range(0, Counts.Length).Where(i => Counts[i] > 0)];
}

/// <summary>One board to fill with shelves; items are at most as high as their shelf and are never turned.</summary>
internal sealed record ShelfProblem(int Width, int Length, IReadOnlyList<Item> Items)
{
    /// <summary>The heights a shelf may have; unless others are given those of the items, tallest first.</summary>
    public int[] Heights { get; init; } =
    [
        .. Items
            .Where(i => i.Count > 0 && i.W <= Width && i.H <= Length)
            .Select(i => i.H)
            .Distinct()
            .OrderDescending(),
    ];

    public long Profit(Shelf shelf)
    {
        long sum = 0;
        foreach (var i in shelf.Kinds)
            sum += shelf.Counts[i] * Items[i].Profit;
        return sum;
    }
}

/// <summary>
/// A branch: shelves of a height, or an item's copies on shelves of a height, are at least or at most so many.
/// </summary>
internal sealed record Limit(int Height, int? Item, bool AtLeast, int Number)
{
    public int Of(Shelf shelf) =>
        shelf.Height != Height ? 0
        : Item is { } item ? shelf.Counts[item]
        : 1;
}
