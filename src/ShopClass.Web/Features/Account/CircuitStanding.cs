using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server;

namespace ShopClass.Web.Features.Account;

/// <summary>A live page lasts for hours; every minute it asks again whether its visitor may still be there.</summary>
public sealed class CircuitStanding(ILoggerFactory logs, IServiceScopeFactory scopes)
    : RevalidatingServerAuthenticationStateProvider(logs)
{
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
}
