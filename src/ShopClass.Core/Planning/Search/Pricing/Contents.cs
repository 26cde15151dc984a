namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>The blanks of many sections, kind by kind.</summary>
internal sealed class Contents
{
    private readonly int[] starts;
    private readonly List<int> kinds = [];
    private readonly List<int> counts = [];
    private readonly int[] blanks;

    public Contents(Packing packing, IReadOnlyList<Column> columns)
    {
        starts = new int[columns.Count + 1];
        blanks = new int[columns.Count];
        for (var c = 0; c < columns.Count; c++)
        {
            for (var k = 0; k < packing.Kinds; k++)
            {
                if (packing.Count(columns[c].Packed, k) is not (> 0 and var count))
                    continue;
                kinds.Add(k);
                counts.Add(count);
                blanks[c] += count;
            }

            starts[c + 1] = kinds.Count;
        }
    }

    /// <summary>The kinds in a section.</summary>
    public ReadOnlySpan<int> Kinds(int column) => Of(kinds, column);

    /// <summary>How many of each of these kinds.</summary>
    public ReadOnlySpan<int> Counts(int column) => Of(counts, column);

    /// <summary>How many blanks in all.</summary>
    public int Blanks(int column) => blanks[column];

    private ReadOnlySpan<int> Of(List<int> all, int column) =>
        System.Runtime.InteropServices.CollectionsMarshal.AsSpan(all)[
            starts[column]..starts[column + 1]
        ];
}
