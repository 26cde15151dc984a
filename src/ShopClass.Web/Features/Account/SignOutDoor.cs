using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Identity;
using ShopClass.Data.Joining;
using ShopClass.Web.Features.Joining;

namespace ShopClass.Web.Features.Account;

/// <summary>Signing out is a post with a token, so that no link can do it to somebody.</summary>
public static class SignOutDoor
{
    public static void MapSignOut(this WebApplication app) =>
        app.MapPost(
                "/account/sign-out",
                async (HttpContext http, JoinDesk desk) =>
                {
                    await http.SignOutAsync(IdentityConstants.ApplicationScheme);
                    if (DeviceSession.TokenOf(http) is { } token)
                    {
                        await desk.LeaveAsync(token);
                        DeviceSession.Forget(http);
                    }

                    ClearWhatIsKept(http);
                    return TypedResults.LocalRedirect("/");
                }
            )
            .AllowAnonymous()
            .ChecksAntiforgery();

    /// <summary>Asks the browser to drop what our pages kept on the device: drafts, queued ticks, pages for no signal.</summary>
    public static void ClearWhatIsKept(HttpContext http) =>
        http.Response.Headers["Clear-Site-Data"] = "\"storage\"";

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
