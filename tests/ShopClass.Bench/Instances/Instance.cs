namespace ShopClass.Bench.Instances;

/// <summary>A board size on offer: W and H as the file has them; copies below zero mean any number.</summary>
internal sealed record StockSize(int W, int H, long Cost, int Copies);

/// <summary>A part wanted: at most (knapsack) or exactly (all others) so many copies. Profit is 0 outside the knapsack sets.</summary>
internal sealed record Item(int W, int H, int Count, long Profit);

/// <summary>One published instance. A 1-D instance has boards and parts of H = 1.</summary>
internal sealed record Instance(
    string Set,
    string Id,
    string Class,
    int N,
    bool IsOneDimensional,
    bool HasProfits,
    bool HasDefects,
    int? LongestSection,
    IReadOnlyList<StockSize> Stock,
    IReadOnlyList<Item> Items,
    IReadOnlyDictionary<string, double> Values,
    IReadOnlySet<string> Proven
);
