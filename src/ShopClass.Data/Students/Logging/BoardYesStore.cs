using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Measure;
using ShopClass.Data.Access;
using ShopClass.Data.Store;

namespace ShopClass.Data.Students.Logging;

/// <summary>How a board stands with the instructor.</summary>
public enum BoardStanding
{
    /// <summary>The course does not ask for a yes.</summary>
    NotAsked,

    /// <summary>Nobody has looked at it as it is measured now.</summary>
    Waiting,

    /// <summary>The instructor has said yes to it as it is measured now.</summary>
    Yes,

    /// <summary>The instructor has looked, and something is to be put right.</summary>
    SentBack,
}

/// <summary>A board before the instructor's yes.</summary>
/// <param name="BoardId">Which board.</param>
/// <param name="Standing">How it stands.</param>
/// <param name="Words">What is to be put right; empty otherwise.</param>
/// <param name="HasPhoto">Whether there is a photo of it.</param>
public sealed record BoardYes(Guid BoardId, BoardStanding Standing, string Words, bool HasPhoto);

/// <summary>
/// The instructor's yes to a board, where the course wants one before the saw. It holds for the board as it was measured
/// then: a changed board waits again.
/// </summary>
public sealed class BoardYesStore(IDbContextFactory<ShopContext> factory, ClassNews news)
{
    /// <summary>Whether boards of this course wait for a yes; null when the course is not the viewer's.</summary>
    public async Task<bool?> IsWantedAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        return await shop
            .Courses.SeenBy(viewer, Deed.SeeCourse)
            .Where(c => c.Id == courseId)
            .Select(c => (bool?)c.BoardsWaitForYes)
            .SingleOrDefaultAsync(cancel);
    }

    /// <summary>Says whether boards of this course wait for a yes.</summary>
    public async Task<Outcome<bool>> WantAsync(
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
        course.BoardsWaitForYes = wanted;
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<bool>.Saved(wanted);
    }

    /// <summary>How a student's boards for a project stand; empty for boards that are not the viewer's.</summary>
    public async Task<IReadOnlyList<BoardYes>> OfAsync(
        Viewer viewer,
        Guid studentId,
        Guid projectId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var photos = shop.Set<BoardPhotoRow>();
        var rows = await shop
            .Boards.SeenBy(viewer, Deed.SeeClass)
            .Where(b => b.StudentId == studentId && b.ProjectId == projectId)
            .OrderBy(b => b.Position)
            .Select(b => new
            {
                b.Id,
                Wanted = b.Student!.Course!.BoardsWaitForYes,
                HasYes = b.YesVersion == b.Version,
                b.SentBack,
                HasPhoto = photos.Any(p => p.BoardId == b.Id),
            })
            .ToListAsync(cancel);
        return
        [
            .. rows.Select(r => new BoardYes(
                r.Id,
                !r.Wanted ? BoardStanding.NotAsked
                    : r.HasYes ? BoardStanding.Yes
                    : r.SentBack.Length > 0 ? BoardStanding.SentBack
                    : BoardStanding.Waiting,
                r.SentBack,
                r.HasPhoto
            )),
        ];
    }

    /// <summary>The photo of a logged board, or null.</summary>
    public async Task<byte[]?> PhotoAsync(
        Viewer viewer,
        Guid boardId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var boards = shop.Boards.SeenBy(viewer, Deed.SeeClass);
        return await shop.Set<BoardPhotoRow>()
            .Where(p => p.BoardId == boardId && boards.Any(b => b.Id == p.BoardId))
            .Select(p => p.Jpeg)
            .SingleOrDefaultAsync(cancel);
    }

    /// <summary>
    /// Says yes to a board as it was seen, or sends it back with what is to be put right. For the owner and their helpers.
    /// </summary>
    /// <param name="viewer">The instructor.</param>
    /// <param name="boardId">Which board.</param>
    /// <param name="seen">The version they looked at; a board changed since is not said yes to.</param>
    /// <param name="words">Empty for yes; else what is to be put right.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<Outcome<bool>> SayAsync(
        Viewer viewer,
        Guid boardId,
        Guid seen,
        string words,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var runs = shop.Students.RunBy(viewer, Deed.LogWork);
        var row = await shop
            .Boards.Include(b => b.Student!.Course)
            .SingleOrDefaultAsync(
                b => b.Id == boardId && runs.Any(s => s.Id == b.StudentId),
                cancel
            );
        if (row is null)
            return Outcome<bool>.NotFound();
        if (row.Student!.Course!.IsArchived)
            return Outcome<bool>.Refused(Wording.CourseIsArchived);
        if (row.Version != seen)
            return Outcome<bool>.ChangedMeanwhile(false);
        var tidy = Wording.Tidy(words);
        if (TypedText.NotesProblem(tidy) is { } problem)
            return Outcome<bool>.Refused(new FieldProblem("Words", problem));
        row.SentBack = tidy;
        row.YesVersion = tidy.Length == 0 ? row.Version : null;
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        news.Tell(new(NewsKind.Progress, row.Student.CourseId, row.StudentId));
        return Outcome<bool>.Saved(tidy.Length == 0);
    }

    /// <summary>The boards of a plan that still wait, by name; a board that is gone waits for nobody.</summary>
    internal static Task<List<string>> WaitingAsync(
        ShopContext shop,
        IReadOnlyCollection<Guid> boards,
        CancellationToken cancel
    ) =>
        shop
            .Boards.Where(b =>
                boards.Contains(b.Id)
                && b.Student!.Course!.BoardsWaitForYes
                && (b.YesVersion == null || b.YesVersion != b.Version)
            )
            .OrderBy(b => b.Position)
            .Select(b => b.Name)
            .ToListAsync(cancel);
}
