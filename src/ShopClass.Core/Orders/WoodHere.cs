using ShopClass.Core.Planning.Classes;

namespace ShopClass.Core.Orders;

/// <summary>The wood of an order that is in the shop: paid for, measured, and there to be cut.</summary>
public static class WoodHere
{
    // Between the line it was ordered on and what it measures.
    private const char Measured = '~';

    /// <summary>
    /// What came with an order, and what was here when it was made: a line for each kind and measure, none of it cut yet.
    /// Boards that went back are not counted.
    /// </summary>
    public static IReadOnlyList<OrderLine> Of(ClassOrder order, IReadOnlyList<Arrived> arrived)
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
                    Id =
                        $"{line.Stock.Id}{Measured}{a.Thickness.Ticks}x{a.Width.Ticks}x{a.Length.Ticks}",
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

    // A hundredth of what was paid: so little that wood which is here always comes before wood to buy, and not nothing, so
    // that the planner goes on being sparing with it.
    private static long Reckoned(OrderLine here) =>
        Math.Max(1, here.Stock.BoardPrice.MinorUnits / 100);

    /// <summary>What all of an order costs at least, in minor units: what was paid, and what a plan's bound leaves to be bought.</summary>
    internal static long Bound(IReadOnlyList<OrderLine> here, ClassPlan plan) =>
        plan.IsComplete
            ? here.Sum(l => l.Cost.MinorUnits)
                + Math.Max(0, plan.Bound - here.Sum(l => Reckoned(l) * l.Bought))
            : long.MaxValue;

    /// <summary>Such boards for the class planner: there are only so many.</summary>
    internal static StockSize SizeOf(OrderLine here) =>
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
            Price = Reckoned(here),
            Available = here.Bought,
        };

    /// <summary>The line of a price list that boards were ordered on, whether they are here or not.</summary>
    internal static string OrderedAs(OrderLine line) =>
        $"{line.SellerId}/{line.Stock.Id.Split(Measured)[0]}";

    /// <summary>The lines with how many of each a plan cuts.</summary>
    internal static IEnumerable<OrderLine> Cut(IEnumerable<OrderLine> here, ClassPlan plan) =>
        here.Select(l => l with { Needed = CountOf(plan, ClassOrders.KeyOf(l.SellerId, l.Stock)) });

    /// <summary>How many of a size a plan takes.</summary>
    internal static int CountOf(ClassPlan plan, string key) =>
        plan.Purchases.FirstOrDefault(p => p.Size.Id == key)?.Count ?? 0;
}
