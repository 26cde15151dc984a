using ShopClass.Core.Tools;
using ShopClass.Data.Lessons;
using ShopClass.Data.Tools;

namespace ShopClass.Web.Features.Tools;

/// <summary>How the saws of a course stand today.</summary>
internal static class SawsOf
{
    public static IReadOnlyList<SawState> Now(
        ToolChest chest,
        SawLog log,
        IReadOnlyList<StoredLessonPlan> plans,
        TimeProvider clock
    )
    {
        var today = DateOnly.FromDateTime(clock.GetLocalNow().DateTime);
        return Sharpening.Of(
            chest,
            log.Steps,
            [
                .. plans
                    .SelectMany(p =>
                        Sharpening.Ahead(
                            p.Request,
                            p.Plan,
                            today,
                            (student, step) => log.Done.Contains((student, step))
                        )
                    )
                    .OrderBy(a => a.Date),
            ]
        );
    }
}
