using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Orders;
using ShopClass.Data.Access;
using ShopClass.Data.Store;

namespace ShopClass.Data.Orders;

/// <summary>Boards or offcuts on the rack, as stored.</summary>
public sealed record RackView(Guid Id, Guid CourseId, RackPiece Piece, Guid Version);

/// <summary>What lies on the rack of a course's shop. Only the course's instructor sees it.</summary>
public sealed class RackStore(IDbContextFactory<ShopContext> factory)
{
    /// <summary>By place, then by name: the order in which one walks along it.</summary>
    public async Task<IReadOnlyList<RackView>> ListAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var rows = await shop.Set<RackRow>()
            .AsNoTracking()
            .RunBy(viewer)
            .Where(r => r.CourseId == courseId)
            .ToListAsync(cancel);
        return
        [
            .. rows.Select(r => r.ToView())
                .OrderBy(r => r.Piece.Place, Ordering.OfNames)
                .ThenBy(r => r.Piece.Board.Name, Ordering.OfNames)
                .ThenBy(r => r.Id),
        ];
    }

    /// <summary>Puts a piece on the rack. Problems carry field names of <see cref="RackChecks"/>.</summary>
    public async Task<Outcome<RackView>> AddAsync(
        Viewer viewer,
        Guid courseId,
        RackPiece piece,
        CancellationToken cancel = default
    )
    {
        var tidy = Tidy(piece);
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var course = await shop
            .Courses.RunBy(viewer)
            .SingleOrDefaultAsync(c => c.Id == courseId, cancel);
        if (course is null)
            return Outcome<RackView>.NotFound();
        if (course.IsArchived)
            return Outcome<RackView>.Refused(Wording.CourseIsArchived);
        var there = await shop.Set<RackRow>().CountAsync(r => r.CourseId == courseId, cancel);
        if (there >= RackChecks.MostPieces)
            return Outcome<RackView>.Refused(
                new FieldProblem(
                    "",
                    $"The rack has {RackChecks.MostPieces} entries, the most it can. Remove one first."
                )
            );
        if (Wording.Problems(RackChecks.ProblemsIn(tidy, course.Rules)) is { Count: > 0 } problems)
            return Outcome<RackView>.Refused(problems);
        var row = new RackRow
        {
            Id = Guid.NewGuid(),
            CourseId = courseId,
            Board = tidy.Board,
        };
        row.Take(tidy);
        shop.Add(row);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<RackView>.Saved(row.ToView());
    }

    /// <summary>Saves a piece as it is now. Problems carry field names of <see cref="RackChecks"/>.</summary>
    public async Task<Outcome<RackView>> SaveAsync(
        Viewer viewer,
        Guid pieceId,
        RackPiece piece,
        Guid version,
        CancellationToken cancel = default
    )
    {
        var tidy = Tidy(piece);
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var row = await FindAsync(shop, viewer, pieceId, cancel);
        if (row is null)
            return Outcome<RackView>.NotFound();
        if (row.Course!.IsArchived)
            return Outcome<RackView>.Refused(Wording.CourseIsArchived);
        if (row.Version != version)
            return Outcome<RackView>.ChangedMeanwhile(row.ToView());
        if (
            Wording.Problems(RackChecks.ProblemsIn(tidy, row.Course.Rules)) is
            { Count: > 0 } problems
        )
            return Outcome<RackView>.Refused(problems);
        row.Take(tidy);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<RackView>.Saved(row.ToView());
    }

    /// <summary>Takes a piece off the rack.</summary>
    public async Task<Outcome<bool>> RemoveAsync(
        Viewer viewer,
        Guid pieceId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var row = await FindAsync(shop, viewer, pieceId, cancel);
        if (row is null)
            return Outcome<bool>.NotFound();
        if (row.Course!.IsArchived)
            return Outcome<bool>.Refused(Wording.CourseIsArchived);
        shop.Remove(row);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<bool>.Saved(true);
    }

    internal static RackPiece Tidy(RackPiece piece) =>
        piece with
        {
            Place = Wording.Tidy(piece.Place),
            Board = piece.Board with { Name = Wording.Tidy(piece.Board.Name) },
        };

    private static Task<RackRow?> FindAsync(
        ShopContext shop,
        Viewer viewer,
        Guid pieceId,
        CancellationToken cancel
    ) =>
        shop.Set<RackRow>()
            .RunBy(viewer)
            .Include(r => r.Course)
            .SingleOrDefaultAsync(r => r.Id == pieceId, cancel);
}
