using ShopClass.Core.Projects;
using ShopClass.Data.Courses;
using ShopClass.Data.Orders;

namespace ShopClass.Data.Projects;

/// <summary>A project as stored.</summary>
public sealed class ProjectRow
{
    public Guid Id { get; set; }

    public Guid CourseId { get; set; }

    public CourseRow? Course { get; set; }

    public required string Name { get; set; }

    public string Notes { get; set; } = "";

    /// <summary>Its place among the course's projects.</summary>
    public int Position { get; set; }

    public IReadOnlyList<Joint> Joints { get; set; } = [];

    public IReadOnlyList<SizeCheck> SizeChecks { get; set; } = [];

    public Guid Version { get; set; }

    public List<PartRow> Parts { get; } = [];

    /// <summary>Its supplies and kits; null until they have been saved once.</summary>
    public KitsRow? Kits { get; set; }

    internal IEnumerable<PartRow> PartsInOrder => Parts.OrderBy(p => p.Position).ThenBy(p => p.Id);

    internal ProjectView ToView() =>
        new(Id, CourseId, Name, Notes, [.. PartsInOrder.Select(p => p.ToView())], Version)
        {
            Joints = Joints,
            SizeChecks = SizeChecks,
        };

    internal Project ToProject() =>
        new()
        {
            Name = Name,
            Notes = Notes,
            Parts = [.. PartsInOrder.Select(p => p.ToPart())],
            Joints = Joints,
            SizeChecks = SizeChecks,
        };
}
