using System.Security.Claims;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server;
using ShopClass.Data.Access;
using ShopClass.Web.Features.Joining;

namespace ShopClass.Web.Features.Account;

/// <summary>
/// A live page lasts for hours; every minute it asks again whether its visitor may still be there, and when a student, a
/// device or a helper is ended it does so at once. It asks as it begins, too: who was ended while it was on its way to the
/// browser is not told of any more.
/// </summary>
public sealed class CircuitStanding : RevalidatingServerAuthenticationStateProvider
{
    private static readonly AuthenticationState Nobody = new(new(new ClaimsIdentity()));
    private readonly IServiceScopeFactory scopes;
    private readonly ILogger log;
    private readonly IDisposable listening;
    private bool isTold;

    public CircuitStanding(ILoggerFactory logs, IServiceScopeFactory scopes, ClassNews news)
        : base(logs)
    {
        this.scopes = scopes;
        log = logs.CreateLogger<CircuitStanding>();
        AuthenticationStateChanged += Begin;
        listening = news.Listen(Hear);
    }

    protected override TimeSpan RevalidationInterval => AccountSetup.BetweenChecks;

    protected override async Task<bool> ValidateAuthenticationStateAsync(
        AuthenticationState authenticationState,
        CancellationToken cancellationToken
    )
    {
        await using var scope = scopes.CreateAsyncScope();
        var standing = scope.ServiceProvider.GetRequiredService<Standing>();
        return await standing.HoldsAsync(authenticationState.User, cancellationToken);
    }

    protected override void Dispose(bool disposing)
    {
        listening.Dispose();
        base.Dispose(disposing);
    }

    private void Begin(Task<AuthenticationState> state)
    {
        if (isTold)
            return;
        isTold = true;
        _ = EndIfEndedBeforeAsync(state);
    }

    private async Task EndIfEndedBeforeAsync(Task<AuthenticationState> state)
    {
        try
        {
            var now = await state;
            var isKnown = now.User.Identity?.IsAuthenticated == true;
            if (isKnown && !await ValidateAuthenticationStateAsync(now, CancellationToken.None))
                SetAuthenticationState(Task.FromResult(Nobody));
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // The page stays, and is asked about again in a minute.
            log.LogWarning(e, "Whether a page's visitor may be there could not be looked up.");
        }
    }

    private void Hear(News news)
    {
        if (news.Kind is NewsKind.Ended && isTold)
            _ = EndIfMeantAsync(news);
    }

    private async Task EndIfMeantAsync(News news)
    {
        var who = (await GetAuthenticationStateAsync()).User;
        var isMeant = who.ToViewer() switch
        {
            StudentViewer student => student.StudentId == news.StudentId
                && (
                    news.DeviceId is not { } device
                    || who.HasClaim(DeviceSession.DeviceClaim, device.ToString())
                ),
            InstructorViewer instructor => instructor.UserId == news.AccountId,
            _ => false,
        };
        if (isMeant)
            SetAuthenticationState(Task.FromResult(Nobody));
    }
}
