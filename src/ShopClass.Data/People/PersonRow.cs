using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Lessons;

namespace ShopClass.Data.People;

/// <summary>An account that helps in a course, or stands in for one lesson of it.</summary>
public sealed class PersonRow
{
    public Guid Id { get; set; }

    public Guid CourseId { get; set; }

    public CourseRow? Course { get; set; }

    public required string AccountId { get; set; }

    public CourseRole Role { get; set; }

    /// <summary>The lesson a stand-in takes: the role follows it to another day and goes with it. Null for a helper.</summary>
    public Guid? LessonId { get; set; }

    public LessonRow? Lesson { get; set; }

    public DateTime SinceUtc { get; set; }
}

/// <summary>A one-time code that makes an account somebody in a course.</summary>
public sealed class InvitationRow
{
    public Guid Id { get; set; }

    public Guid CourseId { get; set; }

    public CourseRow? Course { get; set; }

    public CourseRole Role { get; set; }

    public Guid? LessonId { get; set; }

    public LessonRow? Lesson { get; set; }

    public required string CodeHash { get; set; }

    public DateTime UntilUtc { get; set; }
}
