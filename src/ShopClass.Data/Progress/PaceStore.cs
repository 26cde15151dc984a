using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Paces;
using ShopClass.Data.Access;
using ShopClass.Data.Learning;
using ShopClass.Data.Store;

namespace ShopClass.Data.Progress;

/// <summary>
/// The pace of a course, from the minutes said when steps were ticked, and from what it started from. Never shown to
/// students.
/// </summary>
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
        var start = await shop.Set<StartRow>()
            .AsNoTracking()
            .SingleOrDefaultAsync(
                s => s.CourseId == courseId && s.Choice == StartChoice.Taken,
                cancel
            );
        return PaceEstimate.Of(
            await LearnedReading.TimedAsync(shop, courseId, cancel),
            start?.ToLearned().Pace
        );
    }
}
