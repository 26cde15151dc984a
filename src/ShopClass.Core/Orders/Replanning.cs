using ShopClass.Core.Planning.Classes;

namespace ShopClass.Core.Orders;

/// <summary>Lays an order's kits out again on what came, as it measures, and says what that changes.</summary>
public static class Replanning
{
    /// <summary>
    /// The order's kits on the boards that came and the rack. What can still be cut as it was laid out stays; the rest is laid
    /// out on what is left, and what that does not yield is bought in addition, of the sizes the order chose from. Where
    /// keeping leaves somebody short or costs more than laying out everything again, everything is laid out again, and the
    /// changes say so. What has not come is taken as not coming. Boards that are here count as paid.
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
        var here = WoodHere.Of(order, arrived);
        var request = order.Request with
        {
            Stock = [.. here.Select(WoodHere.SizeOf), .. ForSale(order)],
        };
        ClassOrder With(ClassPlan plan) =>
            order with
            {
                Request = request,
                Plan = plan,
                Lines = [.. WoodHere.Cut(here, plan), .. Bought(order, plan)],
                Bound = WoodHere.Bound(here, plan),
            };
        ClassOrder Said(ClassOrder again, string first) =>
            again with
            {
                Replaces = new(number, [first, .. Changes(order, again)]),
            };
        var kept = new KeptKits(order, here, request, cancel).Plan();
        if (kept is { IsComplete: true } && With(kept) is var enough && !enough.ToBuy.Any())
            return Said(enough, Stay(order, enough));
        var plan = ClassPlanner.Plan(request, progress: null, cancel);
        var all = With(plan);
        if (kept is null)
            return Said(all, AllAgain(""));
        var some = With(kept with { Bound = Math.Min(plan.Bound, kept.Cost) });
        if (some.Plan.Missing.Count > all.Plan.Missing.Count)
            return Said(
                all,
                AllAgain(
                    $" Keeping what fits would leave {OrderWords.Say(some.Plan.Missing.Count, "blank")} missing, this {all.Plan.Missing.Count}."
                )
            );
        return some.Total > all.Total && all.Plan.Missing.Count == some.Plan.Missing.Count
            ? Said(
                all,
                AllAgain($" Keeping what fits would cost {(some.Total - all.Total).Shown()} more.")
            )
            : Said(some, Stay(order, some));
    }

    private static string AllAgain(string why) => $"All kits are laid out again.{why}";

    private static string Stay(ClassOrder before, ClassOrder after)
    {
        var kits = Enumerable.Range(1, after.Ask.AllKits).ToList();
        var moved = kits.Count(k => Differs(before, after, k));
        return moved == 0
            ? "Every kit stays on the kind of board it was laid out on."
            : $"{kits.Count - moved} of {OrderWords.Say(kits.Count, "kit")} stay as they are; {OrderWords.Say(moved, "kit")} {(moved == 1 ? "is" : "are")} laid out again.";
    }

    /// <summary>What became different, in sentences: whose blanks moved, what to buy, who is short, what is left over.</summary>
    public static IReadOnlyList<string> Changes(ClassOrder before, ClassOrder after) =>
        [.. Moved(before, after), .. StillToBuy(after), .. Short(after), .. LeftWhole(after)];

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
        let count = WoodHere.CountOf(plan, ClassOrders.KeyOf(seller.Id, stock))
        where count > 0
        let packs = (count + stock.PackSize - 1) / stock.PackSize
        select new OrderLine(seller.Id, seller.Name, stock, count, packs * stock.PackSize);

    private static IEnumerable<string> Moved(ClassOrder before, ClassOrder after)
    {
        foreach (var kit in Enumerable.Range(1, after.Ask.AllKits).Append(0))
        {
            var (gone, come) = Differences(before, after, kit);
            if (gone.Count + come.Count > 0)
                yield return $"{(kit == 0 ? "Spare parts" : after.KitName(kit))}: {Said(gone)} before, {Said(come)} now.";
        }
    }

    private static bool Differs(ClassOrder before, ClassOrder after, int kit) =>
        Differences(before, after, kit) is { Gone.Count: > 0 } or { Come.Count: > 0 };

    private static (List<string> Gone, List<string> Come) Differences(
        ClassOrder before,
        ClassOrder after,
        int kit
    )
    {
        var (was, now) = (Wood(before, before, kit), Wood(before, after, kit));
        return (Less(was, now), Less(now, was));
    }

    // Boards are the same for a kit when they were ordered on one line and none is smaller; which copy does not matter.
    private static List<(string Key, string Words)> Wood(
        ClassOrder before,
        ClassOrder order,
        int kit
    ) =>
        [
            .. order
                .BlanksOf(kit)
                .Select(b =>
                    (
                        KindOf(before, order, b.Board) + OrderWords.Blanks(b.Blanks),
                        $"{OrderWords.Blanks(b.Blanks)} from {OrderWords.Source(order, b.Board)}"
                    )
                ),
        ];

    private static string KindOf(ClassOrder before, ClassOrder order, ClassBoard board)
    {
        if (order.LineOf(board) is not { } line)
            return $"{board.Board.Id} ";
        var (ordered, now) = (WoodHere.OrderedAs(line), line.Stock);
        var asListed = before
            .Lines.Where(l => WoodHere.OrderedAs(l) == ordered)
            .Any(l =>
                now.Thickness == l.Stock.Thickness
                && now.Width >= l.Stock.Width
                && now.Length >= l.Stock.Length
            );
        return asListed
            ? $"{ordered} "
            : $"{ordered} {now.Thickness.Ticks} {now.Width.Ticks} {now.Length.Ticks} ";
    }

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
