using ShopClass.Core.Planning.Classes;

namespace ShopClass.Core.Orders;

/// <summary>Works out what to buy for a class, in the way that is asked for.</summary>
public static class ClassOrders
{
    /// <summary>
    /// The order. One species serves the whole class: the one that is asked for, or the one that comes cheapest. Never
    /// throws for lists that will not do: <see cref="ClassOrder.Without"/> says who goes without.
    /// </summary>
    /// <param name="ask">Everything the order depends on.</param>
    /// <param name="cancel">Stops the search; the best so far is returned.</param>
    public static ClassOrder Make(OrderAsk ask, CancellationToken cancel = default)
    {
        var trial = new OrderTrial(ask, cancel);
        var all = ask.Sellers.SelectMany(s => s.Stock.Select(k => (s, k))).ToList();
        return ask.Way switch
        {
            OrderWay.Cheapest => Cheapest(ask, trial, all),
            OrderWay.WholeBoards => trial.Cheapest(all, KitWay.WholeBoards),
            OrderWay.FewestSellers => FewestSellers(ask, trial),
            OrderWay.FewestSizes => FewestSizes(trial, all),
            _ => throw new ArgumentOutOfRangeException(nameof(ask), ask.Way, "Not a way to order."),
        };
    }

    /// <summary>The key a line of stock has in the planner's request.</summary>
    internal static string KeyOf(string sellerId, PricedStock stock) => $"{sellerId}/{stock.Id}";

    // Packs are rounded up after the choice, so a choice from one seller alone may come out cheaper than one from all.
    private static ClassOrder Cheapest(
        OrderAsk ask,
        OrderTrial trial,
        List<(SellerList Seller, PricedStock Stock)> all
    )
    {
        var order = trial.Cheapest(all, KitWay.Pooled);
        if (ask.Sellers.Count < 2)
            return order;
        return ask.Sellers.Aggregate(
            order,
            (best, seller) =>
                OrderTrial.Better(
                    best,
                    trial.Cheapest([.. seller.Stock.Select(k => (seller, k))], KitWay.Pooled)
                )
        );
    }

    private static ClassOrder FewestSellers(OrderAsk ask, OrderTrial trial)
    {
        ClassOrder? best = null;
        foreach (var seller in ask.Sellers)
            best = OrderTrial.Better(
                best,
                trial.Cheapest([.. seller.Stock.Select(k => (seller, k))], KitWay.Pooled)
            );
        if (best is { IsComplete: true })
            return best;
        // No single seller will do: leave out one after another, the least used first, while the rest still does.
        var all = ask.Sellers.SelectMany(s => s.Stock.Select(k => (s, k))).ToList();
        var order = trial.Cheapest(all, KitWay.Pooled);
        foreach (
            var seller in order
                .ToBuy.GroupBy(l => l.SellerId)
                .OrderBy(g => g.Sum(l => l.Cost.MinorUnits))
                .Select(g => g.Key)
                .ToList()
        )
        {
            var rest = all.Where(a => a.s.Id != seller).ToList();
            if (trial.Cheapest(rest, KitWay.Pooled) is { IsComplete: true } without)
                (order, all) = (without, rest);
        }

        return order;
    }

    private static ClassOrder FewestSizes(
        OrderTrial trial,
        List<(SellerList Seller, PricedStock Stock)> all
    )
    {
        ClassOrder? single = null;
        foreach (var one in all)
            single = OrderTrial.Better(single, trial.Cheapest([one], KitWay.Pooled));
        if (single is { IsComplete: true })
            return single;
        var order = trial.Cheapest(all, KitWay.Pooled);
        foreach (var line in order.ToBuy.OrderBy(l => l.Cost.MinorUnits).ToList())
        {
            var rest = order
                .ToBuy.Where(l => l != line)
                .Select(l => all.First(a => a.Seller.Id == l.SellerId && a.Stock.Id == l.Stock.Id))
                .ToList();
            if (rest.Count > 0 && trial.Cheapest(rest, KitWay.Pooled) is { IsComplete: true } fewer)
                order = fewer;
        }

        return order;
    }
}
