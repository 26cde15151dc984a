using System.Globalization;
using ShopClass.Core.Lessons;

namespace ShopClass.Core.Tools;

/// <summary>A step done with a saw.</summary>
/// <param name="Saws">The saws any of which it is done with.</param>
/// <param name="Seconds">Seconds of sawing the step is reckoned with.</param>
/// <param name="DoneUtc">When it was said to be done.</param>
public sealed record SawnStep(IReadOnlyList<string> Saws, int Seconds, DateTime DoneUtc);

/// <summary>Sawing that a coming lesson holds.</summary>
/// <param name="Title">The lesson.</param>
/// <param name="Date">Its day.</param>
/// <param name="Saws">The saws any of which it is done with.</param>
/// <param name="Seconds">Seconds of sawing, of all students together.</param>
public sealed record SawingAhead(
    string Title,
    DateOnly Date,
    IReadOnlyList<string> Saws,
    int Seconds
);

/// <summary>How near a saw is to being sharpened.</summary>
/// <param name="Tool">The saws.</param>
/// <param name="Minutes">Minutes each has sawn since it was sharpened, all of its kind used alike.</param>
/// <param name="Limit">After how many it is sharpened.</param>
/// <param name="DueIn">The lesson in which that is reached; null when it is reached already, or not within the lessons planned.</param>
/// <param name="MinutesAhead">Minutes each will have sawn more after the lessons planned.</param>
public sealed record SawState(
    ShopTool Tool,
    int Minutes,
    int Limit,
    SawingAhead? DueIn,
    int MinutesAhead
)
{
    /// <summary>Whether it is due now.</summary>
    public bool IsDue => Minutes >= Limit;

    /// <summary>How it stands, in a sentence.</summary>
    public string Sentence =>
        IsDue ? $"Sharpen now: {Minutes} minutes of sawing, {Limit} are the setting."
        : DueIn is { } lesson
            ? $"Due in “{lesson.Title}” on {lesson.Date.ToString("d MMM", CultureInfo.InvariantCulture)}: sharpen before it. {Minutes} of {Limit} minutes so far."
        : MinutesAhead > 0
            ? $"{Minutes} of {Limit} minutes; the lessons planned add about {MinutesAhead}."
        : $"{Minutes} of {Limit} minutes; no lesson planned saws with it.";
}

/// <summary>Minutes of sawing since saws were last sharpened, from what was logged and from the lessons planned.</summary>
public static class Sharpening
{
    /// <summary>Every saw of the shop. Nothing here is a clock: what is ahead is given.</summary>
    /// <param name="chest">The shop's tools.</param>
    /// <param name="logged">Steps said to be done.</param>
    /// <param name="ahead">What coming lessons hold, in their order.</param>
    public static IReadOnlyList<SawState> Of(
        ToolChest chest,
        IReadOnlyList<SawnStep> logged,
        IReadOnlyList<SawingAhead> ahead
    ) =>
        [
            .. chest
                .Tools.Where(t => t.Count > 0 && ToolBook.Find(t.Kind) is { IsSaw: true })
                .Select(t => StateOf(chest, t, logged, ahead)),
        ];

    /// <summary>The sawing lessons hold that is still to be done.</summary>
    /// <param name="request">The lessons and the students' steps.</param>
    /// <param name="plan">Who does what when.</param>
    /// <param name="today">Lessons before it are over.</param>
    /// <param name="isDone">Whether a student has done a step already: student, step.</param>
    public static IReadOnlyList<SawingAhead> Ahead(
        LessonRequest request,
        LessonPlan plan,
        DateOnly today,
        Func<string, string, bool> isDone
    )
    {
        var students = request.Students.ToDictionary(s => s.StudentId, StringComparer.Ordinal);
        return
        [
            .. request
                .Lessons.Index()
                .Where(l => l.Item.Date >= today)
                .SelectMany(l =>
                    from turn in plan.Lessons[l.Index].Turns
                    from number in turn.Turn.Steps
                    let step = students[turn.Turn.StudentId].Step(number)
                    let saws = ToolBook.SawsOf(step)
                    where saws.Count > 0 && !isDone(turn.Turn.StudentId, step.Id)
                    group step.Time.Work by string.Join("/", saws) into saw
                    select new SawingAhead(l.Item.Title, l.Item.Date, saw.Key.Split('/'), saw.Sum())
                ),
        ];
    }

    private static SawState StateOf(
        ToolChest chest,
        ShopTool tool,
        IReadOnlyList<SawnStep> logged,
        IReadOnlyList<SawingAhead> ahead
    )
    {
        var alike = chest.CountOf([tool.Kind]);
        var seconds = logged
            .Where(s =>
                KindUsed(chest, s.Saws) == tool.Kind
                && (tool.SharpenedUtc is not { } sharpened || s.DoneUtc > sharpened)
            )
            .Sum(s => s.Seconds);
        var minutes = seconds / alike / 60;
        SawingAhead? due = null;
        var more = 0;
        foreach (var lesson in ahead.Where(a => KindUsed(chest, a.Saws) == tool.Kind))
        {
            more += lesson.Seconds;
            if (due is null && (seconds + more) / alike / 60 >= chest.SharpenAfter)
                due = lesson;
        }

        return new(
            tool,
            minutes,
            chest.SharpenAfter,
            minutes >= chest.SharpenAfter ? null : due,
            more / alike / 60
        );
    }

    // Where either kind will do, the first that the shop has is taken.
    private static string KindUsed(ToolChest chest, IReadOnlyList<string> saws) =>
        saws.FirstOrDefault(s => chest.CountOf([s]) > 0) ?? saws[0];
}
