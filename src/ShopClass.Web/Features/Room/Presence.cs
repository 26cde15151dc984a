using System.Collections.Concurrent;
using ShopClass.Data.Access;

namespace ShopClass.Web.Features.Room;

/// <summary>When each student's phone last asked for anything. In memory alone: it is forgotten when the app stops.</summary>
public sealed class Presence(TimeProvider clock, ClassNews news)
{
    /// <summary>Somebody whose phone asked within this time counts as here; a phone in a pocket asks for nothing.</summary>
    public static readonly TimeSpan CountsAsHere = TimeSpan.FromMinutes(45);

    private readonly ConcurrentDictionary<Guid, DateTime> seen = new();

    public void Saw(StudentViewer student)
    {
        var now = clock.GetUtcNow().UtcDateTime;
        var wasHere = IsHere(student.StudentId);
        seen[student.StudentId] = now;
        if (!wasHere)
            news.Tell(new(NewsKind.Presence, student.CourseId, student.StudentId));
    }

    public bool IsHere(Guid studentId) =>
        seen.TryGetValue(studentId, out var last)
        && clock.GetUtcNow().UtcDateTime - last < CountsAsHere;
}
