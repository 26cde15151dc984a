using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Orders;

namespace ShopClass.Core.Remakes;

/// <summary>What the shop's rack and the sellers' lists offer for a remake.</summary>
public static class ShopSupplies
{
    /// <summary>
    /// The free pieces of the rack, named with their place, and one board of each line of the lists that is not sold out. A
    /// bought board loses the course's usual end trim at both ends.
    /// </summary>
    public static Supplies Of(
        IEnumerable<RackPiece> rack,
        IEnumerable<SellerList> sellers,
        CourseRules rules
    ) =>
        new()
        {
            Rack =
            [
                .. rack.Where(p => p.State is RackState.Free)
                    .Select(p =>
                        p.Board with
                        {
                            Id = p.Id,
                            Name =
                                p.Place.Length == 0 ? p.Board.Name : $"{p.Board.Name}, {p.Place}",
                        }
                    ),
            ],
            ForSale =
            [
                .. from seller in sellers
                from stock in seller.Stock
                where stock.Available is not 0
                select Bought(seller, stock, rules),
            ],
        };

    private static Board Bought(SellerList seller, PricedStock stock, CourseRules rules) =>
        new()
        {
            Id = $"{seller.Id}-{stock.Id}",
            Name = $"{stock.Name} from {seller.Name}",
            SpeciesId = stock.SpeciesId,
            Surfacing = stock.Surfacing,
            Thickness = stock.Thickness,
            WidthAtStart = stock.Width,
            WidthAtMiddle = stock.Width,
            WidthAtEnd = stock.Width,
            Length = stock.Length,
            TrimStart = rules.UsualEndTrim,
            TrimEnd = rules.UsualEndTrim,
            Price = stock.BoardPrice,
        };
}
