using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Lessons;

/// <summary>One meeting of the class.</summary>
public sealed record Lesson
{
    /// <summary>The fewest minutes that are a lesson.</summary>
    public const int FewestMinutes = 10;

    /// <summary>The most minutes: a day at the bench.</summary>
    public const int MostMinutes = 600;

    /// <summary>What it is called: "First evening".</summary>
    public required string Title { get; init; }

    /// <summary>Its day.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>When it begins, where that is known: times are told by the clock then, and else counted from the beginning.</summary>
    public TimeOnly? Start { get; init; }

    /// <summary>How long it is, minutes; from <see cref="FewestMinutes"/> to <see cref="MostMinutes"/>.</summary>
    public required int Minutes { get; init; }

    /// <summary>Stations there; null takes the shop's.</summary>
    public StationCounts? Stations { get; init; }

    /// <summary>
    /// Skills the instructor wants to show in this lesson, in order. Skills named in no lesson are shown where the planner
    /// finds them needed first.
    /// </summary>
    public IReadOnlyList<Skill> Shows { get; init; } = [];

    /// <summary>Students who will not be there.</summary>
    public IReadOnlyList<string> Absent { get; init; } = [];

    /// <summary>Whether a student comes.</summary>
    public bool IsAttendedBy(string studentId) => !Absent.Contains(studentId);
}
