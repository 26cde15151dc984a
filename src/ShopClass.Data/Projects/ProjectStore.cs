using Microsoft.EntityFrameworkCore;
using ShopClass.Data.Access;
using ShopClass.Data.Store;

namespace ShopClass.Data.Projects;

/// <summary>Projects and their parts lists; each row is saved on its own.</summary>
public sealed partial class ProjectStore(IDbContextFactory<ShopContext> factory)
{
    /// <summary>A course's projects, in the order they were made.</summary>
    public async Task<IReadOnlyList<ProjectSummary>> ListAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        return await shop
            .Projects.SeenBy(viewer, Deed.SeeCourse)
            .Where(p => p.CourseId == courseId)
            .OrderBy(p => p.Position)
            .ThenBy(p => p.Id)
            .Select(p => new ProjectSummary(
                p.Id,
                p.Name,
                p.Parts.Count,
                p.Parts.Sum(part => part.Quantity)
            ))
            .ToListAsync(cancel);
    }

    public async Task<ProjectView?> FindAsync(
        Viewer viewer,
        Guid projectId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var row = await shop
            .Projects.AsNoTracking()
            .SeenBy(viewer, Deed.SeeCourse)
            .Include(p => p.Parts)
            .SingleOrDefaultAsync(p => p.Id == projectId, cancel);
        return row?.ToView();
    }

    public async Task<Outcome<ProjectView>> CreateAsync(
        Viewer viewer,
        Guid courseId,
        string name,
        CancellationToken cancel = default
    )
    {
        var tidy = Wording.Tidy(name);
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var course = await shop
            .Courses.RunBy(viewer)
            .Include(c => c.Projects)
            .SingleOrDefaultAsync(c => c.Id == courseId, cancel);
        if (course is null)
            return Outcome<ProjectView>.NotFound();
        if (course.IsArchived)
            return Outcome<ProjectView>.Refused(Wording.CourseIsArchived);
        if (course.Projects.Count >= StoreLimits.ProjectsInACourse)
            return Outcome<ProjectView>.Refused(Wording.TooManyProjects);
        if (ProblemsIn(tidy, "") is { Count: > 0 } problems)
            return Outcome<ProjectView>.Refused(problems);
        var row = new ProjectRow
        {
            Id = Guid.NewGuid(),
            CourseId = courseId,
            Name = tidy,
            Position = course.Projects.Select(p => p.Position).DefaultIfEmpty(0).Max() + 1,
            Version = Guid.NewGuid(),
        };
        shop.Projects.Add(row);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<ProjectView>.Saved(row.ToView());
    }

    /// <summary>Saves name and notes.</summary>
    public async Task<Outcome<ProjectView>> SaveAsync(
        Viewer viewer,
        Guid projectId,
        string name,
        string notes,
        Guid version,
        CancellationToken cancel = default
    )
    {
        var (tidyName, tidyNotes) = (Wording.Tidy(name), Wording.Tidy(notes));
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var row = await RunByAsync(shop, viewer, projectId, cancel);
        if (row is null)
            return Outcome<ProjectView>.NotFound();
        if (row.Course!.IsArchived)
            return Outcome<ProjectView>.Refused(Wording.CourseIsArchived);
        if (row.Version != version)
            return Outcome<ProjectView>.ChangedMeanwhile(row.ToView());
        if (ProblemsIn(tidyName, tidyNotes) is { Count: > 0 } problems)
            return Outcome<ProjectView>.Refused(problems);
        (row.Name, row.Notes, row.Version) = (tidyName, tidyNotes, Guid.NewGuid());
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<ProjectView>.Saved(row.ToView());
    }

    /// <summary>Removes the project with its boards and plans.</summary>
    public Task<Outcome<bool>> RemoveAsync(
        Viewer viewer,
        Guid projectId,
        CancellationToken cancel = default
    ) =>
        ChangeAsync<bool>(
            viewer,
            projectId,
            (shop, row) =>
            {
                shop.Projects.Remove(row);
                return Outcome<bool>.Saved(true);
            },
            cancel
        );

    internal static List<FieldProblem> ProblemsIn(string name, string notes) =>
        Wording.Problems(
            ("Name", Wording.ProblemWithName(name)),
            ("Notes", Wording.ProblemWithNotes(notes))
        );

    private static Task<ProjectRow?> RunByAsync(
        ShopContext shop,
        Viewer viewer,
        Guid projectId,
        CancellationToken cancel
    ) =>
        shop
            .Projects.RunBy(viewer)
            .Include(p => p.Course)
            .Include(p => p.Parts)
            .SingleOrDefaultAsync(p => p.Id == projectId, cancel);

    /// <summary>Does something to a project the viewer runs; whatever does not end as saved changes nothing.</summary>
    private async Task<Outcome<T>> ChangeAsync<T>(
        Viewer viewer,
        Guid projectId,
        Func<ShopContext, ProjectRow, Outcome<T>> change,
        CancellationToken cancel
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var row = await RunByAsync(shop, viewer, projectId, cancel);
        if (row is null)
            return Outcome<T>.NotFound();
        if (row.Course!.IsArchived)
            return Outcome<T>.Refused(Wording.CourseIsArchived);
        var outcome = change(shop, row);
        if (!outcome.IsSaved)
            return outcome;
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return outcome;
    }
}
