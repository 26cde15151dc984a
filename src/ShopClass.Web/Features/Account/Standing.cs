using System.Security.Claims;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;
using ShopClass.Data.Access;
using ShopClass.Data.Joining;
using ShopClass.Data.Students;
using ShopClass.Web.Features.Joining;

namespace ShopClass.Web.Features.Account;

/// <summary>
/// Whether what a cookie says still holds: the account is there and its password unchanged, or the student is still in
/// the course. Whoever came in by the demo door has no standing where that door does not exist.
/// </summary>
public sealed class Standing(
    UserManager<Instructor> accounts,
    StudentStore students,
    JoinDesk desk,
    IOptions<IdentityOptions> identity,
    IWebHostEnvironment environment
)
{
    public async Task<bool> HoldsAsync(ClaimsPrincipal person, CancellationToken cancel = default)
    {
        if (person.HasClaim(c => c.Type == DemoDoor.Claim) && environment.IsProduction())
            return false;
        if (person.FindFirst(DeviceSession.DeviceClaim) is { } device)
            return Guid.TryParse(device.Value, out var id) && await desk.HoldsAsync(id, cancel);
        return person.ToViewer() switch
        {
            StudentViewer student => await students.FindAsync(student, student.StudentId, cancel)
                is not null,
            InstructorViewer => await HoldsForInstructorAsync(person),
            _ => false,
        };
    }

    /// <summary>A fresh cookie is believed for a minute, unless a role of its account was ended just now; an older one is checked at every request.</summary>
    public static async Task CheckCookieAsync(CookieValidatePrincipalContext cookie)
    {
        var clock = cookie.HttpContext.RequestServices.GetRequiredService<TimeProvider>();
        var age = clock.GetUtcNow() - cookie.Properties.IssuedUtc;
        var ended = cookie.HttpContext.RequestServices.GetRequiredService<EndedAccounts>();
        if (age < AccountSetup.BetweenChecks && !ended.IsDoubtful(cookie.Principal!))
            return;
        var standing = cookie.HttpContext.RequestServices.GetRequiredService<Standing>();
        if (!await standing.HoldsAsync(cookie.Principal!, cookie.HttpContext.RequestAborted))
        {
            cookie.RejectPrincipal();
            await cookie.HttpContext.SignOutAsync(IdentityConstants.ApplicationScheme);
        }
    }

    private async Task<bool> HoldsForInstructorAsync(ClaimsPrincipal person)
    {
        var account = await accounts.GetUserAsync(person);
        if (account is null)
            return false;
        var stamp = person.FindFirstValue(identity.Value.ClaimsIdentity.SecurityStampClaimType);
        return stamp == await accounts.GetSecurityStampAsync(account);
    }
}
