using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Lessons.Reviewing;

/// <summary>A plan of lessons laid out in calendar minutes.</summary>
internal sealed class Days
{
    public Days(LessonRequest request, LessonPlan plan)
    {
        (Request, Plan) = (request, plan);
        var begins = new long[request.Lessons.Count];
        var earlierThatDay = 0;
        for (var l = 0; l < begins.Length; l++)
        {
            var isSameDay = l > 0 && request.Lessons[l].Date == request.Lessons[l - 1].Date;
            earlierThatDay = isSameDay ? earlierThatDay + request.Lessons[l - 1].Minutes : 0;
            begins[l] =
                (request.Lessons[l].Date.DayNumber - request.Lessons[0].Date.DayNumber) * 1440L
                + earlierThatDay;
        }

        Doings =
        [
            .. plan.Lessons.SelectMany(
                (program, l) =>
                    program.Turns.Select(t => new Doing(
                        l,
                        t,
                        begins[l] + t.Start,
                        begins[l] + t.End
                    ))
            ),
        ];
        Begins = begins;
    }

    public LessonRequest Request { get; }

    public LessonPlan Plan { get; }

    /// <summary>Beginnings of the lessons, calendar minutes.</summary>
    public IReadOnlyList<long> Begins { get; }

    /// <summary>Every turn placed.</summary>
    public IReadOnlyList<Doing> Doings { get; }

    /// <summary>Students with work.</summary>
    public IEnumerable<StudentWork> Working => Request.Students.Where(s => s.Work is not null);

    /// <summary>What a student does, in the order of time.</summary>
    public IReadOnlyList<Doing> Of(string student) =>
        [.. Doings.Where(d => d.Placed.Turn.StudentId == student).OrderBy(d => d.Begins)];

    /// <summary>A lesson's name for a finding.</summary>
    public static string Name(int lesson) => $"lesson {lesson + 1}";

    /// <summary>A student's name for a finding.</summary>
    public string Name(string student) =>
        Request.Students.FirstOrDefault(s => s.StudentId == student)?.Name ?? "a stranger";

    /// <summary>A step's title for a finding.</summary>
    public static string Name(StudentWork student, Step step) =>
        $"{student.Name}, step {step.Number}";
}

/// <summary>A placed turn in calendar minutes.</summary>
internal sealed record Doing(int Lesson, PlacedTurn Placed, long Begins, long Ends);
