using System.Collections.Concurrent;
using System.Security.Claims;
using ShopClass.Data.Access;
using ShopClass.Web.Features.Account;

namespace ShopClass.Web.Features.Printing;

/// <summary>Printing, put into an app's services.</summary>
public static class PrintingSetup
{
    public static void AddPrinting(this IServiceCollection services)
    {
        services.AddSingleton<PrintTray>();
        services.AddSingleton<PrintShelf>();
    }
}

/// <summary>Where finished print sets lie until their maker fetches them: the newest of each person, for a while.</summary>
public sealed class PrintTray(TimeProvider clock)
{
    private static readonly TimeSpan Kept = TimeSpan.FromMinutes(30);
    private readonly ConcurrentDictionary<Viewer, Sheaf> _trays = new();

    /// <summary>Lays a set in the tray; the address it is fetched from.</summary>
    public string Lay(Viewer viewer, byte[] pdf)
    {
        var sheaf = new Sheaf(Guid.NewGuid(), pdf, clock.GetUtcNow());
        _trays[viewer] = sheaf;
        foreach (var (who, old) in _trays)
        {
            if (clock.GetUtcNow() - old.Laid > Kept)
                _trays.TryRemove(new(who, old));
        }

        return $"/print/set/{sheaf.Id}";
    }

    /// <summary>The set, or null when it is not this viewer's or no longer there.</summary>
    public byte[]? Fetch(Viewer viewer, Guid id) =>
        _trays.TryGetValue(viewer, out var sheaf) && sheaf.Id == id ? sheaf.Pdf : null;

    internal static void Map(IEndpointRouteBuilder routes) =>
        routes
            .MapGet(
                "/print/set/{id:guid}",
                (Guid id, ClaimsPrincipal person, PrintTray tray, HttpResponse response) =>
                {
                    if (
                        person.ToViewer() is not { } viewer
                        || tray.Fetch(viewer, id) is not { } pdf
                    )
                        return Results.NotFound();
                    response.Headers.CacheControl = "no-store";
                    response.Headers.ContentDisposition = "inline; filename=\"print-set.pdf\"";
                    return Results.Bytes(pdf, "application/pdf");
                }
            )
            .RequireAuthorization();

    private sealed record Sheaf(Guid Id, byte[] Pdf, DateTimeOffset Laid);
}
