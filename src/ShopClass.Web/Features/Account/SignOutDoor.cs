using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Identity;

namespace ShopClass.Web.Features.Account;

/// <summary>Signing out is a post with a token, so that no link can do it to somebody.</summary>
public static class SignOutDoor
{
    public static void MapSignOut(this WebApplication app) =>
        app.MapPost(
                "/account/sign-out",
                async (HttpContext http) =>
                {
                    await http.SignOutAsync(IdentityConstants.ApplicationScheme);
                    return TypedResults.LocalRedirect("/");
                }
            )
            .AllowAnonymous()
            .ChecksAntiforgery();

    /// <summary>Refuses with 400 what carries no token of ours.</summary>
    public static RouteHandlerBuilder ChecksAntiforgery(this RouteHandlerBuilder route) =>
        route
            .DisableAntiforgery()
            .AddEndpointFilter(
                async (call, next) =>
                {
                    var http = call.HttpContext;
                    var tokens = http.RequestServices.GetRequiredService<IAntiforgery>();
                    return await tokens.IsRequestValidAsync(http)
                        ? await next(call)
                        : TypedResults.BadRequest();
                }
            );
}
