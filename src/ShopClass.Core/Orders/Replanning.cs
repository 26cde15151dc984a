using ShopClass.Core.Planning.Classes;

namespace ShopClass.Core.Orders;

/// <summary>Lays an order's kits out again on what came, as it measures, and says what that changes.</summary>
public static class Replanning
{
    /// <summary>
    /// The order's kits on the boards that came and the rack; what they do not yield is bought in addition, of the sizes the
    /// order chose from, at least cost. What has not come is taken as not coming. Boards that are here count as paid.
    /// </summary>
    /// <param name="order">The order.</param>
    /// <param name="number">Its number.</param>
    /// <param name="arrived">What came.</param>
    /// <param name="cancel">Stops the search; the best so far is returned.</param>
    public static ClassOrder Of(
        ClassOrder order,
        int number,
        IReadOnlyList<Arrived> arrived,
        CancellationToken cancel = default
    )
    {
        var here = Here(order, arrived);
        var request = order.Request with
        {
            Stock = [.. here.Select(h => SizeOf(h)), .. ForSale(order)],
        };
        var plan = ClassPlanner.Plan(request, progress: null, cancel);
        int Cut(OrderLine line) => CountOf(plan, ClassOrders.KeyOf(line.SellerId, line.Stock));
        var paid = here.Sum(l => l.Cost.MinorUnits);
        var again = order with
        {
            Request = request,
            Plan = plan,
            Lines = [.. here.Select(l => l with { Needed = Cut(l) }), .. Bought(order, plan)],
            Bound = plan.IsComplete ? paid + plan.Bound : long.MaxValue,
        };
        return again with { Replaces = new(number, Changes(order, again)) };
    }

    /// <summary>What became different, in sentences: whose blanks moved, what to buy, who is short, what is left over.</summary>
    public static IReadOnlyList<string> Changes(ClassOrder before, ClassOrder after) =>
        [.. Moved(before, after), .. StillToBuy(after), .. Short(after), .. LeftWhole(after)];

    private static List<OrderLine> Here(ClassOrder order, IReadOnlyList<Arrived> arrived)
    {
        var came =
            from a in arrived
            where !a.IsRefused
            from line in order.ToBuy
            where (line.SellerId, line.Stock.Id) == (a.SellerId, a.StockId)
            select line with
            {
                Bought = a.Count,
                IsHere = true,
                Stock = line.Stock with
                {
                    Id = $"{line.Stock.Id}~{a.Thickness.Ticks}x{a.Width.Ticks}x{a.Length.Ticks}",
                    Thickness = a.Thickness,
                    Width = a.Width,
                    Length = a.Length,
                    Price = line.Stock.BoardPrice,
                    Basis = PriceBasis.Each,
                    PackSize = 1,
                    Available = null,
                },
            };
        return
        [
            .. order
                .Lines.Where(l => l.IsHere)
                .Concat(came)
                .GroupBy(l => ClassOrders.KeyOf(l.SellerId, l.Stock), StringComparer.Ordinal)
                .Select(g => g.First() with { Needed = 0, Bought = g.Sum(l => l.Bought) }),
        ];
    }

    private static StockSize SizeOf(OrderLine here) =>
        new()
        {
            Id = ClassOrders.KeyOf(here.SellerId, here.Stock),
            SellerId = here.SellerId,
            Name = here.Stock.Name,
            SpeciesId = here.Stock.SpeciesId,
            Surfacing = here.Stock.Surfacing,
            Thickness = here.Stock.Thickness,
            Width = here.Stock.Width,
            Length = here.Stock.Length,
            Price = 0,
            Available = here.Bought,
        };

    // What the order took of a seller's stock is not there a second time.
    private static IEnumerable<StockSize> ForSale(ClassOrder order) =>
        from size in order.Request.Stock
        where !order.Lines.Any(l => l.IsHere && ClassOrders.KeyOf(l.SellerId, l.Stock) == size.Id)
        let taken = order
            .ToBuy.Where(l => ClassOrders.KeyOf(l.SellerId, l.Stock) == size.Id)
            .Sum(l => l.Bought)
        select size with
        {
            Available = size.Available is { } left ? Math.Max(0, left - taken) : null,
        };

    private static IEnumerable<OrderLine> Bought(ClassOrder order, ClassPlan plan) =>
        from seller in order.Ask.Sellers
        from stock in seller.Stock
        let count = CountOf(plan, ClassOrders.KeyOf(seller.Id, stock))
        where count > 0
        let packs = (count + stock.PackSize - 1) / stock.PackSize
        select new OrderLine(seller.Id, seller.Name, stock, count, packs * stock.PackSize);

    private static int CountOf(ClassPlan plan, string key) =>
        plan.Purchases.FirstOrDefault(p => p.Size.Id == key)?.Count ?? 0;

    private static IEnumerable<string> Moved(ClassOrder before, ClassOrder after)
    {
        foreach (var kit in Enumerable.Range(1, after.Ask.AllKits).Append(0))
        {
            var (was, now) = (Wood(before, kit), Wood(after, kit));
            var (gone, come) = (Less(was, now), Less(now, was));
            if (gone.Count + come.Count > 0)
                yield return $"{(kit == 0 ? "Spare parts" : after.KitName(kit))}: {Said(gone)} before, {Said(come)} now.";
        }
    }

    // Boards are the same for a kit when they are of one seller, name and size; which copy it is does not matter.
    private static List<(string Key, string Words)> Wood(ClassOrder order, int kit) =>
        [
            .. order
                .BlanksOf(kit)
                .Select(b =>
                    (
                        KindOf(order, b.Board) + OrderWords.Blanks(b.Blanks),
                        $"{OrderWords.Blanks(b.Blanks)} from {OrderWords.Source(order, b.Board)}"
                    )
                ),
        ];

    private static string KindOf(ClassOrder order, ClassBoard board) =>
        order.LineOf(board) is { Stock: var s } line
            ? $"{line.SellerId} {s.Name} {s.Thickness.Ticks} {s.Width.Ticks} {s.Length.Ticks} "
            : $"{board.Board.Id} ";

    private static List<string> Less(
        List<(string Key, string Words)> all,
        List<(string Key, string Words)> others
    )
    {
        var left = others.ConvertAll(o => o.Key);
        return [.. all.Where(a => !left.Remove(a.Key)).Select(a => a.Words)];
    }

    private static string Said(List<string> wood) =>
        wood.Count == 0 ? "nothing" : string.Join("; ", wood);

    private static IEnumerable<string> StillToBuy(ClassOrder order) =>
        order.ToBuy.Select(l =>
            $"Buy {l.Bought} × {OrderWords.Board(l.Stock, order.Ask.Rules.Precision)} from {l.Seller}, {l.Cost.Shown()}."
        );

    private static IEnumerable<string> Short(ClassOrder order) =>
        order.Without.Select(w =>
            $"Still short: {w.Kit} goes without {OrderWords.Keys(w.Missing)}. {GoingWithout.Why(order, w.Missing)}"
        );

    private static IEnumerable<string> LeftWhole(ClassOrder order) =>
        from line in order.Lines
        where line.IsHere && line.Bought > line.Needed
        select $"Left whole: {line.Bought - line.Needed} × {OrderWords.Board(line, order.Ask.Rules.Precision)}.";
}
