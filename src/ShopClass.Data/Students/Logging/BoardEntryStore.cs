using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Lumber;
using ShopClass.Data.Access;
using ShopClass.Data.Store;

namespace ShopClass.Data.Students.Logging;

/// <summary>A board that is being logged.</summary>
/// <param name="Id">The board's own once it is logged.</param>
/// <param name="Draft">What was entered, as it was kept; empty when nothing was.</param>
/// <param name="HasPhoto">Whether a photo is kept with it.</param>
public sealed record BoardEntryView(Guid Id, string Draft, bool HasPhoto);

/// <summary>
/// Boards that students are just logging, screen by screen. Each answer is kept durably, so that going back, a closed page
/// or a restarted server loses nothing.
/// </summary>
public sealed class BoardEntryStore(IDbContextFactory<ShopContext> factory, TimeProvider clock)
{
    /// <summary>Most characters a draft may have.</summary>
    public const int LongestDraft = 30_000;

    /// <summary>Most bytes of a kept photo.</summary>
    public const int LargestPhoto = 1_000_000;

    /// <summary>How long a board that was begun and never logged is kept.</summary>
    public const int DaysKept = 30;

    /// <summary>The board being logged for this project, or null: none is, or it is not the viewer's.</summary>
    public async Task<BoardEntryView?> FindAsync(
        Viewer viewer,
        Guid studentId,
        Guid projectId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        return await Seen(shop, viewer, studentId, projectId)
            .Select(e => new BoardEntryView(e.Id, e.Draft, e.Photo != null))
            .SingleOrDefaultAsync(cancel);
    }

    /// <summary>Keeps what was entered so far; begins the entry where there is none yet.</summary>
    public Task<Outcome<BoardEntryView>> KeepAsync(
        Viewer viewer,
        Guid studentId,
        Guid projectId,
        string draft,
        CancellationToken cancel = default
    ) =>
        ChangeAsync(
            viewer,
            studentId,
            projectId,
            row =>
            {
                if (draft.Length > LongestDraft)
                    return new("", "That is more than one board can hold. Take something out.");
                row.Draft = draft;
                return null;
            },
            cancel
        );

    /// <summary>Keeps a photo with the board being logged; null takes it away. It must be small and bare already.</summary>
    public Task<Outcome<BoardEntryView>> KeepPhotoAsync(
        Viewer viewer,
        Guid studentId,
        Guid projectId,
        byte[]? jpeg,
        CancellationToken cancel = default
    ) =>
        ChangeAsync(
            viewer,
            studentId,
            projectId,
            row =>
            {
                if (jpeg?.Length > LargestPhoto)
                    return new("Photo", "The photo is too large to be kept.");
                row.Photo = jpeg;
                return null;
            },
            cancel
        );

    /// <summary>The photo of a board being logged, or null.</summary>
    public async Task<byte[]?> PhotoAsync(
        Viewer viewer,
        Guid entryId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        return await Seen(shop, viewer)
            .Where(e => e.Id == entryId)
            .Select(e => e.Photo)
            .SingleOrDefaultAsync(cancel);
    }

    /// <summary>Forgets what was entered.</summary>
    public async Task<Outcome<bool>> DropAsync(
        Viewer viewer,
        Guid studentId,
        Guid projectId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var gone = await Seen(shop, viewer, studentId, projectId).ExecuteDeleteAsync(cancel);
        return gone > 0 ? Outcome<bool>.Saved(true) : Outcome<bool>.NotFound();
    }

    /// <summary>
    /// Logs the board that was being entered, with its photo, and ends the entry. The same entry logged again gives back
    /// the board that is there. Problems carry field names of <see cref="BoardChecks"/>.
    /// </summary>
    public async Task<Outcome<BoardView>> LogAsync(
        Viewer viewer,
        Guid studentId,
        Guid projectId,
        Guid entryId,
        Board board,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var there = await shop
            .Boards.AsNoTracking()
            .SeenBy(viewer, Deed.LogWork)
            .SingleOrDefaultAsync(b => b.Id == entryId && b.StudentId == studentId, cancel);
        if (there is not null)
            return Outcome<BoardView>.Saved(there.ToView());
        var entry = await Seen(shop, viewer, studentId, projectId)
            .SingleOrDefaultAsync(e => e.Id == entryId, cancel);
        if (entry is null)
            return Outcome<BoardView>.NotFound();
        var outcome = await BoardStore.AddToAsync(
            shop,
            viewer,
            studentId,
            projectId,
            board,
            entryId,
            cancel
        );
        if (!outcome.IsSaved)
            return outcome;
        if (entry.Photo is { } photo)
            shop.Add(new BoardPhotoRow { BoardId = entryId, Jpeg = photo });
        shop.Remove(entry);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return outcome;
    }

    private async Task<Outcome<BoardEntryView>> ChangeAsync(
        Viewer viewer,
        Guid studentId,
        Guid projectId,
        Func<BoardEntryRow, FieldProblem?> change,
        CancellationToken cancel
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var course = await shop
            .Students.SeenBy(viewer, Deed.LogWork)
            .Where(s => s.Id == studentId && s.Course!.Projects.Any(p => p.Id == projectId))
            .Select(s => new { s.Course!.IsArchived })
            .SingleOrDefaultAsync(cancel);
        if (course is null)
            return Outcome<BoardEntryView>.NotFound();
        if (course.IsArchived)
            return Outcome<BoardEntryView>.Refused(Wording.CourseIsArchived);
        var row = await Seen(shop, viewer, studentId, projectId).SingleOrDefaultAsync(cancel);
        if (row is null)
            shop.Add(
                row = new()
                {
                    Id = Guid.NewGuid(),
                    StudentId = studentId,
                    ProjectId = projectId,
                }
            );
        if (change(row) is { } problem)
            return Outcome<BoardEntryView>.Refused(problem);
        row.ChangedUtc = clock.GetUtcNow().UtcDateTime;
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<BoardEntryView>.Saved(new(row.Id, row.Draft, row.Photo is not null));
    }

    private static IQueryable<BoardEntryRow> Seen(ShopContext shop, Viewer viewer)
    {
        var students = shop.Students.SeenBy(viewer, Deed.LogWork);
        return shop.Set<BoardEntryRow>().Where(e => students.Any(s => s.Id == e.StudentId));
    }

    private static IQueryable<BoardEntryRow> Seen(
        ShopContext shop,
        Viewer viewer,
        Guid studentId,
        Guid projectId
    ) => Seen(shop, viewer).Where(e => e.StudentId == studentId && e.ProjectId == projectId);
}
