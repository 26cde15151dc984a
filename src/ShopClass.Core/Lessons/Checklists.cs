using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Lessons;

/// <summary>One line to tick off.</summary>
/// <param name="Number">The step's number.</param>
/// <param name="Title">The step; with its share, where it is done in several.</param>
/// <param name="Start">Minutes after the lesson begins.</param>
/// <param name="End">When it is over.</param>
/// <param name="Where">Station and place.</param>
public sealed record CheckLine(int Number, string Title, int Start, int End, string Where);

/// <summary>What a student does in one lesson.</summary>
/// <param name="Lesson">Which lesson, from 0.</param>
/// <param name="IsAbsent">Whether they are not there.</param>
/// <param name="Lines">Their steps, in order.</param>
public sealed record StudentLesson(int Lesson, bool IsAbsent, IReadOnlyList<CheckLine> Lines);

/// <summary>A line of the sheet on the wall.</summary>
/// <param name="Student">The name shown.</param>
/// <param name="Board">What they work on.</param>
/// <param name="Next">The next steps, at most three, each with its station.</param>
/// <param name="Station">Where the first of them is done; empty when there is none.</param>
public sealed record WallLine(
    string Student,
    string Board,
    IReadOnlyList<string> Next,
    string Station
);

/// <summary>A skill on the instructor's list, and when each student first does it in this lesson.</summary>
/// <param name="Skill">The skill.</param>
/// <param name="First">Students with the minute they begin, by time.</param>
public sealed record CheckPoint(SkillEntry Skill, IReadOnlyList<(string Student, int Start)> First);

/// <summary>A plan of lessons as lists to tick off.</summary>
public static class Checklists
{
    private const int OnTheWall = 3;

    /// <summary>A student's steps, lesson by lesson.</summary>
    public static IReadOnlyList<StudentLesson> For(
        LessonRequest request,
        LessonPlan plan,
        StudentWork student
    ) =>
        [
            .. plan.Lessons.Select(
                (program, l) =>
                    new StudentLesson(
                        l,
                        !request.Lessons[l].IsAttendedBy(student.StudentId),
                        [
                            .. program
                                .Turns.Where(t => t.Turn.StudentId == student.StudentId)
                                .OrderBy(t => t.Start)
                                .SelectMany(t => Lines(student, t)),
                        ]
                    )
            ),
        ];

    /// <summary>What of a student's steps falls off the end, by title.</summary>
    public static IReadOnlyList<string> LeftOf(LessonPlan plan, StudentWork student) =>
        [
            .. plan
                .Left.Where(t => t.StudentId == student.StudentId)
                .SelectMany(t => Titles(student, t)),
        ];

    /// <summary>
    /// The sheet for the wall at the beginning of a lesson. Whoever has ticked anything goes on after what is ticked, also
    /// where that is behind the plan or ahead of it; the others go by the plan.
    /// </summary>
    /// <param name="request">What the plan was made for.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="lesson">The lesson, from 0.</param>
    /// <param name="done">Ids of the steps that are done, by student; who is not there has ticked nothing.</param>
    public static IReadOnlyList<WallLine> Wall(
        LessonRequest request,
        LessonPlan plan,
        int lesson,
        IReadOnlyDictionary<string, IReadOnlySet<string>>? done = null
    ) =>
        [
            .. request
                .Students.Where(s => s.Work is { Steps.Count: > 0 })
                .Select(s =>
                {
                    var ticked = done?.GetValueOrDefault(s.StudentId);
                    var next = For(request, plan, s)
                        .Skip(ticked is null ? lesson : 0)
                        .SelectMany(l => l.Lines)
                        .Where(l => ticked?.Contains(s.Step(l.Number).Id) is not true)
                        .DistinctBy(l => ticked is null ? (l.Number, l.Title) : (l.Number, ""))
                        .Take(OnTheWall)
                        .ToList();
                    return new WallLine(
                        s.Name,
                        s.Board,
                        [.. next.Select(n => $"{n.Number}. {n.Title}")],
                        next.Count == 0 ? "" : next[0].Where
                    );
                }),
        ];

    /// <summary>Skills used in a lesson, in the order they are first used, with whom to look at when.</summary>
    public static IReadOnlyList<CheckPoint> CheckPoints(
        LessonRequest request,
        LessonPlan plan,
        int lesson
    ) =>
        [
            .. from turn in FirstTurns(plan, lesson)
            group turn by turn.Turn.Skill into skill
            orderby skill.Min(t => t.Start), skill.Key
            select new CheckPoint(
                SkillBook.Of(skill.Key),
                [
                    .. skill
                        .OrderBy(t => t.Start)
                        .Select(t =>
                            (
                                request.Students.First(s => s.StudentId == t.Turn.StudentId).Name,
                                t.Start
                            )
                        ),
                ]
            ),
        ];

    // Of every student and skill the turns of this lesson that none comes before.
    private static IEnumerable<PlacedTurn> FirstTurns(LessonPlan plan, int lesson)
    {
        var known = plan
            .Lessons.Take(lesson)
            .SelectMany(l => l.Turns)
            .Select(t => (t.Turn.StudentId, t.Turn.Skill))
            .ToHashSet();
        return plan.Lessons[lesson]
            .Turns.Where(t => !known.Contains((t.Turn.StudentId, t.Turn.Skill)))
            .GroupBy(t => (t.Turn.StudentId, t.Turn.Skill))
            .SelectMany(g => g.Where(t => t.Start == g.Min(o => o.Start)));
    }

    /// <summary>The steps of a turn as lines, each with its share of the turn's minutes.</summary>
    private static IEnumerable<CheckLine> Lines(StudentWork student, PlacedTurn placed)
    {
        var at = placed.Start;
        var titles = Titles(student, placed.Turn);
        for (var i = 0; i < titles.Count; i++)
        {
            var number = placed.Turn.Steps[i];
            var end =
                i + 1 == titles.Count
                    ? placed.End
                    : Math.Min(
                        placed.End,
                        at + TurnMaker.MinutesOf(student.Step(number).Time.Busy)
                    );
            yield return new(
                number,
                titles[i],
                at,
                end,
                StationWords.Place(placed.Turn.Station, placed.Place)
            );
            at = end;
        }
    }

    private static IReadOnlyList<string> Titles(StudentWork student, Turn turn)
    {
        var share = turn.Parts > 1 ? $" (part {turn.Part} of {turn.Parts})" : "";
        return [.. turn.Steps.Select(n => student.Step(n).Title + share)];
    }
}
