namespace ShopClass.Core.Planning.Search.BadPlaces;

/// <summary>A clear board: everything is known.</summary>
internal sealed class ClearBound(Stock stock, BoardTable table) : SplitBound
{
    private readonly Dictionary<int, BoardWay?> ways = [];

    private BoardWay? Way(int code)
    {
        if (!ways.TryGetValue(code, out var way))
            ways.Add(code, way = table.BestOn(stock, code));
        return way;
    }

    /// <inheritdoc/>
    public override (Cost Cost, long Length)? Least(int code) =>
        Way(code) is { } way ? (way.Cost + stock.TrimCost, way.Length) : null;

    /// <inheritdoc/>
    public override Depth DepthOf(int code) => Depth.Settled;

    /// <inheritdoc/>
    public override void LookInto(int code) { }

    /// <inheritdoc/>
    public override IReadOnlyList<DraftBoard>? Layout(int code) =>
        Way(code) is { } way ? [new(stock, way.Sections())] : null;
}
