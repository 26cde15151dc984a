using ShopClass.Data.Plans;
using ShopClass.Data.Store;

namespace ShopClass.Data.Progress;

/// <summary>A plan version, as the choice between several sees it.</summary>
/// <param name="Id">Its key.</param>
/// <param name="StudentId">Whose.</param>
/// <param name="CourseId">Their course.</param>
/// <param name="ProjectId">The project it is for.</param>
/// <param name="MadeUtc">When it was made.</param>
/// <param name="Number">Its version within the project.</param>
/// <param name="LastSaid">The number of the last thing said about its steps; null where nothing was.</param>
internal sealed record PlanLine(
    Guid Id,
    Guid StudentId,
    Guid CourseId,
    Guid ProjectId,
    DateTime MadeUtc,
    int Number,
    long? LastSaid
);

/// <summary>
/// Which of a student's plans they work by: the one anything was last said about, else the newest. So for a project it is
/// the newest they began, and of several projects the one last worked at.
/// </summary>
internal static class CurrentPlan
{
    /// <summary>These plans as lines.</summary>
    public static IQueryable<PlanLine> LinesOf(ShopContext shop, IQueryable<PlanRow> plans) =>
        plans.Select(p => new PlanLine(
            p.Id,
            p.StudentId,
            p.Student!.CourseId,
            p.ProjectId,
            p.MadeUtc,
            p.Number,
            shop.Set<StepActionRow>().Where(a => a.PlanId == p.Id).Max(a => (long?)a.Number)
        ));

    /// <summary>The current one of one student's; null of none.</summary>
    public static PlanLine? Of(IEnumerable<PlanLine> lines) =>
        lines
            .OrderByDescending(p => p.LastSaid ?? -1)
            .ThenByDescending(p => p.MadeUtc)
            .ThenByDescending(p => p.Number)
            .FirstOrDefault();
}
