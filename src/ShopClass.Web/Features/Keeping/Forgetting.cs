using ShopClass.Data.Keeping;

namespace ShopClass.Web.Features.Keeping;

/// <summary>Twice a day, beginning at the start: names of courses that ended long ago go.</summary>
public sealed class Forgetting(KeepingStore keeping, TimeProvider clock, ILogger<Forgetting> log)
    : BackgroundService
{
    private static readonly TimeSpan Between = TimeSpan.FromHours(12);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(Between, clock);
        do
        {
            try
            {
                var courses = await keeping.ForgetDueAsync(stoppingToken);
                if (courses > 0)
                    log.LogInformation(
                        "Names and notes of {Courses} ended courses were deleted.",
                        courses
                    );
            }
            catch (Exception problem) when (problem is not OperationCanceledException)
            {
                log.LogError(problem, "Names could not be deleted; it is tried again later.");
            }
        } while (await timer.WaitForNextTickAsync(stoppingToken));
    }
}
