using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Paces;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Access;
using ShopClass.Data.Learning;
using ShopClass.Data.Plans;
using ShopClass.Data.Store;

namespace ShopClass.Data.Progress;

/// <summary>The steps of a plan with their times by the pace that was learned.</summary>
/// <param name="Work">The steps.</param>
/// <param name="Basis">What the minutes rest on, in a sentence.</param>
public sealed record PacedPlan(WorkSequence Work, string Basis);

/// <summary>
/// The pace of a course, from the minutes said when steps were ticked, and from what it started from. Factors are never
/// shown to students; the steps of their own plan take the minutes that follow from them.
/// </summary>
public sealed class PaceStore(IDbContextFactory<ShopContext> factory, PlanStore plans)
{
    /// <summary>The pace of a course and its students; null when the viewer does not run it, and for students.</summary>
    public Task<ClassPace?> FindAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    ) => FindForAsync(viewer, courseId, Deed.SeeClass, cancel);

    /// <summary>The steps of a plan by the course's pace and the student's own; null when the plan is not the viewer's.</summary>
    public async Task<PacedPlan?> PacedAsync(
        Viewer viewer,
        Guid planId,
        CancellationToken cancel = default
    )
    {
        if (await plans.FindAsync(viewer, planId, cancel) is not { } plan)
            return null;
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var courseId = await shop
            .Students.Where(s => s.Id == plan.StudentId)
            .Select(s => s.CourseId)
            .SingleAsync(cancel);
        var pace = StepPace.Of(await ReadAsync(shop, courseId, cancel), plan.StudentId.ToString());
        return new(pace.Of(plan.Work, plan.Checked.Request.Boards), pace.Basis);
    }

    /// <summary>Whether students are asked to time their first cuts; null when the viewer does not run the course, and for students.</summary>
    public async Task<bool?> AreFirstCutsTimedAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        return await shop
            .Courses.RunBy(viewer, Deed.SeeClass)
            .Where(c => c.Id == courseId)
            .Select(c => (bool?)!c.FirstCutsUntimed)
            .SingleOrDefaultAsync(cancel);
    }

    /// <summary>Says whether students are asked to time their first cuts.</summary>
    public async Task<Outcome<bool>> TimeFirstCutsAsync(
        Viewer viewer,
        Guid courseId,
        bool wanted,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var course = await shop
            .Courses.RunBy(viewer, Deed.ChangeSettings)
            .SingleOrDefaultAsync(c => c.Id == courseId, cancel);
        if (course is null)
            return Outcome<bool>.NotFound();
        if (course.IsArchived)
            return Outcome<bool>.Refused(Wording.CourseIsArchived);
        course.FirstCutsUntimed = !wanted;
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<bool>.Saved(wanted);
    }

    internal async Task<ClassPace?> FindForAsync(
        Viewer viewer,
        Guid courseId,
        Deed deed,
        CancellationToken cancel
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        return await shop.Courses.RunBy(viewer, deed).AnyAsync(c => c.Id == courseId, cancel)
            ? await ReadAsync(shop, courseId, cancel)
            : null;
    }

    /// <summary>The pace a course started from; null for the usual rates. Whether anybody may see it is asked before.</summary>
    internal static async Task<CoursePace?> StartAsync(
        ShopContext shop,
        Guid courseId,
        CancellationToken cancel
    ) =>
        (
            await shop.Set<StartRow>()
                .AsNoTracking()
                .SingleOrDefaultAsync(
                    s => s.CourseId == courseId && s.Choice == StartChoice.Taken,
                    cancel
                )
        )
            ?.ToLearned()
            .Pace;

    private static async Task<ClassPace> ReadAsync(
        ShopContext shop,
        Guid courseId,
        CancellationToken cancel
    ) =>
        PaceEstimate.Of(
            await LearnedReading.TimedAsync(shop, courseId, cancel),
            await StartAsync(shop, courseId, cancel)
        );
}
