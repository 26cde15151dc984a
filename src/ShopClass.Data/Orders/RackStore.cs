using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Orders;
using ShopClass.Data.Access;
using ShopClass.Data.Store;

namespace ShopClass.Data.Orders;

/// <summary>Boards or offcuts on the rack, as stored.</summary>
public sealed record RackView(Guid Id, Guid CourseId, RackPiece Piece, Guid Version);

/// <summary>What goes back on the rack.</summary>
/// <param name="SourceId">The order or plan it comes from.</param>
/// <param name="Pieces">What is put there.</param>
/// <param name="Place">Where it is put; may be empty.</param>
/// <param name="Taken">How many of each entry of the rack were used; by the entry's key.</param>
public sealed record RackReturn(
    Guid SourceId,
    IReadOnlyList<RackPiece> Pieces,
    string Place,
    IReadOnlyDictionary<string, int> Taken
);

/// <summary>What lies on the rack of a course's shop. Only the course's instructor sees it.</summary>
public sealed class RackStore(IDbContextFactory<ShopContext> factory, TimeProvider clock)
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

    /// <summary>When what orders and plans of a course leave was put on the rack: by order or plan.</summary>
    public async Task<IReadOnlyDictionary<Guid, DateTime>> ReturnedAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        if (!await shop.Courses.RunBy(viewer).AnyAsync(c => c.Id == courseId, cancel))
            return new Dictionary<Guid, DateTime>();
        return await shop.Set<ReturnRow>()
            .AsNoTracking()
            .Where(r => r.CourseId == courseId)
            .ToDictionaryAsync(r => r.SourceId, r => r.AtUtc, cancel);
    }

    /// <summary>
    /// Puts what an order or a plan leaves on the rack, and takes off it what the kits have used; all of it or nothing, and
    /// once only.
    /// </summary>
    public async Task<Outcome<int>> ReturnAsync(
        Viewer viewer,
        Guid courseId,
        RackReturn back,
        CancellationToken cancel = default
    )
    {
        RackPiece[] pieces = [.. back.Pieces.Select(p => Tidy(p with { Place = back.Place }))];
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var course = await shop
            .Courses.RunBy(viewer)
            .Include(c => c.Rack)
            .SingleOrDefaultAsync(c => c.Id == courseId, cancel);
        if (course is null)
            return Outcome<int>.NotFound();
        if (course.IsArchived)
            return Outcome<int>.Refused(Wording.CourseIsArchived);
        if (await shop.Set<ReturnRow>().AnyAsync(r => r.SourceId == back.SourceId, cancel))
            return Outcome<int>.Refused(
                new FieldProblem(
                    "",
                    "This has been put on the rack already; it is not put there twice."
                )
            );
        if (course.Rack.Count + pieces.Length > RackChecks.MostPieces)
            return Outcome<int>.Refused(
                new FieldProblem(
                    "",
                    $"The rack would have more than {RackChecks.MostPieces} entries, the most it can. Remove some first."
                )
            );
        if (
            pieces
                .SelectMany(p => Wording.Problems(RackChecks.ProblemsIn(p, course.Rules)))
                .ToList() is
            { Count: > 0 } problems
        )
            return Outcome<int>.Refused(problems);
        foreach (var row in course.Rack.ToList())
            TakeOff(shop, row, back.Taken.GetValueOrDefault(row.Id.ToString("N")));
        foreach (var piece in pieces)
        {
            var row = new RackRow
            {
                Id = Guid.NewGuid(),
                CourseId = courseId,
                Board = piece.Board,
            };
            row.Take(piece);
            shop.Add(row);
        }

        shop.Add(
            new ReturnRow
            {
                SourceId = back.SourceId,
                CourseId = courseId,
                AtUtc = clock.GetUtcNow().UtcDateTime,
            }
        );
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<int>.Saved(pieces.Sum(p => p.Count));
    }

    private static void TakeOff(ShopContext shop, RackRow row, int count)
    {
        if (count == 0)
            return;
        if (count >= row.Count)
            shop.Remove(row);
        else
            (row.Count, row.Version) = (row.Count - count, Guid.NewGuid());
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
