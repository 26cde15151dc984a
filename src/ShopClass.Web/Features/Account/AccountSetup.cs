using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Identity;
using ShopClass.Data.Store;
using ShopClass.Web.Features.Joining;

namespace ShopClass.Web.Features.Account;

/// <summary>Signing in: what an account needs, how long a cookie holds, when somebody is asked to wait.</summary>
public static class AccountSetup
{
    public const int ShortestPassword = 10;
    public const int MostTries = 5;
    private const string Somebody = "Somebody";
    private const string CookieName = "shopclass";
    public static readonly TimeSpan Wait = TimeSpan.FromMinutes(10);
    public static readonly TimeSpan BetweenChecks = TimeSpan.FromMinutes(1);

    public static void AddShopAccounts(this IServiceCollection services, string folder)
    {
        services
            .AddDataProtection()
            .SetApplicationName("ShopClass")
            .PersistKeysToFileSystem(new DirectoryInfo(Path.Combine(folder, "keys")));
        var people = services.AddAuthentication(Somebody);
        people.AddIdentityCookies();
        people.AddScheme<AuthenticationSchemeOptions, DeviceSession>(DeviceSession.Name, null);
        people.AddPolicyScheme(Somebody, null, either => either.ForwardDefaultSelector = SchemeOf);
        services
            .AddIdentityCore<Instructor>(Require)
            .AddEntityFrameworkStores<ShopContext>()
            .AddSignInManager();
        services.ConfigureApplicationCookie(Shape);
        services.AddAuthorization();
        services.AddCascadingAuthenticationState();
        services.AddScoped<Standing>();
        services.AddScoped<AuthenticationStateProvider, CircuitStanding>();
        services.AddSingleton<FirstAccount>();
        services.AddSingleton<EndedAccounts>();
        services.AddSingleton<InvitedSteps>();
    }

    // An account's cookie goes before a device's: an instructor who tried the student's side is still the instructor.
    private static string SchemeOf(HttpContext http) =>
        http.Request.Cookies.ContainsKey(CookieName) || DeviceSession.TokenOf(http) is null
            ? IdentityConstants.ApplicationScheme
            : DeviceSession.Name;

    private static void Require(IdentityOptions options)
    {
        // Length over riddles, as NIST SP 800-63B advises: no required digits or signs.
        options.Password.RequiredLength = ShortestPassword;
        options.Password.RequireDigit = false;
        options.Password.RequireLowercase = false;
        options.Password.RequireUppercase = false;
        options.Password.RequireNonAlphanumeric = false;
        options.Password.RequiredUniqueChars = 4;
        options.User.AllowedUserNameCharacters = null!;
        options.Lockout.MaxFailedAccessAttempts = MostTries;
        options.Lockout.DefaultLockoutTimeSpan = Wait;
        options.Lockout.AllowedForNewUsers = true;
    }

    private static void Shape(
        Microsoft.AspNetCore.Authentication.Cookies.CookieAuthenticationOptions options
    )
    {
        options.Cookie.Name = CookieName;
        options.Cookie.HttpOnly = true;
        options.Cookie.SameSite = SameSiteMode.Lax;
        // Secure wherever the page came over https; a shop's own network may have plain http only.
        options.Cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest;
        options.LoginPath = "/account/sign-in";
        options.AccessDeniedPath = "/account/sign-in";
        options.ExpireTimeSpan = TimeSpan.FromDays(14);
        options.SlidingExpiration = true;
        options.Events.OnValidatePrincipal = Standing.CheckCookieAsync;
    }
}
