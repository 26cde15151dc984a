using System.Net.Http.Headers;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using ShopClass.Core.Drawings;
using ShopClass.Core.Planning;
using ShopClass.Data.Access;
using ShopClass.Data.Joining;
using ShopClass.Data.Progress;
using ShopClass.Print.Pens;

namespace ShopClass.Web.Features.Progress;

/// <summary>
/// A class comes in and thirty phones open their steps at once, perhaps right after a start. What the first page of a
/// process takes is then taken thirty times at once on two cores, so it is done once before: the queries are made ready, the
/// plans last made are unpacked, a picture is drawn, and one plain page is fetched from ourselves.
/// Last, one plan is made for practice, so that the first board somebody logs is judged as soon as the later ones.
/// </summary>
public sealed class WarmUp(
    ProgressStore progress,
    TodayStore today,
    JoinDesk desk,
    IServer server,
    IHostApplicationLifetime life,
    ILogger<WarmUp> log
) : BackgroundService
{
    private const int Plans = 60;

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        var started = new TaskCompletionSource();
        await using var whenStarted = life.ApplicationStarted.Register(() =>
            started.TrySetResult()
        );
        await using var whenStopped = stoppingToken.Register(() => started.TrySetCanceled());
        try
        {
            await started.Task;
            await FetchAsync(stoppingToken);
            await LookAsync(stoppingToken);
            PracticePlan.Make(stoppingToken);
        }
        catch (Exception problem) when (problem is not OperationCanceledException)
        {
            log.LogInformation(
                problem,
                "Nothing was made ready beforehand; the first pages take longer."
            );
        }
        catch (OperationCanceledException)
        {
            // The app stops before it was ready.
        }
    }

    private async Task LookAsync(CancellationToken cancel)
    {
        await desk.FindAsync("", cancel);
        var isFirst = true;
        foreach (var student in await progress.LastPlannedAsync(Plans, cancel))
        {
            if (
                await progress.CurrentAsync(student, student.StudentId, null, cancel)
                is not { } work
            )
                continue;
            await today.FindAsync(
                student,
                student.StudentId,
                student.CourseId,
                work.Plan.ProjectId,
                cancel
            );
            if (isFirst)
                Draw(work);
            isFirst = false;
        }
    }

    private static void Draw(PlanInHand work)
    {
        foreach (var state in work.Progress.Steps.Take(6))
        {
            if (
                StepPicture.Of(work.PlanOf(state.Step), state.Step, DrawingFrame.Narrow) is
                { } picture
            )
                SvgPen.Write(picture, "step");
        }
    }

    // A page for a phone, as a phone asks for it. A server without an address of its own, as in tests, is left alone.
    private async Task FetchAsync(CancellationToken cancel)
    {
        var address = server
            .Features.Get<IServerAddressesFeature>()
            ?.Addresses.Select(a => new Uri(
                a.Replace("[::]", "localhost", StringComparison.Ordinal)
                    .Replace("0.0.0.0", "localhost", StringComparison.Ordinal)
                    .Replace("*", "localhost", StringComparison.Ordinal)
                    .Replace("+", "localhost", StringComparison.Ordinal)
            ))
            .FirstOrDefault(a => a.Scheme == Uri.UriSchemeHttp);
        if (address is null)
            return;
        using var phone = new HttpClient { BaseAddress = address };
        phone.DefaultRequestHeaders.AcceptEncoding.Add(new StringWithQualityHeaderValue("br"));
        using var page = await phone.GetAsync(new Uri("/join", UriKind.Relative), cancel);
    }
}
