namespace ShopClass.Data.Access;

/// <summary>Who asks. Every store call takes one, and answers as if what the viewer may not see did not exist.</summary>
public abstract record Viewer;

/// <summary>An instructor: sees the courses they own, and nothing else.</summary>
/// <param name="UserId">The key of their account.</param>
public sealed record InstructorViewer(string UserId) : Viewer;

/// <summary>A student: sees the course's rules and projects, and their own boards and plans; may log their own boards.</summary>
/// <param name="StudentId">Who they are.</param>
/// <param name="CourseId">The course they are in.</param>
public sealed record StudentViewer(Guid StudentId, Guid CourseId) : Viewer;
