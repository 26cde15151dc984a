using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Lessons;

/// <summary>What is wrong with lessons and stations as entered, and what stands in the way of a plan.</summary>
public static class LessonChecks
{
    private const int MostToShow = 120;

    /// <summary>Problems with one lesson; the field is a property's name.</summary>
    public static IReadOnlyList<(string Field, string Sentence)> ProblemsIn(Lesson lesson)
    {
        var problems = new List<(string, string)>();
        if (lesson.Minutes is < Lesson.FewestMinutes or > Lesson.MostMinutes)
            problems.Add(
                (
                    nameof(Lesson.Minutes),
                    $"A lesson has from {Lesson.FewestMinutes} to {Lesson.MostMinutes} minutes; this one has {lesson.Minutes}."
                )
            );
        if (lesson.Stations is { } stations)
            problems.AddRange(ProblemsIn(stations));
        return problems;
    }

    /// <summary>Problems with counts of stations; the field is a property's name.</summary>
    public static IReadOnlyList<(string Field, string Sentence)> ProblemsIn(
        StationCounts stations
    ) =>
        [
            .. from station in StationCounts.Counted
            let count = stations.PlacesAt(station)
            where count is < 0 or > StationCounts.Most
            select (
                FieldOf(station),
                $"Count {StationWords.Several(station)} from 0 to {StationCounts.Most}; this says {count}."
            ),
        ];

    /// <summary>Problems with the minutes of demonstrations; the field is the skill's name.</summary>
    public static IReadOnlyList<(string Field, string Sentence)> ProblemsIn(
        IReadOnlyList<SkillMinutes> demonstrations
    ) =>
        [
            .. from d in demonstrations
            where d.Minutes is < 0 or > MostToShow
            select (
                d.Skill.ToString(),
                $"A demonstration takes from 0 to {MostToShow} minutes; this says {d.Minutes}."
            ),
        ];

    /// <summary>The property of <see cref="StationCounts"/> that counts a station.</summary>
    public static string FieldOf(Station station) =>
        station switch
        {
            Station.SawBench => nameof(StationCounts.SawBenches),
            Station.Vise => nameof(StationCounts.Vises),
            Station.BenchHook => nameof(StationCounts.BenchHooks),
            _ => nameof(StationCounts.Sharpening),
        };

    /// <summary>
    /// What stands in the way of a whole plan, in sentences: nothing to plan with, students without work, stations the
    /// work asks for and no lesson has, steps no lesson is long enough for. The rest is planned all the same.
    /// </summary>
    public static IReadOnlyList<string> Obstacles(LessonRequest request) =>
        [
            .. WithoutLessons(request),
            .. request
                .Lessons.Where(l => l.Minutes < Lesson.FewestMinutes)
                .Select(l => $"“{l.Title}” has {l.Minutes} minutes, so nothing is planned for it."),
            .. request.Students.Where(s => s.Work is null).Select(s => s.WithoutWork),
            .. NeverThere(request),
            .. MissingStations(request),
            .. TooLong(request),
        ];

    private static IEnumerable<string> WithoutLessons(LessonRequest request)
    {
        if (request.Lessons.Count == 0)
            yield return "There are no lessons yet. Add the first.";
    }

    private static IEnumerable<string> NeverThere(LessonRequest request) =>
        request
            .Students.Where(s =>
                s.Work is not null
                && request.Lessons.Count > 0
                && request.Lessons.All(l => !l.IsAttendedBy(s.StudentId))
            )
            .Select(s => $"{s.Name} is marked absent in every lesson.");

    private static IEnumerable<string> MissingStations(LessonRequest request)
    {
        if (request.Lessons.Count == 0)
            yield break;
        foreach (var station in StationCounts.Counted)
        {
            var steps = request.Students.Sum(s =>
                s.Work?.Steps.Count(x => x.Station == station) ?? 0
            );
            if (
                steps > 0
                && Enumerable
                    .Range(0, request.Lessons.Count)
                    .All(l => request.StationsIn(l).PlacesAt(station) is 0)
            )
                yield return $"There is no {StationWords.One(station)} in the shop, and {StationWords.Steps(steps)} done at one. "
                    + "They and what follows them fall off the end.";
        }
    }

    private static IEnumerable<string> TooLong(LessonRequest request)
    {
        if (request.Lessons.Count == 0)
            yield break;
        var longest = request.Lessons.Max(l => l.Minutes);
        var titles = TurnMaker
            .Of(request.Students)
            .Where(t => t.Turn.Minutes > longest)
            .Select(t =>
                (request.Students.First(s => s.StudentId == t.Turn.StudentId), t.Turn.Minutes, t)
            );
        foreach (var (student, minutes, turn) in titles)
            yield return $"{student.Name}: “{student.Step(turn.Turn.Steps[0]).Title}” takes about {minutes} minutes in one go, and "
                + $"the longest lesson has {longest}.";
    }
}
