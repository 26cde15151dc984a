using ShopClass.Core.Courses;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Access;
using ShopClass.Data.Learning;
using ShopClass.Data.Lessons;
using ShopClass.Data.Orders;
using ShopClass.Data.People;
using ShopClass.Data.Projects;
using ShopClass.Data.Students;
using ShopClass.Data.Tools;

namespace ShopClass.Data.Courses;

/// <summary>A course as stored.</summary>
public sealed class CourseRow
{
    public Guid Id { get; set; }

    public required string OwnerId { get; set; }

    public required string Name { get; set; }

    public bool IsArchived { get; set; }

    public required CourseRules Rules { get; set; }

    /// <summary>Technique notes in the instructor's own words.</summary>
    public IReadOnlyList<TechniqueNote> TechniqueNotes { get; set; } = [];

    /// <summary>Whether a board waits for the instructor's yes before it is sawn.</summary>
    public bool BoardsWaitForYes { get; set; }

    /// <summary>Whether a student's first three cuts are not asked to be timed.</summary>
    public bool FirstCutsUntimed { get; set; }

    public DateTime MadeUtc { get; set; }

    public Guid Version { get; set; }

    public List<ProjectRow> Projects { get; } = [];

    public List<StudentRow> Students { get; } = [];

    public List<SellerRow> Sellers { get; } = [];

    public List<RackRow> Rack { get; } = [];

    public List<LessonRow> Lessons { get; } = [];

    /// <summary>Helpers and stand-ins.</summary>
    public List<PersonRow> People { get; } = [];

    /// <summary>Its stations; null until they have been saved once.</summary>
    public ShopRow? Shop { get; set; }

    /// <summary>How it prints; null until that has been saved once.</summary>
    public PrintDeskRow? Desk { get; set; }

    /// <summary>Its tools; null until they have been saved once.</summary>
    public ToolsRow? Tools { get; set; }

    /// <summary>What it starts from or could; null where nothing was decided and its file had nothing.</summary>
    public StartRow? Start { get; set; }

    internal CourseView ToView(CourseRole? role = CourseRole.Owner) =>
        new(Id, Name, IsArchived, Rules, Version) { Role = role };
}
