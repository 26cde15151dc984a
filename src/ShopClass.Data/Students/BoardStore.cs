using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Data.Access;
using ShopClass.Data.Store;

namespace ShopClass.Data.Students;

/// <summary>A stored board: whose, for which project. <c>Board.Id</c> is <see cref="Id"/> in its "N" form.</summary>
public sealed record BoardView(Guid Id, Guid StudentId, Guid ProjectId, Board Board, Guid Version);

/// <summary>The boards students bring, each for one project.</summary>
public sealed class BoardStore(IDbContextFactory<ShopContext> factory)
{
    /// <summary>A student's boards for a project, in the order they were logged.</summary>
    public async Task<IReadOnlyList<BoardView>> ListAsync(
        Viewer viewer,
        Guid studentId,
        Guid projectId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var rows = await shop
            .Boards.AsNoTracking()
            .SeenBy(viewer, Deed.SeeClass)
            .Where(b => b.StudentId == studentId && b.ProjectId == projectId)
            .OrderBy(b => b.Position)
            .ToListAsync(cancel);
        return [.. rows.Select(r => r.ToView())];
    }

    public async Task<BoardView?> FindAsync(
        Viewer viewer,
        Guid boardId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var row = await shop
            .Boards.AsNoTracking()
            .SeenBy(viewer, Deed.SeeClass)
            .SingleOrDefaultAsync(b => b.Id == boardId, cancel);
        return row?.ToView();
    }

    /// <summary>Logs a board; its <c>Id</c> is given here. Problems carry field names of <see cref="BoardChecks"/>.</summary>
    public async Task<Outcome<BoardView>> AddAsync(
        Viewer viewer,
        Guid studentId,
        Guid projectId,
        Board board,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var outcome = await AddToAsync(shop, viewer, studentId, projectId, board, null, cancel);
        if (!outcome.IsSaved)
            return outcome;
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return outcome;
    }

    /// <summary>Adds a board to what the caller saves, under the key given or one of its own.</summary>
    internal static async Task<Outcome<BoardView>> AddToAsync(
        ShopContext shop,
        Viewer viewer,
        Guid studentId,
        Guid projectId,
        Board board,
        Guid? id,
        CancellationToken cancel
    )
    {
        var student = await shop
            .Students.SeenBy(viewer, Deed.LogWork)
            .Include(s => s.Course)
            .SingleOrDefaultAsync(
                s => s.Id == studentId && s.Course!.Projects.Any(p => p.Id == projectId),
                cancel
            );
        if (student is null)
            return Outcome<BoardView>.NotFound();
        if (student.Course!.IsArchived)
            return Outcome<BoardView>.Refused(Wording.CourseIsArchived);
        var positions = await shop
            .Boards.Where(b => b.StudentId == studentId && b.ProjectId == projectId)
            .Select(b => b.Position)
            .ToListAsync(cancel);
        if (positions.Count >= StoreLimits.BoardsForAProject)
            return Outcome<BoardView>.Refused(Wording.TooManyBoards);
        var tidy = Tidy(board);
        if (ProblemsIn(tidy, student.Course.Rules) is { Count: > 0 } problems)
            return Outcome<BoardView>.Refused(problems);
        var row = BoardRow.From(
            tidy,
            studentId,
            projectId,
            positions.DefaultIfEmpty(0).Max() + 1,
            id
        );
        SeenToBy(viewer, row);
        shop.Boards.Add(row);
        return Outcome<BoardView>.Saved(row.ToView());
    }

    /// <summary>Saves a board as it is measured now. Problems carry field names of <see cref="BoardChecks"/>.</summary>
    public async Task<Outcome<BoardView>> SaveAsync(
        Viewer viewer,
        Guid boardId,
        Board board,
        Guid version,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var row = await SeenByAsync(shop, viewer, boardId, cancel);
        if (row is null)
            return Outcome<BoardView>.NotFound();
        if (row.Student!.Course!.IsArchived)
            return Outcome<BoardView>.Refused(Wording.CourseIsArchived);
        if (row.Version != version)
            return Outcome<BoardView>.ChangedMeanwhile(row.ToView());
        var tidy = Tidy(board);
        if (ProblemsIn(tidy, row.Student.Course.Rules) is { Count: > 0 } problems)
            return Outcome<BoardView>.Refused(problems);
        row.Take(tidy);
        SeenToBy(viewer, row);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<BoardView>.Saved(row.ToView());
    }

    /// <summary>Removes a board. Plans made with it stay as they are and are out of date.</summary>
    public async Task<Outcome<bool>> RemoveAsync(
        Viewer viewer,
        Guid boardId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var row = await SeenByAsync(shop, viewer, boardId, cancel);
        if (row is null)
            return Outcome<bool>.NotFound();
        if (row.Student!.Course!.IsArchived)
            return Outcome<bool>.Refused(Wording.CourseIsArchived);
        shop.Boards.Remove(row);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<bool>.Saved(true);
    }

    // What an instructor measured needs no yes of theirs.
    private static void SeenToBy(Viewer viewer, BoardRow row)
    {
        if (viewer is not StudentViewer)
            row.YesVersion = row.Version;
    }

    internal static Board Tidy(Board board) => board with { Name = Wording.Tidy(board.Name) };

    internal static List<FieldProblem> ProblemsIn(Board board, CourseRules rules) =>
        Wording.Problems(BoardChecks.ProblemsIn(board, rules));

    private static Task<BoardRow?> SeenByAsync(
        ShopContext shop,
        Viewer viewer,
        Guid boardId,
        CancellationToken cancel
    ) =>
        shop
            .Boards.SeenBy(viewer, Deed.LogWork)
            .Include(b => b.Student!.Course)
            .SingleOrDefaultAsync(b => b.Id == boardId, cancel);
}
