using System.Collections.Concurrent;
using ShopClass.Core.Planning;
using ShopClass.Data.Plans;

namespace ShopClass.Web.Features.Logging;

/// <summary>
/// Works out plans for pages that cannot wait for long: what is not done in time goes on, and is there when the page is
/// asked for again.
/// </summary>
public sealed class VerdictDesk
{
    private const int Most = 100;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(4);
    private readonly ConcurrentDictionary<string, Lazy<Task<CheckedPlan>>> made = new(
        StringComparer.Ordinal
    );

    /// <summary>The plan for these boards, or null while it is still being worked out.</summary>
    public async Task<CheckedPlan?> OfAsync(PlanningRequest request, CancellationToken cancel)
    {
        // Names are part of a plan's words, though not of the request's fingerprint.
        var names = string.Join('|', request.Boards.Select(b => b.Name));
        var key = $"{PlanSnapshot.Fingerprint(request)} {request.Project.Name} {names}";
        if (made.Count >= Most)
            made.Clear();
        var making = made.GetOrAdd(
            key,
            _ => new(() => Task.Run(() => CheckedPlan.Make(request), CancellationToken.None))
        ).Value;
        if (await Task.WhenAny(making, Task.Delay(Patience, cancel)) != making)
            return null;
        try
        {
            return await making;
        }
        catch (Exception)
        {
            made.TryRemove(key, out _);
            throw;
        }
    }
}
