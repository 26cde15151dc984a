using ShopClass.Core.Lessons;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Courses;

namespace ShopClass.Data.Lessons;

/// <summary>A lesson as stored.</summary>
public sealed class LessonRow
{
    public Guid Id { get; set; }

    public Guid CourseId { get; set; }

    public CourseRow? Course { get; set; }

    public required string Title { get; set; }

    public DateOnly Date { get; set; }

    /// <summary>The hour it begins at; null where that is not known.</summary>
    public TimeOnly? Start { get; set; }

    public int Minutes { get; set; }

    /// <summary>Stations of its own; all four are there or none is.</summary>
    public int? SawBenches { get; set; }

    public int? Vises { get; set; }

    public int? BenchHooks { get; set; }

    public int? Sharpening { get; set; }

    public IReadOnlyList<Skill> Shows { get; set; } = [];

    public IReadOnlyList<Guid> Absent { get; set; } = [];

    public Guid Version { get; set; }

    internal LessonView ToView() => new(Id, CourseId, ToLesson(), Version);

    internal Lesson ToLesson() =>
        new()
        {
            Title = Title,
            Date = Date,
            Start = Start,
            Minutes = Minutes,
            Stations =
                SawBenches is { } saw && Vises is { } vises && BenchHooks is { } hooks
                    ? new(saw, vises, hooks, Sharpening ?? 0)
                    : null,
            Shows = Shows,
            Absent = [.. Absent.Select(id => id.ToString())],
        };

    internal void Take(Lesson lesson)
    {
        (Title, Date, Start) = (lesson.Title, lesson.Date, lesson.Start);
        Minutes = lesson.Minutes;
        (SawBenches, Vises) = (lesson.Stations?.SawBenches, lesson.Stations?.Vises);
        (BenchHooks, Sharpening) = (lesson.Stations?.BenchHooks, lesson.Stations?.Sharpening);
        Shows = lesson.Shows;
        Absent = [.. lesson.Absent.Select(Guid.Parse)];
        Version = Guid.NewGuid();
    }
}

/// <summary>A course's shop as stored: its stations, and how long its demonstrations take.</summary>
public sealed class ShopRow
{
    public Guid CourseId { get; set; }

    public CourseRow? Course { get; set; }

    public int SawBenches { get; set; }

    public int Vises { get; set; }

    public int BenchHooks { get; set; }

    public int Sharpening { get; set; }

    public IReadOnlyList<SkillMinutes> Demonstrations { get; set; } = [];

    public Guid Version { get; set; }

    internal ShopView ToView() =>
        new(new(SawBenches, Vises, BenchHooks, Sharpening), Demonstrations, Version);

    internal void Take(StationCounts stations, IReadOnlyList<SkillMinutes> demonstrations)
    {
        (SawBenches, Vises) = (stations.SawBenches, stations.Vises);
        (BenchHooks, Sharpening) = (stations.BenchHooks, stations.Sharpening);
        Demonstrations = demonstrations;
        Version = Guid.NewGuid();
    }
}

/// <summary>A plan of lessons as stored: never changed, only followed by the next number.</summary>
public sealed class LessonPlanRow
{
    public Guid Id { get; set; }

    public Guid CourseId { get; set; }

    public CourseRow? Course { get; set; }

    public Guid ProjectId { get; set; }

    public int Number { get; set; }

    public DateTime MadeUtc { get; set; }

    /// <summary>Fingerprint of the lessons, stations and steps it was made for.</summary>
    public required string RequestFingerprint { get; set; }

    /// <summary>Fingerprint of the plan.</summary>
    public required string PlanFingerprint { get; set; }

    /// <summary>Request and plan as JSON, gzip.</summary>
    public required byte[] Snapshot { get; set; }
}
