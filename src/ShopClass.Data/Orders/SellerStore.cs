using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Data.Access;
using ShopClass.Data.Store;

namespace ShopClass.Data.Orders;

/// <summary>A stored seller. <see cref="Version"/> changes with every write of the seller or the list.</summary>
public sealed record SellerView(
    Guid Id,
    Guid CourseId,
    string Name,
    string Currency,
    bool IsLeftOut,
    IReadOnlyList<PricedStock> Stock,
    Guid Version
)
{
    /// <summary>The seller as an order takes it.</summary>
    public SellerList ToList() => new(Id.ToString("N"), Name, Currency, Stock);
}

/// <summary>The sellers of a course and their price lists. Only the course's instructor sees them.</summary>
public sealed class SellerStore(IDbContextFactory<ShopContext> factory)
{
    /// <summary>Most sellers of one course.</summary>
    public const int MostSellers = 20;

    /// <summary>By name.</summary>
    public async Task<IReadOnlyList<SellerView>> ListAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var rows = await shop.Set<SellerRow>()
            .AsNoTracking()
            .RunBy(viewer)
            .Where(s => s.CourseId == courseId)
            .ToListAsync(cancel);
        return
        [
            .. rows.Select(r => r.ToView())
                .OrderBy(s => s.Name, Ordering.OfNames)
                .ThenBy(s => s.Id),
        ];
    }

    public async Task<SellerView?> FindAsync(
        Viewer viewer,
        Guid sellerId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var row = await shop.Set<SellerRow>()
            .AsNoTracking()
            .RunBy(viewer)
            .SingleOrDefaultAsync(s => s.Id == sellerId, cancel);
        return row?.ToView();
    }

    /// <summary>A seller without a list yet. Problems: fields Name and Currency.</summary>
    public async Task<Outcome<SellerView>> AddAsync(
        Viewer viewer,
        Guid courseId,
        string name,
        string currency,
        CancellationToken cancel = default
    )
    {
        var tidy = Wording.Tidy(name);
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var course = await shop
            .Courses.RunBy(viewer)
            .SingleOrDefaultAsync(c => c.Id == courseId, cancel);
        if (course is null)
            return Outcome<SellerView>.NotFound();
        if (course.IsArchived)
            return Outcome<SellerView>.Refused(Wording.CourseIsArchived);
        if (
            await shop.Set<SellerRow>().CountAsync(s => s.CourseId == courseId, cancel)
            >= MostSellers
        )
            return Outcome<SellerView>.Refused(
                new FieldProblem(
                    "",
                    $"A course can have {MostSellers} sellers, and this one has them. Remove one first."
                )
            );
        if (ProblemsIn(tidy, currency) is { Count: > 0 } problems)
            return Outcome<SellerView>.Refused(problems);
        var row = new SellerRow
        {
            Id = Guid.NewGuid(),
            CourseId = courseId,
            Name = tidy,
            Currency = currency,
            Version = Guid.NewGuid(),
        };
        shop.Add(row);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<SellerView>.Saved(row.ToView());
    }

    /// <summary>Saves the seller's name, and whether orders leave them out.</summary>
    public Task<Outcome<SellerView>> SaveAsync(
        Viewer viewer,
        Guid sellerId,
        string name,
        bool isLeftOut,
        Guid version,
        CancellationToken cancel = default
    )
    {
        var tidy = Wording.Tidy(name);
        return ChangeAsync(
            viewer,
            sellerId,
            version,
            row => ProblemsIn(tidy, row.Currency),
            row => (row.Name, row.IsLeftOut) = (tidy, isLeftOut),
            cancel
        );
    }

    /// <summary>Saves the whole list; lines without a key get one. Problems carry Stock[0].Price and the like.</summary>
    public Task<Outcome<SellerView>> SaveStockAsync(
        Viewer viewer,
        Guid sellerId,
        IReadOnlyList<PricedStock> stock,
        Guid version,
        CancellationToken cancel = default
    ) =>
        ChangeAsync(
            viewer,
            sellerId,
            version,
            row => ProblemsIn(stock, row),
            row => row.Stock = [.. stock.Select(WithKey)],
            cancel
        );

    /// <summary>Removes the seller with the list. Orders made before stay as they are.</summary>
    public async Task<Outcome<bool>> RemoveAsync(
        Viewer viewer,
        Guid sellerId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var row = await shop.Set<SellerRow>()
            .RunBy(viewer)
            .Include(s => s.Course)
            .SingleOrDefaultAsync(s => s.Id == sellerId, cancel);
        if (row is null)
            return Outcome<bool>.NotFound();
        if (row.Course!.IsArchived)
            return Outcome<bool>.Refused(Wording.CourseIsArchived);
        shop.Remove(row);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<bool>.Saved(true);
    }

    internal static List<FieldProblem> ProblemsIn(string name, string currency) =>
        Wording.Problems(
            ("Name", Wording.ProblemWithName(name)),
            (
                "Currency",
                Currencies.Find(currency) is null ? "Choose a currency from the list." : null
            )
        );

    internal static List<FieldProblem> ProblemsIn(
        IReadOnlyList<PricedStock> stock,
        SellerRow seller
    )
    {
        if (stock.Count > StockChecks.MostLines)
            return
            [
                new(
                    "",
                    $"A seller's list holds at most {StockChecks.MostLines} lines. Here are {stock.Count:N0}."
                ),
            ];
        return [.. stock.Index().SelectMany(s => ProblemsIn(s.Item, s.Index, stock, seller))];
    }

    internal static PricedStock WithKey(PricedStock stock) =>
        stock.Id.Length > 0 ? stock : stock with { Id = Guid.NewGuid().ToString("N") };

    private static IEnumerable<FieldProblem> ProblemsIn(
        PricedStock line,
        int index,
        IReadOnlyList<PricedStock> all,
        SellerRow seller
    )
    {
        foreach (var (field, sentence) in StockChecks.ProblemsIn(line, seller.Course!.Rules.Unit))
            yield return new($"Stock[{index}].{field}", sentence);
        if (line.Price.Currency != seller.Currency)
            yield return new(
                $"Stock[{index}].Price",
                $"The price is in {line.Price.Currency}, and this list is in {seller.Currency}."
            );
        if (all.Take(index).Any(other => StockChecks.IsSameStock(other, line)))
            yield return new(
                $"Stock[{index}]",
                $"{line.Name} of this length, wood and grade is in the list already."
            );
    }

    private async Task<Outcome<SellerView>> ChangeAsync(
        Viewer viewer,
        Guid sellerId,
        Guid version,
        Func<SellerRow, IReadOnlyList<FieldProblem>> problemsIn,
        Action<SellerRow> change,
        CancellationToken cancel
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var row = await shop.Set<SellerRow>()
            .RunBy(viewer)
            .Include(s => s.Course)
            .SingleOrDefaultAsync(s => s.Id == sellerId, cancel);
        if (row is null)
            return Outcome<SellerView>.NotFound();
        if (row.Course!.IsArchived)
            return Outcome<SellerView>.Refused(Wording.CourseIsArchived);
        if (row.Version != version)
            return Outcome<SellerView>.ChangedMeanwhile(row.ToView());
        if (problemsIn(row) is { Count: > 0 } problems)
            return Outcome<SellerView>.Refused(problems);
        change(row);
        row.Version = Guid.NewGuid();
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<SellerView>.Saved(row.ToView());
    }
}
