namespace ShopClass.Core.Planning.Search;

/// <summary>Which boards to cut, and in which order to fill them.</summary>
internal static class BoardChoices
{
    private const int FewBoards = 4;

    /// <summary>The most boards of which every choice is looked at.</summary>
    public const int MostBoards = 10;

    /// <summary>Orders worth trying at first: each choice of a few boards both ways round; of many, each alone and all together.</summary>
    public static IEnumerable<IReadOnlyList<Stock>> Orders(IReadOnlyList<Stock> stocks)
    {
        if (stocks.Count == 0)
            return
            [
                [],
            ];
        var some =
            stocks.Count <= FewBoards
                ? Subsets(stocks)
                : stocks
                    .Select(s => (IReadOnlyList<Stock>)[s])
                    .Append(stocks)
                    .Append(BySize(stocks));
        return some.SelectMany(order =>
            order.Count == 1 ? [order] : new[] { order, [.. order.Reverse()] }
        );
    }

    /// <summary>All choices of at least one board, cheapest first.</summary>
    public static IEnumerable<IReadOnlyList<Stock>> Subsets(IReadOnlyList<Stock> stocks) =>
        Enumerable
            .Range(1, (1 << stocks.Count) - 1)
            .Select(mask => (IReadOnlyList<Stock>)[.. stocks.Where((_, i) => (mask >> i & 1) == 1)])
            .OrderBy(chosen => BoardCost.Of(chosen.Select(s => s.Board)));

    /// <summary>The same without choices that differ only in taking a later one of two boards that are alike.</summary>
    public static IEnumerable<IReadOnlyList<Stock>> Different(IReadOnlyList<Stock> stocks) =>
        Subsets(stocks)
            .Where(chosen =>
                chosen.All(s =>
                    stocks.Take(s.Index).Where(other => other.IsLike(s)).All(chosen.Contains)
                )
            );

    private static Stock[] BySize(IReadOnlyList<Stock> stocks) =>
        [.. stocks.OrderByDescending(s => (Int128)s.Usable * s.Width)];
}
