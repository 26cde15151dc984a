namespace ShopClass.Core.Planning.Search;

/// <summary>
/// Bounds that hold for every plan whatever its search: each blank takes at least its own area with a kerf along one edge
/// and one end, and a board yields at most its own area with the same kerfs added (the area law).
/// </summary>
internal static class SimpleBounds
{
    public static Score Of(Bench bench) => new(CheapestBoards(bench), 0, 0, 0, LeastLength(bench));

    /// <summary>Whether these boards have less area than the blanks need.</summary>
    public static bool AreTooSmall(Bench bench, IReadOnlyList<Stock> chosen) =>
        chosen.Aggregate((Int128)0, (sum, s) => sum + Yield(s)) < NeededArea(bench);

    /// <summary>Cost of the cheapest boards that together are large enough; 0 where all together are not.</summary>
    private static Int128 CheapestBoards(Bench bench)
    {
        if (bench.Kinds.Count == 0 || bench.Stocks.Count is 0 or > 12)
            return 0;
        var need = NeededArea(bench);
        return BoardChoices
            .Subsets(bench.Stocks)
            .Where(chosen => chosen.Aggregate((Int128)0, (sum, s) => sum + Yield(s)) >= need)
            .Select(chosen => BoardCost.Of(chosen.Select(s => s.Board)))
            .DefaultIfEmpty(0)
            .First();
    }

    /// <summary>Area over the greatest width, less one kerf for each board.</summary>
    private static Int128 LeastLength(Bench bench)
    {
        if (bench.Kinds.Count == 0 || bench.Stocks.Count == 0)
            return 0;
        var widest = bench.Stocks.Max(s => s.Width + s.RipKerf);
        var along = (NeededArea(bench) + widest - 1) / widest;
        return Int128.Max(0, along - bench.Stocks.Sum(s => s.CrosscutKerf));
    }

    private static Int128 Yield(Stock stock) =>
        (Int128)(stock.Usable + stock.CrosscutKerf) * (stock.Width + stock.RipKerf);

    /// <summary>Least area of all blanks, kerfs included.</summary>
    private static Int128 NeededArea(Bench bench)
    {
        var stock = bench.Stocks[0];
        Int128 area = 0;
        foreach (var kind in bench.Kinds)
            area += kind.Items.Count * LeastArea(kind, stock);
        return area;
    }

    private static Int128 LeastArea(Kind kind, Stock stock)
    {
        var straight =
            (Int128)(kind.Length + stock.CrosscutKerf)
            * (kind.WidthBetweenStraightEdges + stock.RipKerf);
        var turned = (Int128)(kind.Width + stock.CrosscutKerf) * (kind.Length + stock.RipKerf);
        return kind.MayTurn ? Int128.Min(straight, turned) : straight;
    }
}
