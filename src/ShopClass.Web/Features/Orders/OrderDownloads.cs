using System.Security.Claims;
using System.Text;
using ShopClass.Core.Orders;
using ShopClass.Data.Courses;
using ShopClass.Data.Orders;
using ShopClass.Web.Features.Account;
using ShopClass.Web.Features.Sheets;

namespace ShopClass.Web.Features.Orders;

/// <summary>Price lists and orders as CSV files, for the course's instructor.</summary>
public static class OrderDownloads
{
    public static void MapOrders(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/orders/prices/{sellerId:guid}", PricesAsync).RequireAuthorization();
        MapOrder(routes, "csv", (order, _) => OrderCsv.Order(order));
        MapOrder(routes, "kits", (order, _) => OrderCsv.Kits(order));
        MapOrder(routes, "costs", OrderCsv.Costs);
        Printing.PrintTray.Map(routes);
        Printing.KitDoor.Map(routes);
    }

    private static void MapOrder(
        IEndpointRouteBuilder routes,
        string what,
        Func<ClassOrder, IReadOnlyList<Supply>, string> write
    ) =>
        routes
            .MapGet(
                $"/orders/{what}/{{orderId:guid}}",
                async (
                    Guid orderId,
                    ClaimsPrincipal person,
                    HttpResponse response,
                    OrderStore orders,
                    KitStore kits,
                    CancellationToken cancel
                ) =>
                {
                    if (
                        person.ToViewer() is not { } viewer
                        || await orders.FindAsync(viewer, orderId, cancel) is not { } found
                        || await kits.FindAsync(viewer, found.ProjectId, cancel) is not { } also
                    )
                        return Results.NotFound();
                    var name =
                        $"{(what == "csv" ? "order" : what)}-{found.Order.Ask.Project.Name}-{found.Number}";
                    return Csv(response, name, write(found.Order, also.Supplies));
                }
            )
            .RequireAuthorization();

    internal static IResult Csv(HttpResponse response, string name, string text)
    {
        response.Headers.CacheControl = "no-store";
        // Spreadsheets take a file for UTF-8 only when it begins with its mark.
        return Results.File(
            [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(text)],
            "text/csv; charset=utf-8",
            $"{SheetName.Safe(name)}.csv"
        );
    }

    private static async Task<IResult> PricesAsync(
        Guid sellerId,
        ClaimsPrincipal person,
        HttpResponse response,
        SellerStore sellers,
        CourseStore courses,
        CancellationToken cancel
    )
    {
        if (
            person.ToViewer() is not { } viewer
            || await sellers.FindAsync(viewer, sellerId, cancel) is not { } seller
            || await courses.FindAsync(viewer, seller.CourseId, cancel) is not { } course
        )
            return Results.NotFound();
        return Csv(
            response,
            $"prices-{seller.Name}",
            PriceList.ToCsv(seller.ToList(), course.Rules.Unit)
        );
    }
}
