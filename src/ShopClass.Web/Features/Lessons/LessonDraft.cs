using System.Globalization;
using ShopClass.Core.Lessons;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Access;
using ShopClass.Data.Lessons;

namespace ShopClass.Web.Features.Lessons;

/// <summary>A lesson as typed; what cannot be read stays as it was typed, with a sentence at its field.</summary>
public sealed class LessonDraft
{
    private readonly Dictionary<string, string> _problems = new(StringComparer.Ordinal);
    private readonly List<Skill> _shows;
    private readonly HashSet<string> _absent;

    private LessonDraft(Lesson lesson, StationCounts shop)
    {
        Title = lesson.Title;
        Date = lesson.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        Start = lesson.Start?.ToString("HH:mm", CultureInfo.InvariantCulture) ?? "";
        Minutes = StationsDraft.Text(lesson.Minutes);
        HasOwnStations = lesson.Stations is not null;
        Stations = new(lesson.Stations ?? shop);
        _shows = [.. lesson.Shows];
        _absent = new(lesson.Absent, StringComparer.Ordinal);
    }

    /// <summary>The stored lesson it changes; null for a new one.</summary>
    public LessonView? Stored { get; private init; }

    public string Title { get; set; }

    public string Date { get; set; }

    /// <summary>When it begins; empty where that is not known.</summary>
    public string Start { get; set; }

    public string Minutes { get; set; }

    public bool HasOwnStations { get; set; }

    public StationsDraft Stations { get; }

    public IReadOnlyList<Skill> Shows => _shows;

    /// <summary>A new lesson: a week after the last, at the same hour and as long as it was.</summary>
    public static LessonDraft New(LessonsView lessons, DateOnly today)
    {
        var last = lessons.Lessons.Count == 0 ? null : lessons.Lessons[^1].Lesson;
        return new(
            new()
            {
                Title = $"Lesson {lessons.Lessons.Count + 1}",
                Date = last?.Date.AddDays(7) ?? today,
                Start = last?.Start,
                Minutes = last?.Minutes ?? 120,
            },
            lessons.Shop.Stations
        );
    }

    public static LessonDraft Of(LessonView lesson, StationCounts shop) =>
        new(lesson.Lesson, shop) { Stored = lesson };

    public bool IsAbsent(Guid student) => _absent.Contains(student.ToString());

    public void SetAbsent(Guid student, bool isAbsent)
    {
        if (isAbsent)
            _absent.Add(student.ToString());
        else
            _absent.Remove(student.ToString());
    }

    public bool IsShown(Skill skill) => _shows.Contains(skill);

    public void SetShown(Skill skill, bool isShown)
    {
        _shows.Remove(skill);
        if (isShown)
            _shows.Add(skill);
    }

    public string? ProblemWith(string field) => _problems.GetValueOrDefault(field);

    public void Show(IReadOnlyList<FieldProblem> problems)
    {
        Stations.Show(problems.Select(p => (p.Field, p.Sentence)));
        foreach (var problem in problems)
            _problems[problem.Field] = problem.Sentence;
    }

    /// <summary>The lesson, or null while a field cannot be read.</summary>
    public Lesson? ToLesson()
    {
        _problems.Clear();
        var isDate = DateOnly.TryParse(Date, CultureInfo.InvariantCulture, out var date);
        if (!isDate)
            _problems[nameof(Lesson.Date)] = "Choose the day of the lesson.";
        TimeOnly? start = TimeOnly.TryParse(Start, CultureInfo.InvariantCulture, out var at)
            ? at
            : null;
        var isStart = start is not null || Start.Trim().Length == 0;
        if (!isStart)
            _problems[nameof(Lesson.Start)] =
                $"“{Start}” is no time of day. Type it as 18:30, or leave it empty.";
        var isMinutes = StationsDraft.IsCount(Minutes, out var minutes);
        if (!isMinutes)
            _problems[nameof(Lesson.Minutes)] =
                $"“{Minutes}” is no number of minutes. Type a whole number, such as 120.";
        var stations = HasOwnStations ? Stations.ToCounts() : null;
        if (!isDate || !isStart || !isMinutes || HasOwnStations && stations is null)
            return null;
        return new()
        {
            Title = Title,
            Date = date,
            Start = start,
            Minutes = minutes,
            Stations = stations,
            Shows = [.. _shows],
            Absent = [.. _absent.Order(StringComparer.Ordinal)],
        };
    }
}
