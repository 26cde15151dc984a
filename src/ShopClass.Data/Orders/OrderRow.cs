using ShopClass.Core.Orders;
using ShopClass.Data.Projects;

namespace ShopClass.Data.Orders;

/// <summary>An order as stored: never changed but for what has arrived, only followed by the next number.</summary>
public sealed class OrderRow
{
    public Guid Id { get; set; }

    public Guid ProjectId { get; set; }

    public ProjectRow? Project { get; set; }

    public int Number { get; set; }

    public DateTime MadeUtc { get; set; }

    /// <summary>The order as JSON, gzip.</summary>
    public required byte[] Snapshot { get; set; }

    /// <summary>What has come so far.</summary>
    public IReadOnlyList<Arrived> Arrived { get; set; } = [];

    public Guid Version { get; set; }
}

/// <summary>What goes into a project's kits beside the wood, and how far each kit is.</summary>
public sealed class KitsRow
{
    public Guid ProjectId { get; set; }

    public ProjectRow? Project { get; set; }

    public IReadOnlyList<Supply> Supplies { get; set; } = [];

    public IReadOnlyList<KitMark> Marks { get; set; } = [];

    public Guid Version { get; set; }
}

/// <summary>How a course prints: where its students' pages are, and how its printer lays labels.</summary>
public sealed class PrintDeskRow
{
    public Guid CourseId { get; set; }

    public Courses.CourseRow? Course { get; set; }

    public string Address { get; set; } = "";

    public required LabelSetting Labels { get; set; }

    public Guid Version { get; set; }
}
