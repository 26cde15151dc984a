using System.Globalization;
using ShopClass.Core.Lessons;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Students;
using ShopClass.Web.Features.Shell;

namespace ShopClass.Web.Features.Lessons;

/// <summary>The short sentences about lessons and their plan.</summary>
public static class LessonLines
{
    public static string Date(DateOnly date) =>
        date.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>The day, and the hour where it is known.</summary>
    public static string When(Lesson lesson) =>
        lesson.Start is { } start
            ? $"{Date(lesson.Date)}, {start.ToString("H:mm", CultureInfo.InvariantCulture)}"
            : Date(lesson.Date);

    public static string Skills(IEnumerable<Skill> skills) =>
        string.Join(", ", skills.Select(s => SkillBook.Of(s).Name));

    public static string Absent(Lesson lesson, IReadOnlyList<StudentView> students) =>
        string.Join(
            ", ",
            students.Where(s => !lesson.IsAttendedBy(s.Id.ToString())).Select(s => s.Shown)
        );

    public static string Stations(StationCounts stations) =>
        string.Join(
            ", ",
            StationCounts.Counted.Select(s => StationWords.Count(stations.PlacesAt(s) ?? 0, s))
        );

    /// <summary>How good a plan is, first sentence first.</summary>
    public static IReadOnlyList<string> Score(LessonPlan plan)
    {
        var score = plan.Score;
        var first = score.EverybodyFinishes
            ? "Everybody with a plan finishes."
            : $"{score.Left.Count("minute")} of work fall off the end. No plan can leave fewer than {plan.LeastLeft}.";
        return
        [
            first,
            score.Waiting == 0
                ? "Nobody waits."
                : $"{score.Waiting.Count("minute")} of waiting, over all students and lessons.",
            $"{score.Spread.Count("minute")} of class time between the first and the last to be done.",
        ];
    }

    /// <summary>A lesson of a plan in a line: what is shown, how many are at work.</summary>
    public static string InALine(LessonRequest request, LessonPlan plan, int lesson)
    {
        var program = plan.Lessons[lesson];
        var shown = program.Showings.Where(s => s.StudentId is null).Select(s => s.Skill).ToList();
        var working = program
            .Turns.Select(t => t.Turn.StudentId)
            .Distinct(StringComparer.Ordinal)
            .Count();
        var there = request.Students.Count(s =>
            s.Work is not null && request.Lessons[lesson].IsAttendedBy(s.StudentId)
        );
        return (shown.Count > 0 ? $"Shown: {Skills(shown)}. " : "")
            + (
                working == 0
                    ? "Nobody has work planned."
                    : $"{working} of {there} have work planned."
            );
    }
}
