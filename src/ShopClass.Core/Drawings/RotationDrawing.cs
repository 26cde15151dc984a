using System.Globalization;
using ShopClass.Core.Lessons;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Drawings;

/// <summary>
/// One lesson as a picture: time along, a row for each student; what stands in a box is where they are. Stations differ by
/// their box and by their words, never by colour alone.
/// </summary>
public static class RotationDrawing
{
    /// <summary>The rotation of lesson <paramref name="lesson"/>, from 0. On an upright frame time runs down.</summary>
    public static Drawing Of(
        LessonRequest request,
        LessonPlan plan,
        int lesson,
        DrawingFrame frame
    ) => Of(request, plan, lesson, frame, request.Students);

    /// <summary>The same of some of the students, where all of them would not stand on a page.</summary>
    public static Drawing Of(
        LessonRequest request,
        LessonPlan plan,
        int lesson,
        DrawingFrame frame,
        IReadOnlyList<StudentWork> of
    )
    {
        var sheet = new RotationSheet(request, plan, lesson, frame, of);
        sheet.Draw();
        return new(
            frame.Width,
            sheet.Height,
            $"Rotation of “{request.Lessons[lesson].Title}”",
            RotationWords.Of(request, plan, lesson, of),
            sheet.Shapes
        );
    }
}

/// <summary>The words of a rotation.</summary>
public static class RotationWords
{
    /// <summary>Minutes after the beginning as hours and minutes: "1:05".</summary>
    public static string At(int minute) =>
        string.Create(CultureInfo.InvariantCulture, $"{minute / 60}:{minute % 60:00}");

    /// <summary>A time of a lesson: by the clock ("18:35") where it has an hour to begin at, else after the beginning.</summary>
    public static string At(Lesson lesson, int minute) =>
        lesson.Start is { } start
            ? start.AddMinutes(minute).ToString("H:mm", CultureInfo.InvariantCulture)
            : At(minute);

    /// <summary>What the times of a lesson are.</summary>
    public static string Times(Lesson lesson) =>
        lesson.Start is null
            ? "times are hours and minutes after the beginning"
            : "times are by the clock";

    /// <summary>Who is where, when, a line for each student.</summary>
    public static string Of(LessonRequest request, LessonPlan plan, int lesson) =>
        Of(request, plan, lesson, request.Students);

    /// <summary>The same of some of the students.</summary>
    public static string Of(
        LessonRequest request,
        LessonPlan plan,
        int lesson,
        IReadOnlyList<StudentWork> of
    )
    {
        var program = plan.Lessons[lesson];
        var spells = Spells.In(request, plan, lesson);
        var lines = new List<string>
        {
            $"{request.Lessons[lesson].Title}, {request.Lessons[lesson].Minutes} minutes; {Times(request.Lessons[lesson])}.",
        };
        lines.AddRange(
            program
                .Showings.Where(s => s.StudentId is null)
                .Select(s =>
                    $"{When(s.Start)} to {When(s.End)}: everybody watches {SkillBook.Of(s.Skill).Name}."
                )
        );
        foreach (var student in of.Where(s => s.Work is not null))
        {
            if (!request.Lessons[lesson].IsAttendedBy(student.StudentId))
            {
                lines.Add($"{student.Name}: absent.");
                continue;
            }

            var own = program
                .Turns.Where(t => t.Turn.StudentId == student.StudentId)
                .Select(t => (t.Start, t.End, StationWords.Place(t.Turn.Station, t.Place)))
                .Concat(
                    program
                        .Showings.Where(s => s.StudentId == student.StudentId)
                        .Select(s =>
                            (s.Start, s.End, $"is shown {SkillBook.Of(s.Skill).Name} again")
                        )
                )
                .Concat(
                    spells
                        .Where(s => s.StudentId == student.StudentId)
                        .Select(s => (s.Start, s.End, "free"))
                )
                .OrderBy(s => s.Start)
                .Select(s => $"{When(s.Start)} to {When(s.End)} {s.Item3}");
            lines.Add($"{student.Name}: {string.Join("; ", own)}.");
        }

        return string.Join('\n', lines);

        string When(int minute) => At(request.Lessons[lesson], minute);
    }
}
