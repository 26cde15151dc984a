namespace ShopClass.Bench.Instances.Knapsack;

/// <summary>
/// A first-stage piece cut twice more: strips across the board's width, in each of them items one after the other along the
/// piece's height.
/// </summary>
/// <param name="Height">Its height, which is its own number.</param>
/// <param name="Strips">The items of each strip.</param>
/// <param name="Counts">How many of each item it holds.</param>
internal sealed record Section(int Height, IReadOnlyList<int[]> Strips, int[] Counts)
    : Shelf(Height, Counts)
{
    public static Section Of(int height, IReadOnlyList<int[]> strips, int kinds)
    {
        var counts = new int[kinds];
        foreach (var item in strips.SelectMany(s => s))
            counts[item]++;
        return new(height, strips, counts);
    }
}
