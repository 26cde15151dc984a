using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Orders;
using ShopClass.Data.Access;
using ShopClass.Data.Projects;
using ShopClass.Data.Store;
using ShopClass.Data.Students;

namespace ShopClass.Data.Orders;

/// <summary>Orders of a class's wood as versioned snapshots. Only the course's instructor sees them.</summary>
public sealed class OrderStore(IDbContextFactory<ShopContext> factory, TimeProvider clock)
{
    /// <summary>
    /// What an order would be asked now: a kit for every student who has logged no board for the project. Wood that came with
    /// the newest order is here, until what its kits left has been put back on the rack. Null when the project is not the
    /// viewer's to run.
    /// </summary>
    public async Task<OrderAsk?> AskAsync(
        Viewer viewer,
        Guid projectId,
        OrderChoices choices,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        if (await ProjectAsync(shop, viewer, projectId, cancel) is not { } project)
            return null;
        var people = await shop
            .Students.AsNoTracking()
            .Where(s =>
                s.CourseId == project.CourseId && s.Boards.All(b => b.ProjectId != projectId)
            )
            .ToListAsync(cancel);
        var sellers = await shop.Set<SellerRow>()
            .AsNoTracking()
            .Where(s =>
                s.CourseId == project.CourseId && !s.IsLeftOut && s.Currency == choices.Currency
            )
            .ToListAsync(cancel);
        var rack = choices.UseRack
            ? await shop.Set<RackRow>()
                .AsNoTracking()
                .Where(r => r.CourseId == project.CourseId)
                .ToListAsync(cancel)
            : [];
        return new()
        {
            Project = project.ToProject(),
            Rules = project.Course!.Rules,
            People = [.. InOrder(people)],
            SpareKits = Math.Clamp(choices.SpareKits, 0, OrderChoices.MostSpareKits),
            SpareParts = SparesOf(project, choices),
            Practice = choices.Practice,
            Sellers =
            [
                .. sellers
                    .OrderBy(s => s.Name, Ordering.OfNames)
                    .ThenBy(s => s.Id)
                    .Select(s => s.ToList()),
            ],
            Currency = choices.Currency,
            Rack =
            [
                .. rack.Select(r => r.ToView().Piece)
                    .Where(r => r.State is RackState.Free)
                    .OrderBy(r => r.Place, Ordering.OfNames)
                    .ThenBy(r => r.Board.Name, Ordering.OfNames)
                    .ThenBy(r => r.Id, StringComparer.Ordinal),
            ],
            Here = await HereAsync(shop, viewer, projectId, choices.Currency, cancel),
            SpeciesId = choices.SpeciesId,
            Way = choices.Way,
            WastePercent = Math.Clamp(choices.WastePercent, 0, 95),
        };
    }

    /// <summary>The newest order for a project, or null.</summary>
    public async Task<StoredOrder?> NewestAsync(
        Viewer viewer,
        Guid projectId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var row = await NewestRowAsync(shop, viewer, projectId, cancel);
        return row is null ? null : View(row);
    }

    /// <summary>One order, or null.</summary>
    public async Task<StoredOrder?> FindAsync(
        Viewer viewer,
        Guid orderId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var row = await shop.Set<OrderRow>()
            .AsNoTracking()
            .RunBy(viewer)
            .Include(o => o.Project)
            .SingleOrDefaultAsync(o => o.Id == orderId, cancel);
        return row is null ? null : View(row);
    }

    /// <summary>Keeps an order as the next number. One that leaves somebody without a kit is kept too, and says so.</summary>
    public async Task<Outcome<StoredOrder>> SaveAsync(
        Viewer viewer,
        Guid projectId,
        ClassOrder order,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        if (await ProjectAsync(shop, viewer, projectId, cancel) is not { } project)
            return Outcome<StoredOrder>.NotFound();
        if (project.Course!.IsArchived)
            return Outcome<StoredOrder>.Refused(Wording.CourseIsArchived);
        var newest = await NewestRowAsync(shop, viewer, projectId, cancel);
        var row = NextRow(projectId, (newest?.Number ?? 0) + 1, order);
        shop.Add(row);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        row.Project = project;
        return Outcome<StoredOrder>.Saved(View(row));
    }

    /// <summary>Writes down what has come. The order itself stays as it is.</summary>
    public async Task<Outcome<StoredOrder>> SaveArrivedAsync(
        Viewer viewer,
        Guid orderId,
        IReadOnlyList<Arrived> arrived,
        Guid version,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var row = await shop.Set<OrderRow>()
            .RunBy(viewer)
            .Include(o => o.Project!.Course)
            .SingleOrDefaultAsync(o => o.Id == orderId, cancel);
        if (row is null)
            return Outcome<StoredOrder>.NotFound();
        if (row.Project!.Course!.IsArchived)
            return Outcome<StoredOrder>.Refused(Wording.CourseIsArchived);
        if (row.Version != version)
            return Outcome<StoredOrder>.ChangedMeanwhile(View(row));
        if (
            Receiving.ProblemsIn(Packed.Unpack<ClassOrder>(row.Snapshot), arrived) is
            { Count: > 0 } wrong
        )
            return Outcome<StoredOrder>.Refused([
                .. wrong.Select(sentence => new FieldProblem("", sentence)),
            ]);
        (row.Arrived, row.Version) = ([.. arrived], Guid.NewGuid());
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<StoredOrder>.Saved(View(row));
    }

