using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Data.Orders;
using ShopClass.Data.Tests.Access;
using Xunit;

namespace ShopClass.Data.Tests.Orders;

/// <summary>Wood to order and wood on the rack, to test with.</summary>
internal static class OrderSamples
{
    public static readonly OrderChoices Choices = new(OrderWay.Cheapest, 1, true, null, 30, "USD");

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public static RackPiece Piece(string place) =>
        new()
        {
            Id = "",
            Board = Wood.Pine(),
            Place = place,
        };

    public static async Task<ClassOrder> MakeAsync(
        Shop shop,
        ThrowAwayStore store,
        IReadOnlyList<OrderPerson>? people = null
    )
    {
        var sellers = store.Services.GetRequiredService<SellerStore>();
        var seller = Shop.Value(
            await sellers.AddAsync(shop.Owner, shop.Course.Id, "Invented Timber", "USD", Cancel)
        );
        Shop.Value(
            await sellers.SaveStockAsync(shop.Owner, seller.Id, [Wide], seller.Version, Cancel)
        );
        var orders = store.Services.GetRequiredService<OrderStore>();
        var ask = (await orders.AskAsync(shop.Owner, shop.Project.Id, Choices, Cancel))!;
        return ClassOrders.Make(people is null ? ask : ask with { People = people }, Cancel);
    }

    private static PricedStock Wide { get; } =
        new()
        {
            Id = "",
            Name = "1x12",
            SpeciesId = "eastern-white-pine",
            Surfacing = Surfacing.S4S,
            Thickness = Length.FromInches(0, 3, 4),
            Width = Length.FromInches(11, 1, 4),
            Length = Length.FromInches(144),
            Price = new(6900, "USD"),
            Basis = PriceBasis.Each,
        };
}
