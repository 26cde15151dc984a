using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Data.Access;

namespace ShopClass.Data.Courses;

/// <summary>A course in a list.</summary>
public sealed record CourseSummary(
    Guid Id,
    string Name,
    bool IsArchived,
    int Students,
    int Projects
);

/// <summary>A course with its settings. <see cref="Version"/> changes with every write.</summary>
public sealed record CourseView(
    Guid Id,
    string Name,
    bool IsArchived,
    CourseRules Rules,
    Guid Version
);

/// <summary>Courses: listing, creating, renaming, archiving, settings.</summary>
public sealed class CourseStore
{
    /// <summary>The viewer's courses, by name; for a student, their one course.</summary>
    public Task<IReadOnlyList<CourseSummary>> ListAsync(
        Viewer viewer,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    /// <summary>One course, or null when it is not the viewer's.</summary>
    public Task<CourseView?> FindAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    /// <summary>A new course with the unit's default rules. Refuses an empty or over-long name (field "Name").</summary>
    public Task<Outcome<CourseView>> CreateAsync(
        Viewer viewer,
        string name,
        UnitSystem unit,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    /// <summary>Gives it another name.</summary>
    public Task<Outcome<CourseView>> RenameAsync(
        Viewer viewer,
        Guid courseId,
        string name,
        Guid version,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    /// <summary>Puts it away, or takes it out again. An archived course can be read and not changed.</summary>
    public Task<Outcome<CourseView>> ArchiveAsync(
        Viewer viewer,
        Guid courseId,
        bool archived,
        Guid version,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    /// <summary>Saves its settings; problems carry the keys of <see cref="RuleBook"/>.</summary>
    public Task<Outcome<CourseView>> SaveRulesAsync(
        Viewer viewer,
        Guid courseId,
        CourseRules rules,
        Guid version,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();
}
