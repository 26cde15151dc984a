using System.Net.ServerSentEvents;
using System.Runtime.CompilerServices;
using System.Security.Claims;
using System.Threading.Channels;
using Microsoft.AspNetCore.Http.HttpResults;
using ShopClass.Data.Access;
using ShopClass.Web.Features.Account;
using ShopClass.Web.Features.Joining;

namespace ShopClass.Web.Features.Progress;

/// <summary>
/// Tells a student's open pages, which are plain, what live pages hear by themselves: that somebody said something about
/// their steps, and that their way in has ended. It carries no word of what was said: the page asks for that with its own
/// rights.
/// </summary>
public static class StepNews
{
    public const string Address = "/my/news";

    /// <summary>Something was said about the student's steps.</summary>
    public const string Said = "said";

    /// <summary>The phone, or the student, may not be here any longer.</summary>
    public const string Ended = "ended";

    // Nothing to say for this long says at least that both are there: else a phone that walked off is never noticed.
    private static readonly TimeSpan BetweenSigns = TimeSpan.FromSeconds(25);

    public static void MapStepNews(this IEndpointRouteBuilder routes) =>
        routes.MapGet(Address, Listen).RequireAuthorization();

    private static Results<ServerSentEventsResult<string>, NotFound> Listen(
        ClaimsPrincipal person,
        HttpResponse response,
        ClassNews news,
        IHostApplicationLifetime life
    )
    {
        if (person.ToViewer() is not StudentViewer student)
            return TypedResults.NotFound();
        response.Headers.CacheControl = "no-store";
        var device = person.FindFirstValue(DeviceSession.DeviceClaim);
        return TypedResults.ServerSentEvents(
            HearAsync(news, n => WordFor(n, student, device), life.ApplicationStopping)
        );
    }

    private static string? WordFor(News news, StudentViewer student, string? device) =>
        news.StudentId != student.StudentId ? null
        : news.Kind is NewsKind.Progress ? Said
        : news.Kind is NewsKind.Ended && (news.DeviceId is not { } one || one.ToString() == device)
            ? Ended
        : null;

    private static async IAsyncEnumerable<SseItem<string>> HearAsync(
        ClassNews news,
        Func<News, string?> wordFor,
        CancellationToken stopping,
        [EnumeratorCancellation] CancellationToken gone = default
    )
    {
        var heard = Channel.CreateBounded<string>(
            new BoundedChannelOptions(4) { FullMode = BoundedChannelFullMode.DropOldest }
        );
        using var listening = news.Listen(n =>
        {
            if (wordFor(n) is { } word)
                heard.Writer.TryWrite(word);
        });
        using var ends = CancellationTokenSource.CreateLinkedTokenSource(gone, stopping);
        yield return new("", "here");
        while (await NextAsync(heard.Reader, ends.Token) is { } word)
        {
            yield return new("", word);
            if (word == Ended)
                yield break;
        }
    }

    // Null when the phone or the app is going.
    private static async Task<string?> NextAsync(
        ChannelReader<string> heard,
        CancellationToken ends
    )
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(ends);
        patience.CancelAfter(BetweenSigns);
        try
        {
            return await heard.ReadAsync(patience.Token);
        }
        catch (OperationCanceledException)
        {
            return ends.IsCancellationRequested ? null : "here";
        }
    }
}
