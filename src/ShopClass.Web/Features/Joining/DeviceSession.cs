using System.Security.Claims;
using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Authentication;
using Microsoft.Extensions.Options;
using ShopClass.Data.Joining;
using ShopClass.Web.Features.Account;

namespace ShopClass.Web.Features.Joining;

/// <summary>
/// A student's device: a random token in a cookie of its own, looked up at every request, so that ending it takes hold at
/// the next. See docs/decisions/0016-joining.md.
/// </summary>
public sealed class DeviceSession(
    IOptionsMonitor<AuthenticationSchemeOptions> options,
    ILoggerFactory logs,
    UrlEncoder encoder,
    JoinDesk desk
) : AuthenticationHandler<AuthenticationSchemeOptions>(options, logs, encoder)
{
    public const string Name = "Device";
    public const string CookieName = "shopclass-device";
    public const string DeviceClaim = "device";
    private static readonly TimeSpan CookieHolds = TimeSpan.FromDays(180);

    public static void Remember(HttpContext http, string token) =>
        http.Response.Cookies.Append(CookieName, token, Shape(http.Request));

    public static void Forget(HttpContext http) =>
        http.Response.Cookies.Delete(CookieName, Shape(http.Request));

    public static string? TokenOf(HttpContext http) => http.Request.Cookies[CookieName];

    protected override async Task<AuthenticateResult> HandleAuthenticateAsync()
    {
        if (TokenOf(Context) is not { } token)
            return AuthenticateResult.NoResult();
        if (
            await desk.FindAsync(token, Context.RequestAborted)
            is not { StudentId: { } student } device
        )
            return AuthenticateResult.Fail("This device is not, or no longer, let in.");
        var who = new ClaimsIdentity(
            [
                new(ClaimTypes.Name, device.Shown),
                new(Viewers.StudentClaim, student.ToString()),
                new(Viewers.CourseClaim, device.CourseId.ToString()),
                new(DeviceClaim, device.DeviceId.ToString()),
            ],
            Name
        );
        return AuthenticateResult.Success(new(new(who), Name));
    }

    protected override Task HandleChallengeAsync(AuthenticationProperties properties)
    {
        Response.Redirect("/join/waiting");
        return Task.CompletedTask;
    }

    private static CookieOptions Shape(HttpRequest request) =>
        new()
        {
            HttpOnly = true,
            // Secure wherever the page came over https; a shop's own network may have plain http only.
            Secure = request.IsHttps,
            SameSite = SameSiteMode.Lax,
            MaxAge = CookieHolds,
            IsEssential = true,
            Path = "/",
        };
}
