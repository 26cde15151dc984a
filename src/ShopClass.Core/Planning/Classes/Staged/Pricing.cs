namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>The most valuable way to cut every kind of board at given prices of the pieces; exact, in whole numbers.</summary>
internal sealed class Pricing
{
    private readonly PriceGroup[] groups;
    private readonly PriceGroup[] groupOf;

    /// <param name="cutting">What is cut from what.</param>
    /// <param name="roundUp">Whether sizes between steps are rounded up (for layouts) or down (for bounds).</param>
    public Pricing(Cutting cutting, bool roundUp)
    {
        groups =
        [
            .. Enumerable
                .Range(0, cutting.Planks.Count)
                .Where(p => cutting.Ways[p].Count > 0)
                .GroupBy(
                    p => string.Concat(cutting.Pieces.Select(k => k.Suit(p) ? '+' : '-')),
                    StringComparer.Ordinal
                )
                .Select(g => new PriceGroup(cutting, [.. g], roundUp)),
        ];
        groupOf = new PriceGroup[cutting.Planks.Count];
        foreach (var group in groups)
        {
            foreach (var plank in group.Planks)
                groupOf[plank] = group;
        }
    }

    /// <summary>Whether any size is rounded.</summary>
    public bool IsExact => groups.All(g => g.IsExact);

    /// <summary>Works out all boards; tells the looks it took.</summary>
    public long Run(IReadOnlyList<long> values)
    {
        foreach (var group in groups)
            group.Run(values);
        // These looks are plain additions; those of a beam are some ten times as dear.
        return groups.Sum(g => g.Looks) / 10;
    }

    /// <summary>What the best way to cut this board yields.</summary>
    public long ValueOf(int plank) => groupOf[plank]?.ValueOf(plank) ?? 0;

    /// <summary>The best way to cut this board.</summary>
    public CutBoard BestFor(int plank) => groupOf[plank].BestFor(plank);
}
