using ShopClass.Core.Lumber;
using ShopClass.Core.Planning.Classes;

namespace ShopClass.Core.Orders;

/// <summary>Tries a choice of stock for a class, one species at a time.</summary>
internal sealed class OrderTrial(OrderAsk ask, CancellationToken cancel)
{
    /// <summary>The cheapest order from this stock; where none is whole, the one with the fewest blanks missing.</summary>
    public ClassOrder Cheapest(
        IReadOnlyList<(SellerList Seller, PricedStock Stock)> stock,
        KitWay way
    )
    {
        string[] species = ask.SpeciesId is { } one
            ? [one]
            :
            [
                .. stock
                    .Select(s => s.Stock.SpeciesId)
                    .Concat(ask.Rack.Select(r => r.Board.SpeciesId))
                    .Concat(ask.Here.Select(l => l.Stock.SpeciesId))
                    .Distinct()
                    .Order(StringComparer.Ordinal),
            ];
        ClassOrder? best = null;
        foreach (var wood in species)
            best = Better(best, Of(wood, stock, way));
        return best ?? Of("", stock, way);
    }

    /// <summary>The better of two: fewer blanks missing, then cheaper; of two alike the first.</summary>
    public static ClassOrder Better(ClassOrder? a, ClassOrder b)
    {
        if (a is null)
            return b;
        var (missing, cost) = (
            a.Plan.Missing.Count.CompareTo(b.Plan.Missing.Count),
            a.Total.CompareTo(b.Total)
        );
        var better = missing < 0 || (missing == 0 && cost <= 0) ? a : b;
        // What is proven of the cheapest species is not proven of them all.
        return better with { Bound = Math.Min(a.Bound, b.Bound) };
    }

    private ClassOrder Of(
        string species,
        IReadOnlyList<(SellerList Seller, PricedStock Stock)> stock,
        KitWay way
    )
    {
        var fit = stock.Where(s => s.Stock.SpeciesId == species).ToList();
        var request = new ClassRequest
        {
            Project = ask.WithPractice,
            Rules = ask.Rules,
            Kits = ask.People.Count,
            SpareKits = ask.SpareKits,
            SpareParts = ask.SpareParts,
            Stock =
            [
                .. ask.Here.Where(l => l.Stock.SpeciesId == species).Select(WoodHere.SizeOf),
                .. fit.Select(s => SizeOf(s.Seller, s.Stock)),
            ],
            Rack = [.. RackBoards(species)],
            Way = way,
        };
        var plan = ClassPlanner.Plan(request, progress: null, cancel);
        return new()
        {
            Ask = ask,
            Request = request,
            Plan = plan,
            Lines = [.. WoodHere.Cut(ask.Here, plan), .. Lines(plan, fit)],
            Bound = WoodHere.Bound(ask.Here, plan),
        };
    }

    private IEnumerable<RackBoard> RackBoards(string species) =>
        from piece in ask.Rack
        where piece.State is RackState.Free && piece.Board.SpeciesId == species
        from copy in Enumerable.Range(1, piece.Count)
        select new RackBoard(piece.Board with { Id = $"{piece.Id}/{copy}", Price = null });

    private static StockSize SizeOf(SellerList seller, PricedStock stock) =>
        new()
        {
            Id = ClassOrders.KeyOf(seller.Id, stock),
            SellerId = seller.Id,
            Name = stock.Name,
            SpeciesId = stock.SpeciesId,
            Surfacing = stock.Surfacing,
            Thickness = stock.Thickness,
            Width = stock.Width,
            Length = stock.Length,
            Price = stock.BoardPrice.MinorUnits,
            // Only whole packs can be had.
            Available = stock.Available / stock.PackSize * stock.PackSize,
        };

    private static IEnumerable<OrderLine> Lines(
        ClassPlan plan,
        List<(SellerList Seller, PricedStock Stock)> fit
    ) =>
        from choice in fit
        from purchase in plan.Purchases
        where purchase.Size.Id == ClassOrders.KeyOf(choice.Seller.Id, choice.Stock)
        let packs = (purchase.Count + choice.Stock.PackSize - 1) / choice.Stock.PackSize
        select new OrderLine(
            choice.Seller.Id,
            choice.Seller.Name,
            choice.Stock,
            purchase.Count,
            packs * choice.Stock.PackSize
        );
}
