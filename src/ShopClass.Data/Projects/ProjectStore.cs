using ShopClass.Core.Projects;
using ShopClass.Data.Access;

namespace ShopClass.Data.Projects;

/// <summary>A project in a list.</summary>
public sealed record ProjectSummary(Guid Id, string Name, int Parts, int Pieces);

/// <summary>A project and its rows.</summary>
public sealed record ProjectView(
    Guid Id,
    Guid CourseId,
    string Name,
    string Notes,
    IReadOnlyList<PartView> Parts,
    Guid Version
)
{
    /// <summary>The project as the planner takes it.</summary>
    public Project ToProject() =>
        new()
        {
            Name = Name,
            Notes = Notes,
            Parts = [.. Parts.Select(p => p.Part)],
        };
}

/// <summary>A stored row of the parts list. <see cref="Version"/> changes with every write of the row.</summary>
public sealed record PartView(Guid Id, Part Part, Guid Version);

/// <summary>Projects and their parts lists; each row is saved on its own.</summary>
public sealed class ProjectStore
{
    public Task<IReadOnlyList<ProjectSummary>> ListAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    public Task<ProjectView?> FindAsync(
        Viewer viewer,
        Guid projectId,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    public Task<Outcome<ProjectView>> CreateAsync(
        Viewer viewer,
        Guid courseId,
        string name,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    /// <summary>Saves name and notes.</summary>
    public Task<Outcome<ProjectView>> SaveAsync(
        Viewer viewer,
        Guid projectId,
        string name,
        string notes,
        Guid version,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    /// <summary>Removes the project with its boards and plans.</summary>
    public Task<Outcome<bool>> RemoveAsync(
        Viewer viewer,
        Guid projectId,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    /// <summary>Adds rows at the end, all or none (a pasted list). Problems name the row: "2.Width".</summary>
    public Task<Outcome<IReadOnlyList<PartView>>> AddPartsAsync(
        Viewer viewer,
        Guid projectId,
        IReadOnlyList<Part> parts,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    /// <summary>Saves one row. Problems carry field names of <see cref="PartChecks"/>.</summary>
    public Task<Outcome<PartView>> SavePartAsync(
        Viewer viewer,
        Guid projectId,
        Guid partId,
        Part part,
        Guid version,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    public Task<Outcome<bool>> RemovePartAsync(
        Viewer viewer,
        Guid projectId,
        Guid partId,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    /// <summary>Moves a row up (-1) or down (+1).</summary>
    public Task<Outcome<bool>> MovePartAsync(
        Viewer viewer,
        Guid projectId,
        Guid partId,
        int by,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();
}
