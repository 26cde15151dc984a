using ShopClass.Data.Courses;
using ShopClass.Data.Students;

namespace ShopClass.Data.Joining;

/// <summary>A course's door as stored: its class code and on what terms it lets in.</summary>
public sealed class DoorRow
{
    public Guid CourseId { get; set; }

    public CourseRow? Course { get; set; }

    /// <summary>In the clear: the instructor reads it out. By itself it only lets somebody ask.</summary>
    public required string Code { get; set; }

    public DateTime CodeUntilUtc { get; set; }

    public bool IsOpen { get; set; }

    /// <summary>Whether a listed name nobody has taken yet comes in without being asked about.</summary>
    public bool ListedComeIn { get; set; }
}

/// <summary>A student's phone, or one that waits to be let in.</summary>
public sealed class DeviceRow
{
    public Guid Id { get; set; }

    public Guid CourseId { get; set; }

    public CourseRow? Course { get; set; }

    /// <summary>Null while it waits.</summary>
    public Guid? StudentId { get; set; }

    public StudentRow? Student { get; set; }

    /// <summary>The name given at the door.</summary>
    public required string AskedName { get; set; }

    /// <summary>SHA-256 of the token in its cookie.</summary>
    public required string TokenHash { get; set; }

    /// <summary>"Android phone", "iPhone or iPad": enough to tell two apart.</summary>
    public required string Kind { get; set; }

    public DateTime AskedUtc { get; set; }

    public DateTime? AdmittedUtc { get; set; }

    /// <summary>When it was last used, to the day.</summary>
    public DateTime SeenUtc { get; set; }
}

/// <summary>A one-time code that lets a new phone in as one student.</summary>
public sealed class StudentCodeRow
{
    public Guid StudentId { get; set; }

    public StudentRow? Student { get; set; }

    public required string CodeHash { get; set; }

    public DateTime UntilUtc { get; set; }
}
