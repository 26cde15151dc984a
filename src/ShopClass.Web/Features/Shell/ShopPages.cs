using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.ResponseCompression;
using MudBlazor.Services;
using ShopClass.Web.Components;
using ShopClass.Web.Features.Remakes;

namespace ShopClass.Web.Features.Shell;

/// <summary>The pages: how they are made live, compressed, guarded and found.</summary>
public static class ShopPages
{
    private static readonly string[] Compressed =
    [
        "text/css",
        "text/javascript",
        "application/javascript",
        "image/svg+xml",
    ];

    public static void AddShopPages(
        this IServiceCollection services,
        IWebHostEnvironment environment
    )
    {
        services
            .AddRazorComponents()
            .AddInteractiveServerComponents(circuit =>
            {
                circuit.DetailedErrors = environment.IsDevelopment();
                // A phone in a shop loses its signal for minutes; what is typed waits for it.
                circuit.DisconnectedCircuitRetentionPeriod = TimeSpan.FromMinutes(15);
                circuit.DisconnectedCircuitMaxRetained = 200;
                circuit.PersistedCircuitInMemoryRetentionPeriod = TimeSpan.FromHours(2);
            });
        services.AddMudServices();
        services.AddSingleton<SuppliesAtHand>();
        services.AddSingleton<Guide.GuideShelf>();
        services.AddHealthChecks();
        services.AddSingleton<IResponseCompressionProvider, BenchCompression>();
        // Pages themselves stay uncompressed, but for the bench's: they hold tokens. The library's files are what is large.
        services.AddResponseCompression(options =>
        {
            options.EnableForHttps = true;
            options.MimeTypes = Compressed;
            options.Providers.Add<BrotliCompressionProvider>();
            options.Providers.Add<GzipCompressionProvider>();
        });
    }

    public static void UseShopPages(this WebApplication app)
    {
        if (!app.Environment.IsDevelopment())
        {
            app.UseExceptionHandler("/error", createScopeForErrors: true);
            app.UseHsts();
        }
        app.UseSecurityHeaders();
        app.UseResponseCompression();
        app.UseStatusCodePagesWithReExecute(
            "/not-found",
            "?code={0}",
            createScopeForStatusCodePages: true
        );
        app.Use(AskForThePageAgain);
        app.UseAuthentication();
        app.UseAuthorization();
        app.UseAntiforgery();
        app.MapStaticAssets();
        app.MapHealthChecks("/health");
        // Whatever is posted to an address that is not there gets the same answer as a reader: not found.
        app.MapPost("{**nowhere}", () => TypedResults.NotFound()).WithOrder(int.MaxValue);
        app.MapRazorComponents<App>()
            .AddInteractiveServerRenderMode(mode =>
                mode.ContentSecurityFrameAncestorsPolicy = null
            );
    }

    // The page that explains a refused post is read, not posted to.
    private static Task AskForThePageAgain(HttpContext http, RequestDelegate next)
    {
        if (http.Features.Get<IStatusCodeReExecuteFeature>() is not null)
            http.Request.Method = HttpMethods.Get;
        return next(http);
    }
}
