using System.Security.Claims;
using ShopClass.Core.Progress;
using ShopClass.Data.Access;
using ShopClass.Data.Progress;
using ShopClass.Web.Features.Account;
using ShopClass.Web.Features.Room;
using ShopClass.Web.Features.Shell;

namespace ShopClass.Web.Features.Progress;

/// <summary>What a phone's queue is told about one thing it sent.</summary>
/// <param name="Done">How many steps are done.</param>
/// <param name="Next">The number of the step to do next; null when all are done.</param>
/// <param name="Problem">Why it was not taken; null when it was.</param>
public sealed record Answered(int Done, int? Next, string? Problem);

/// <summary>
/// Where phones send what they kept while the signal was away. It takes no form: only our own script can send JSON with
/// this header to it, and no other site's page can, because we allow no cross-origin request. So an action that waited for
/// hours needs no token that may have run out meanwhile. See docs/decisions/0017-steps-without-signal.md.
/// </summary>
public static class ProgressRoutes
{
    public const string Address = "/my/steps/say";
    public const string Header = "X-ShopClass";

    public static void AddProgress(this IServiceCollection services)
    {
        services.AddSingleton<StepDesk>();
        services.AddSingleton<Presence>();
        services.AddHostedService<WarmUp>();
    }

    public static void MapProgress(this IEndpointRouteBuilder routes)
    {
        routes.MapPost(Address, SayAsync).RequireAuthorization().DisableAntiforgery();
        routes.MapStepNews();
    }

    private static async Task<IResult> SayAsync(
        SayEntry entry,
        ClaimsPrincipal person,
        HttpRequest request,
        StepDesk desk,
        Presence here,
        CancellationToken cancel
    )
    {
        if (!CameFromUs(request))
            return TypedResults.BadRequest();
        if (person.ToViewer() is not StudentViewer student)
            return TypedResults.NotFound();
        here.Saw(student);
        request.HttpContext.Response.Headers.CacheControl = "no-store";
        var outcome = await desk.SayAsync(student, entry, cancel);
        return outcome switch
        {
            { IsSaved: true, Value: { } now } => TypedResults.Ok(
                new Answered(now.Progress.Done, now.Progress.Next?.Step.Number, null)
            ),
            { Kind: OutcomeKind.NotFound } => TypedResults.NotFound(),
            _ => TypedResults.UnprocessableEntity(
                new Answered(0, null, string.Join(" ", outcome.Sentences()))
            ),
        };
    }

    private static bool CameFromUs(HttpRequest request) =>
        request.Headers[Header] == "steps"
        && request.Headers["Sec-Fetch-Site"].ToString() is "" or "same-origin";
}
