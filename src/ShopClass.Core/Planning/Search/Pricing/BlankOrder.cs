namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>The kinds in an order: those that fewest sections hold come first.</summary>
internal sealed class BlankOrder
{
    private readonly int[] kinds;
    private readonly ulong[] masks;

    public BlankOrder(Packing packing, IReadOnlyList<Column> columns)
    {
        var sections = new int[packing.Kinds];
        foreach (var column in columns)
        {
            for (var k = 0; k < packing.Kinds; k++)
                sections[k] += packing.HasAny(column.Packed, k) ? 1 : 0;
        }

        kinds = [.. Enumerable.Range(0, packing.Kinds).OrderBy(k => sections[k]).ThenBy(k => k)];
        masks = [.. kinds.Select(packing.Mask)];
    }

    /// <summary>The kind at a place of the order.</summary>
    public int KindAt(int place) => kinds[place];

    /// <summary>Place of the first kind that is among some blanks; how many kinds there are where there are none.</summary>
    public int First(ulong packed)
    {
        var place = 0;
        while (place < masks.Length && (packed & masks[place]) == 0)
            place++;
        return place;
    }
}
