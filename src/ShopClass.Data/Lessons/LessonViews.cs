using ShopClass.Core.Lessons;

namespace ShopClass.Data.Lessons;

/// <summary>A stored lesson; students are named by their keys.</summary>
public sealed record LessonView(Guid Id, Guid CourseId, Lesson Lesson, Guid Version);

/// <summary>A course's shop. <see cref="Version"/> is null until it has been saved once: then these are the usual counts.</summary>
public sealed record ShopView(
    StationCounts Stations,
    IReadOnlyList<SkillMinutes> Demonstrations,
    Guid? Version
)
{
    /// <summary>What a course starts with.</summary>
    public static ShopView Usual { get; } = new(StationCounts.Usual, [], null);
}

/// <summary>A course's shop and its lessons, by date.</summary>
public sealed record LessonsView(ShopView Shop, IReadOnlyList<LessonView> Lessons);

/// <summary>What a plan of lessons would be made for now.</summary>
/// <param name="Request">The request.</param>
/// <param name="Notes">What an instructor should know about it, in sentences: plans that are out of date or incomplete.</param>
public sealed record LessonBasis(LessonRequest Request, IReadOnlyList<string> Notes);

/// <summary>A stored plan of lessons: a snapshot that never changes.</summary>
/// <param name="Id">Its key.</param>
/// <param name="CourseId">The course.</param>
/// <param name="ProjectId">The project the class builds in it.</param>
/// <param name="Number">The version, from 1, for this course and project.</param>
/// <param name="MadeUtc">When it was made.</param>
/// <param name="Request">What it was made for.</param>
/// <param name="Plan">The plan.</param>
/// <param name="IsOutOfDate">Whether lessons, stations or the students' steps have changed since.</param>
public sealed record StoredLessonPlan(
    Guid Id,
    Guid CourseId,
    Guid ProjectId,
    int Number,
    DateTime MadeUtc,
    LessonRequest Request,
    LessonPlan Plan,
    bool IsOutOfDate
);
