using ShopClass.Core.Paces;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Lessons;

/// <summary>Everything a plan of lessons depends on.</summary>
public sealed record LessonRequest
{
    /// <summary>Stations of the shop, for lessons that have none of their own.</summary>
    public required StationCounts Shop { get; init; }

    /// <summary>The lessons, in order of their dates.</summary>
    public required IReadOnlyList<Lesson> Lessons { get; init; }

    /// <summary>Each student with their work.</summary>
    public required IReadOnlyList<StudentWork> Students { get; init; }

    /// <summary>Minutes of each demonstration; skills left out take <see cref="SkillBook"/>'s.</summary>
    public IReadOnlyList<SkillMinutes> Demonstrations { get; init; } = [];

    /// <summary>The pace the steps' times are by; null when nothing was timed: then they are the table's.</summary>
    public CoursePace? Pace { get; init; }

    /// <summary>Stations in a lesson.</summary>
    public StationCounts StationsIn(int lesson) => Lessons[lesson].Stations ?? Shop;

    /// <summary>Minutes the demonstration of a skill takes.</summary>
    public int MinutesToShow(Skill skill) =>
        Demonstrations.FirstOrDefault(d => d.Skill == skill)?.Minutes
        ?? SkillBook.Of(skill).Minutes;
}

/// <summary>How long a demonstration takes.</summary>
/// <param name="Skill">What is shown.</param>
/// <param name="Minutes">Minutes, from 0.</param>
public sealed record SkillMinutes(Skill Skill, int Minutes);

/// <summary>A student and what they have to do.</summary>
/// <param name="StudentId">Key of the student.</param>
/// <param name="Name">The name shown.</param>
/// <param name="Board">What they work on, in words: the board's name.</param>
/// <param name="Work">Their steps; null when there are none yet.</param>
/// <param name="WithoutWork">Why there are none, in a sentence; empty when there are.</param>
public sealed record StudentWork(
    string StudentId,
    string Name,
    string Board,
    WorkSequence? Work,
    string WithoutWork = ""
)
{
    /// <summary>Their own pace against the course's, as their steps' times have it; null when they timed nothing.</summary>
    public PaceFactor? Pace { get; init; }

    /// <summary>The step of this number.</summary>
    public Step Step(int number) => Work!.Steps[number - 1];
}
