using System.Collections.Concurrent;
using System.Security.Claims;
using ShopClass.Data.Access;

namespace ShopClass.Web.Features.Account;

/// <summary>
/// Accounts a role was taken from lately. Their cookies are looked at again at every request, so that what was ended is
/// ended at once and not after the minute a fresh cookie is believed for.
/// </summary>
public sealed class EndedAccounts : IDisposable
{
    private const int Most = 1000;
    private readonly ConcurrentDictionary<string, DateTimeOffset> ended = new();
    private readonly TimeProvider clock;
    private readonly IDisposable listening;

    public EndedAccounts(ClassNews news, TimeProvider clock)
    {
        this.clock = clock;
        listening = news.Listen(Hear);
    }

    public bool IsDoubtful(ClaimsPrincipal person) =>
        person.ToViewer() is InstructorViewer instructor && ended.ContainsKey(instructor.UserId);

    public void Dispose() => listening.Dispose();

    private void Hear(News news)
    {
        if (news is not { Kind: NewsKind.Ended, AccountId: { } account })
            return;
        var now = clock.GetUtcNow();
        ended[account] = now;
        if (ended.Count > Most)
        {
            // Whoever was ended longer ago than a cookie is believed for is looked at anyway.
            foreach (var (who, when) in ended)
            {
                if (now - when > AccountSetup.BetweenChecks)
                    ended.TryRemove(who, out _);
            }
        }
    }
}
