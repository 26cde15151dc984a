using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Paces;
using ShopClass.Core.Progress;
using ShopClass.Data.Access;
using ShopClass.Data.Store;

namespace ShopClass.Data.Progress;

/// <summary>The pace of a course, from the minutes said when steps were ticked. Never shown to students.</summary>
public sealed class PaceStore(IDbContextFactory<ShopContext> factory)
{
    /// <summary>The pace of a course and its students; null when the viewer does not run it, and for students.</summary>
    public Task<ClassPace?> FindAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    ) => FindForAsync(viewer, courseId, Deed.SeeClass, cancel);

    internal async Task<ClassPace?> FindForAsync(
        Viewer viewer,
        Guid courseId,
        Deed deed,
        CancellationToken cancel
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        if (!await shop.Courses.RunBy(viewer, deed).AnyAsync(c => c.Id == courseId, cancel))
            return null;
        var said = await shop.Set<StepActionRow>()
            .AsNoTracking()
            .Where(a => a.Plan!.Student!.CourseId == courseId)
            .Where(a => a.Minutes != null || a.Kind == StepActionKind.Untick)
            .OrderBy(a => a.Number)
            .Select(a => new { a.Plan!.StudentId, Row = a })
            .ToListAsync(cancel);
        // A tick taken back takes its minutes with it; the step ticked again is timed once.
        var timed = new Dictionary<(Guid, string), TimedStep>();
        foreach (var (student, row) in said.Select(s => (s.StudentId, s.Row)))
        {
            if (row is { Minutes: { } taken, PlannedMinutes: { } planned, StepKind: { } kind })
                timed[(row.PlanId, row.StepId)] = new(
                    student.ToString(),
                    kind,
                    row.SpeciesId,
                    planned,
                    taken
                );
            else
                timed.Remove((row.PlanId, row.StepId));
        }

        return PaceEstimate.Of(timed.Values);
    }
}
