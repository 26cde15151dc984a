using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Progress;
using ShopClass.Data.Access;
using ShopClass.Data.Joining;
using ShopClass.Data.Progress;
using ShopClass.Data.Store;
using ShopClass.Data.Students.Logging;

namespace ShopClass.Data.Keeping;

/// <summary>How long a course's names are kept.</summary>
/// <param name="EndsOn">The course's last day.</param>
/// <param name="ForgottenUtc">When names and notes were deleted; null while they are there.</param>
public sealed record KeepingView(DateOnly EndsOn, DateTime? ForgottenUtc)
{
    /// <summary>The day from which names and notes are deleted.</summary>
    public DateOnly ForgetsOn => EndsOn.AddDays(KeepingStore.DaysAfterTheEnd);
}

/// <summary>The end of courses, and forgetting names afterwards. Figures stay, without names.</summary>
public sealed class KeepingStore(
    IDbContextFactory<ShopContext> factory,
    TimeProvider clock,
    ClassNews news
)
{
    /// <summary>How long names and notes outlive a course.</summary>
    public const int DaysAfterTheEnd = 90;

    /// <summary>When the course ends; null where nobody has said, or it is not the viewer's.</summary>
    public async Task<KeepingView?> FindAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        if (!await shop.Courses.RunBy(viewer).AnyAsync(c => c.Id == courseId, cancel))
            return null;
        return await shop.Set<KeepingRow>()
            .Where(k => k.CourseId == courseId)
            .Select(k => new KeepingView(k.EndsOn, k.ForgottenUtc))
            .SingleOrDefaultAsync(cancel);
    }

    /// <summary>Says when the course ends. A later day, set after names were deleted, has new names deleted in their turn.</summary>
    public async Task<Outcome<KeepingView>> SaveAsync(
        Viewer viewer,
        Guid courseId,
        DateOnly endsOn,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        if (!await shop.Courses.RunBy(viewer).AnyAsync(c => c.Id == courseId, cancel))
            return Outcome<KeepingView>.NotFound();
        var row = await shop.Set<KeepingRow>().FindAsync([courseId], cancel);
        if (row is null)
            shop.Add(row = new() { CourseId = courseId });
        (row.EndsOn, row.ForgottenUtc) = (endsOn, null);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<KeepingView>.Saved(new(row.EndsOn, row.ForgottenUtc));
    }

    /// <summary>
    /// Deletes names and notes of every course that ended long enough ago, and the devices of those that waited in vain.
    /// How many courses it was.
    /// </summary>
    public async Task<int> ForgetDueAsync(CancellationToken cancel = default)
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var stale = clock.GetUtcNow().UtcDateTime - JoinDesk.WaitingHolds;
        await shop.Set<DeviceRow>()
            .Where(d => d.StudentId == null && d.AskedUtc < stale)
            .ExecuteDeleteAsync(cancel);
        var begun = clock.GetUtcNow().UtcDateTime.AddDays(-BoardEntryStore.DaysKept);
        await shop.Set<BoardEntryRow>().Where(e => e.ChangedUtc < begun).ExecuteDeleteAsync(cancel);
        var last = DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime).AddDays(-DaysAfterTheEnd);
        var due = await shop.Set<KeepingRow>()
            .Where(k => k.ForgottenUtc == null && k.EndsOn < last)
            .Select(k => k.CourseId)
            .ToListAsync(cancel);
        foreach (var course in due)
            await ForgetAsync(shop, course, cancel);
        return due.Count;
    }

    private async Task ForgetAsync(ShopContext shop, Guid courseId, CancellationToken cancel)
    {
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var students = await shop
            .Students.Where(s => s.CourseId == courseId)
            .OrderBy(s => s.Id)
            .ToListAsync(cancel);
        await NameForgetting.ForgetAsync(shop, courseId, students, cancel);
        var row = await shop.Set<KeepingRow>().SingleAsync(k => k.CourseId == courseId, cancel);
        row.ForgottenUtc = clock.GetUtcNow().UtcDateTime;
        await shop.SaveChangesAsync(cancel);
        await shop.Set<DeviceRow>().Where(d => d.CourseId == courseId).ExecuteDeleteAsync(cancel);
        await shop.Set<StudentCodeRow>()
            .Where(c => c.Student!.CourseId == courseId)
            .ExecuteDeleteAsync(cancel);
        await shop.Set<BoardEntryRow>()
            .Where(e => e.Student!.CourseId == courseId)
            .ExecuteDeleteAsync(cancel);
        await shop.Set<BoardPhotoRow>()
            .Where(p => p.Board!.Student!.CourseId == courseId)
            .ExecuteDeleteAsync(cancel);
        await shop
            .Boards.Where(b => b.Student!.CourseId == courseId && b.SentBack != "")
            .ExecuteUpdateAsync(b => b.SetProperty(x => x.SentBack, ""), cancel);
        await shop.Set<StepActionRow>()
            .Where(a => a.Kind == StepActionKind.Note && a.Plan!.Student!.CourseId == courseId)
            .ExecuteDeleteAsync(cancel);
        await writing.CommitAsync(cancel);
        foreach (var student in students)
            news.Tell(new(NewsKind.Ended, courseId, student.Id));
    }
}