    /// <summary>
    /// Keeps an order's kits, laid out again on what came, as the next number. Refused when the order is not the newest any
    /// more, or what came was changed since.
    /// </summary>
    public async Task<Outcome<StoredOrder>> KeepAgainAsync(
        Viewer viewer,
        Guid orderId,
        ClassOrder again,
        Guid version,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var row = await shop.Set<OrderRow>()
            .AsNoTracking()
            .RunBy(viewer)
            .Include(o => o.Project!.Course)
            .SingleOrDefaultAsync(o => o.Id == orderId, cancel);
        if (row is null)
            return Outcome<StoredOrder>.NotFound();
        if (row.Project!.Course!.IsArchived)
            return Outcome<StoredOrder>.Refused(Wording.CourseIsArchived);
        var newest = (await NewestRowAsync(shop, viewer, row.ProjectId, cancel))!;
        if (newest.Id != orderId)
            return Outcome<StoredOrder>.Refused(
                new FieldProblem(
                    "",
                    $"Order {newest.Number} was kept since. Open the page again to see it; nothing was kept now."
                )
            );
        if (row.Version != version)
            return Outcome<StoredOrder>.ChangedMeanwhile(View(row));
        var next = NextRow(row.ProjectId, row.Number + 1, again);
        shop.Add(next);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        next.Project = row.Project;
        return Outcome<StoredOrder>.Saved(View(next));
    }

    private static async Task<IReadOnlyList<OrderLine>> HereAsync(
        ShopContext shop,
        Viewer viewer,
        Guid projectId,
        string currency,
        CancellationToken cancel
    )
    {
        var newest = await NewestRowAsync(shop, viewer, projectId, cancel);
        if (
            newest is null
            || await shop.Set<ReturnRow>().AnyAsync(r => r.SourceId == newest.Id, cancel)
        )
            return [];
        return
        [
            .. WoodHere
                .Of(Packed.Unpack<ClassOrder>(newest.Snapshot), newest.Arrived)
                .Where(l => l.Stock.Price.Currency == currency),
        ];
    }

    private OrderRow NextRow(Guid projectId, int number, ClassOrder order) =>
        new()
        {
            Id = Guid.NewGuid(),
            ProjectId = projectId,
            Number = number,
            MadeUtc = clock.GetUtcNow().UtcDateTime,
            Snapshot = Packed.Pack(order),
            Version = Guid.NewGuid(),
        };

    // What was asked for parts that are not there any more is let go.
    private static SortedDictionary<string, int> SparesOf(ProjectRow project, OrderChoices choices)
    {
        var spares = new SortedDictionary<string, int>(StringComparer.Ordinal);
        foreach (var part in project.Parts)
        {
            var count = choices.SpareParts.GetValueOrDefault(part.Letter);
            if (count > 0)
                spares[part.Letter] = Math.Min(count, OrderChoices.MostSpareParts);
        }

        return spares;
    }

    private static IEnumerable<OrderPerson> InOrder(List<StudentRow> people) =>
        people
            .Select(s => s.ToView())
            .OrderBy(s => s.Shown, Ordering.OfNames)
            .ThenBy(s => s.Id)
            .Select(s => new OrderPerson(s.Id.ToString("N"), s.Shown));

    private static Task<ProjectRow?> ProjectAsync(
        ShopContext shop,
        Viewer viewer,
        Guid projectId,
        CancellationToken cancel
    ) =>
        shop
            .Projects.AsNoTracking()
            .RunBy(viewer)
            .Include(p => p.Course)
            .Include(p => p.Parts)
            .SingleOrDefaultAsync(p => p.Id == projectId, cancel);

    private static Task<OrderRow?> NewestRowAsync(
        ShopContext shop,
        Viewer viewer,
        Guid projectId,
        CancellationToken cancel
    ) =>
        shop.Set<OrderRow>()
            .AsNoTracking()
            .RunBy(viewer)
            .Include(o => o.Project)
            .Where(o => o.ProjectId == projectId)
            .OrderByDescending(o => o.Number)
            .FirstOrDefaultAsync(cancel);

    private static StoredOrder View(OrderRow row) =>
        new(
            row.Id,
            row.Project!.CourseId,
            row.ProjectId,
            row.Number,
            row.MadeUtc,
            Packed.Unpack<ClassOrder>(row.Snapshot),
            row.Arrived,
            row.Version
        );
}
