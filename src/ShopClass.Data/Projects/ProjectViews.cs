using ShopClass.Core.Projects;

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
    public IReadOnlyList<Joint> Joints { get; init; } = [];

    public IReadOnlyList<SizeCheck> SizeChecks { get; init; } = [];

    /// <summary>The project as the planner takes it.</summary>
    public Project ToProject() =>
        new()
        {
            Name = Name,
            Notes = Notes,
            Parts = [.. Parts.Select(p => p.Part)],
            Joints = Joints,
            SizeChecks = SizeChecks,
        };
}

/// <summary>A stored row of the parts list. <see cref="Version"/> changes with every write of the row.</summary>
public sealed record PartView(Guid Id, Part Part, Guid Version);
