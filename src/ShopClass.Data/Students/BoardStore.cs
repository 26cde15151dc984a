using ShopClass.Core.Lumber;
using ShopClass.Data.Access;

namespace ShopClass.Data.Students;

/// <summary>A stored board: whose, for which project. <c>Board.Id</c> is <see cref="Id"/> in its "N" form.</summary>
public sealed record BoardView(Guid Id, Guid StudentId, Guid ProjectId, Board Board, Guid Version);

/// <summary>The boards students bring, each for one project.</summary>
public sealed class BoardStore
{
    /// <summary>A student's boards for a project, in the order they were logged.</summary>
    public Task<IReadOnlyList<BoardView>> ListAsync(
        Viewer viewer,
        Guid studentId,
        Guid projectId,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    public Task<BoardView?> FindAsync(
        Viewer viewer,
        Guid boardId,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    /// <summary>Logs a board; its <c>Id</c> is given here. Problems carry field names of <see cref="BoardChecks"/>.</summary>
    public Task<Outcome<BoardView>> AddAsync(
        Viewer viewer,
        Guid studentId,
        Guid projectId,
        Board board,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    public Task<Outcome<BoardView>> SaveAsync(
        Viewer viewer,
        Guid boardId,
        Board board,
        Guid version,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    public Task<Outcome<bool>> RemoveAsync(
        Viewer viewer,
        Guid boardId,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();
}
