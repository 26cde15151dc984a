using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Data.Access;
using ShopClass.Data.Store;

namespace ShopClass.Data.Courses;

/// <summary>A course in a list.</summary>
public sealed record CourseSummary(
    Guid Id,
    string Name,
    bool IsArchived,
    int Students,
    int Projects
)
{
    /// <summary>What the viewer is in it; null for a student.</summary>
    public CourseRole? Role { get; init; }
}

/// <summary>A course with its settings. <see cref="Version"/> changes with every write.</summary>
public sealed record CourseView(
    Guid Id,
    string Name,
    bool IsArchived,
    CourseRules Rules,
    Guid Version
)
{
    /// <summary>What the viewer is in it; null for a student.</summary>
    public CourseRole? Role { get; init; }

    /// <summary>Whether the viewer's role may do it.</summary>
    public bool May(Deed deed) => Role is { } role && RolePolicy.May(role, deed);
}

/// <summary>Courses: listing, creating, renaming, archiving, settings.</summary>
public sealed partial class CourseStore(IDbContextFactory<ShopContext> factory, TimeProvider clock)
{
    /// <summary>The viewer's courses, by name; for a student, their one course.</summary>
    public async Task<IReadOnlyList<CourseSummary>> ListAsync(
        Viewer viewer,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var found = await shop
            .Courses.SeenBy(viewer, Deed.SeeCourse)
            .Select(c => new CourseSummary(
                c.Id,
                c.Name,
                c.IsArchived,
                c.Students.Count,
                c.Projects.Count
            ))
            .ToListAsync(cancel);
        var roles = await RolesAsync(shop, viewer, null, cancel);
        return
        [
            .. found
                .Select(c =>
                    c with
                    {
                        Role =
                            viewer is InstructorViewer
                                ? roles.GetValueOrDefault(c.Id, CourseRole.Owner)
                                : null,
                    }
                )
                .OrderBy(c => c.Name, Ordering.OfNames)
                .ThenBy(c => c.Id),
        ];
    }

    /// <summary>One course, or null when it is not the viewer's.</summary>
    public async Task<CourseView?> FindAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var row = await shop
            .Courses.AsNoTracking()
            .SeenBy(viewer, Deed.SeeCourse)
            .SingleOrDefaultAsync(c => c.Id == courseId, cancel);
        return row?.ToView(await RoleAsync(shop, viewer, row, cancel));
    }

    /// <summary>One course where the viewer may do this in it; null where not, and for a student.</summary>
    public async Task<CourseView?> FindForAsync(
        Viewer viewer,
        Guid courseId,
        Deed deed,
        CancellationToken cancel = default
    ) =>
        await FindAsync(viewer, courseId, cancel) is { } course && course.May(deed) ? course : null;

    /// <summary>A new course with the unit's default rules. Refuses an empty or over-long name (field "Name").</summary>
    public async Task<Outcome<CourseView>> CreateAsync(
        Viewer viewer,
        string name,
        UnitSystem unit,
        CancellationToken cancel = default
    )
    {
        if (viewer is not InstructorViewer instructor)
            return Outcome<CourseView>.NotFound();
        var tidy = Wording.Tidy(name);
        if (ProblemsWithName(tidy) is { Count: > 0 } problems)
            return Outcome<CourseView>.Refused(problems);
        await using var shop = await factory.CreateDbContextAsync(cancel);
        if (!await shop.Users.AnyAsync(a => a.Id == instructor.UserId, cancel))
            return Outcome<CourseView>.NotFound();
        var row = new CourseRow
        {
            Id = Guid.NewGuid(),
            OwnerId = instructor.UserId,
            Name = tidy,
            Rules = CourseRules.DefaultsFor(unit),
            MadeUtc = clock.GetUtcNow().UtcDateTime,
            Version = Guid.NewGuid(),
        };
        shop.Courses.Add(row);
        await shop.SaveChangesAsync(cancel);
        return Outcome<CourseView>.Saved(row.ToView());
    }

    /// <summary>Gives it another name.</summary>
    public Task<Outcome<CourseView>> RenameAsync(
        Viewer viewer,
        Guid courseId,
        string name,
        Guid version,
        CancellationToken cancel = default
    )
    {
        var tidy = Wording.Tidy(name);
        return ChangeAsync(
            viewer,
            courseId,
            version,
            row => row.IsArchived ? [Wording.CourseIsArchived] : ProblemsWithName(tidy),
            row => row.Name = tidy,
            cancel
        );
    }

    /// <summary>Puts it away, or takes it out again. An archived course can be read and not changed.</summary>
    public Task<Outcome<CourseView>> ArchiveAsync(
        Viewer viewer,
        Guid courseId,
        bool archived,
        Guid version,
        CancellationToken cancel = default
    ) => ChangeAsync(viewer, courseId, version, _ => [], row => row.IsArchived = archived, cancel);

    /// <summary>Saves its settings; problems carry the keys of <see cref="RuleBook"/>.</summary>
    public Task<Outcome<CourseView>> SaveRulesAsync(
        Viewer viewer,
        Guid courseId,
        CourseRules rules,
        Guid version,
        CancellationToken cancel = default
    ) =>
        ChangeAsync(
            viewer,
            courseId,
            version,
            row =>
                row.IsArchived
                    ? [Wording.CourseIsArchived]
                    : Wording.Problems(RuleBook.ProblemsIn(rules)),
            row => row.Rules = rules,
            cancel
        );

    private async Task<Outcome<CourseView>> ChangeAsync(
        Viewer viewer,
        Guid courseId,
        Guid version,
        Func<CourseRow, IReadOnlyList<FieldProblem>> problemsIn,
        Action<CourseRow> change,
        CancellationToken cancel
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var row = await shop
            .Courses.RunBy(viewer)
            .SingleOrDefaultAsync(c => c.Id == courseId, cancel);
        if (row is null)
            return Outcome<CourseView>.NotFound();
        if (row.Version != version)
            return Outcome<CourseView>.ChangedMeanwhile(row.ToView());
        if (problemsIn(row) is { Count: > 0 } problems)
            return Outcome<CourseView>.Refused(problems);
        change(row);
        row.Version = Guid.NewGuid();
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<CourseView>.Saved(row.ToView());
    }

    private static async Task<CourseRole?> RoleAsync(
        ShopContext shop,
        Viewer viewer,
        CourseRow course,
        CancellationToken cancel
    )
    {
        if (viewer is not InstructorViewer instructor)
            return null;
        if (course.OwnerId == instructor.UserId)
            return CourseRole.Owner;
        return (await RolesAsync(shop, viewer, course.Id, cancel))[course.Id];
    }

    // Of somebody who helps and stands in, the role that may do more.
    private static async Task<Dictionary<Guid, CourseRole>> RolesAsync(
        ShopContext shop,
        Viewer viewer,
        Guid? courseId,
        CancellationToken cancel
    )
    {
        if (viewer is not InstructorViewer instructor)
            return [];
        var held = await shop
            .People.Where(p =>
                p.AccountId == instructor.UserId && (courseId == null || p.CourseId == courseId)
            )
            .Select(p => new { p.CourseId, p.Role })
            .ToListAsync(cancel);
        return held.GroupBy(p => p.CourseId).ToDictionary(g => g.Key, g => g.Min(p => p.Role));
    }

    private static List<FieldProblem> ProblemsWithName(string tidy) =>
        Wording.Problems(("Name", Wording.ProblemWithName(tidy)));
}
