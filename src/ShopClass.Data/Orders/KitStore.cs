using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Data.Access;
using ShopClass.Data.Store;

namespace ShopClass.Data.Orders;

/// <summary>What goes into kits, how far each is, and how a course prints. Only the course's instructor sees it.</summary>
public sealed class KitStore(IDbContextFactory<ShopContext> factory)
{
    /// <summary>A project's supplies and kit states; null when the project is not the viewer's to run.</summary>
    public async Task<KitsView?> FindAsync(
        Viewer viewer,
        Guid projectId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        if (!await shop.Projects.RunBy(viewer).AnyAsync(p => p.Id == projectId, cancel))
            return null;
        var row = await shop.Set<KitsRow>()
            .AsNoTracking()
            .SingleOrDefaultAsync(k => k.ProjectId == projectId, cancel);
        return View(projectId, row);
    }

    /// <summary>Saves a project's list of supplies. Problems carry Supplies[0].Name and the like.</summary>
    public Task<Outcome<KitsView>> SaveSuppliesAsync(
        Viewer viewer,
        Guid projectId,
        IReadOnlyList<Supply> supplies,
        Guid version,
        CancellationToken cancel = default
    )
    {
        IReadOnlyList<Supply> tidy =
        [
            .. supplies.Select(s =>
                s with
                {
                    Name = Wording.Tidy(s.Name),
                    Amount = Wording.Tidy(s.Amount),
                }
            ),
        ];
        return ChangeAsync(
            viewer,
            projectId,
            version,
            ProblemsIn(tidy),
            row => row.Supplies = tidy,
            cancel
        );
    }

    /// <summary>Marks how far a student's kit is. The last who marks is right; nobody loses anything by it.</summary>
    public async Task<Outcome<KitsView>> MarkAsync(
        Viewer viewer,
        Guid projectId,
        KitMark mark,
        CancellationToken cancel = default
    )
    {
        var now = await FindAsync(viewer, projectId, cancel);
        return await ChangeAsync(
            viewer,
            projectId,
            now?.Version ?? Guid.Empty,
            [],
            row => row.Marks = [.. row.Marks.Where(m => m.StudentId != mark.StudentId), mark],
            cancel
        );
    }

    /// <summary>How a course prints; null when the course is not the viewer's to run.</summary>
    public async Task<PrintDeskView?> DeskAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var course = await shop
            .Courses.AsNoTracking()
            .RunBy(viewer)
            .SingleOrDefaultAsync(c => c.Id == courseId, cancel);
        if (course is null)
            return null;
        var row = await shop.Set<PrintDeskRow>()
            .AsNoTracking()
            .SingleOrDefaultAsync(d => d.CourseId == courseId, cancel);
        return row is null
            ? new(
                courseId,
                "",
                new(
                    course.Rules.Unit is UnitSystem.Inch ? "letter-3x10" : "a4-3x8",
                    default,
                    default
                ),
                Guid.Empty
            )
            : new(courseId, row.Address, row.Labels, row.Version);
    }

    /// <summary>Saves how a course prints. Problems: Address, Right, Down.</summary>
    public async Task<Outcome<PrintDeskView>> SaveDeskAsync(
        Viewer viewer,
        PrintDeskView desk,
        CancellationToken cancel = default
    )
    {
        var address = Wording.Tidy(desk.Address).TrimEnd('/');
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var course = await shop
            .Courses.RunBy(viewer)
            .SingleOrDefaultAsync(c => c.Id == desk.CourseId, cancel);
        if (course is null)
            return Outcome<PrintDeskView>.NotFound();
        if (course.IsArchived)
            return Outcome<PrintDeskView>.Refused(Wording.CourseIsArchived);
        var row = await shop.Set<PrintDeskRow>()
            .SingleOrDefaultAsync(d => d.CourseId == desk.CourseId, cancel);
        if ((row?.Version ?? Guid.Empty) != desk.Version)
            return Outcome<PrintDeskView>.ChangedMeanwhile(
                row is null ? null : new(desk.CourseId, row.Address, row.Labels, row.Version)
            );
        if (ProblemsIn(address, desk.Labels) is { Count: > 0 } problems)
            return Outcome<PrintDeskView>.Refused(problems);
        if (row is null)
            shop.Add(row = new PrintDeskRow { CourseId = desk.CourseId, Labels = desk.Labels });
        (row.Address, row.Labels, row.Version) = (address, desk.Labels, Guid.NewGuid());
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<PrintDeskView>.Saved(new(desk.CourseId, address, row.Labels, row.Version));
    }

    private static List<FieldProblem> ProblemsIn(IReadOnlyList<Supply> supplies) =>
        supplies.Count > SupplyChecks.MostSupplies
            ?
            [
                new(
                    "",
                    $"A project has at most {SupplyChecks.MostSupplies} supplies. Here are {supplies.Count}."
                ),
            ]
            :
            [
                .. supplies
                    .Index()
                    .SelectMany(s =>
                        Wording.Problems(SupplyChecks.ProblemsIn(s.Item), $"Supplies[{s.Index}].")
                    ),
            ];

    internal static List<FieldProblem> ProblemsIn(string address, LabelSetting labels)
    {
        var isAddress =
            address.Length == 0
            || (
                address.Length <= 120
                && Uri.TryCreate(address, UriKind.Absolute, out var uri)
                && (uri.Scheme == Uri.UriSchemeHttp || uri.Scheme == Uri.UriSchemeHttps)
                && uri.Query.Length == 0
                && uri.Fragment.Length == 0
            );
        bool Far(Length off) => off > LabelSetting.Furthest || off < -LabelSetting.Furthest;
        return Wording.Problems(
            (
                "Address",
                isAddress
                    ? null
                    : "Write an address such as http://192.168.1.20:5000, as a phone in the shop reaches this app."
            ),
            (
                "Right",
                Far(labels.Right)
                    ? "A printer is moved by at most 20 mm. Check the figure and its unit."
                    : null
            ),
            (
                "Down",
                Far(labels.Down)
                    ? "A printer is moved by at most 20 mm. Check the figure and its unit."
                    : null
            )
        );
    }

    private async Task<Outcome<KitsView>> ChangeAsync(
        Viewer viewer,
        Guid projectId,
        Guid version,
        List<FieldProblem> problems,
        Action<KitsRow> change,
        CancellationToken cancel
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var project = await shop
            .Projects.RunBy(viewer)
            .Include(p => p.Course)
            .SingleOrDefaultAsync(p => p.Id == projectId, cancel);
        if (project is null)
            return Outcome<KitsView>.NotFound();
        if (project.Course!.IsArchived)
            return Outcome<KitsView>.Refused(Wording.CourseIsArchived);
        var row = await shop.Set<KitsRow>()
            .SingleOrDefaultAsync(k => k.ProjectId == projectId, cancel);
        if ((row?.Version ?? Guid.Empty) != version)
            return Outcome<KitsView>.ChangedMeanwhile(View(projectId, row));
        if (problems.Count > 0)
            return Outcome<KitsView>.Refused(problems);
        if (row is null)
            shop.Add(row = new KitsRow { ProjectId = projectId });
        change(row);
        row.Version = Guid.NewGuid();
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<KitsView>.Saved(View(projectId, row));
    }

    private static KitsView View(Guid projectId, KitsRow? row) =>
        new(projectId, row?.Supplies ?? [], row?.Marks ?? [], row?.Version ?? Guid.Empty);
}
