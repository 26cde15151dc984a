using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Lessons;

/// <summary>Time a student is there and has no turn.</summary>
/// <param name="StudentId">Whose.</param>
/// <param name="Start">Minutes after the lesson begins.</param>
/// <param name="Minutes">How long.</param>
/// <param name="Place">The sharpening place that is free for it, from 1; null for a bench top.</param>
/// <param name="What">What to do meanwhile, in a sentence.</param>
public sealed record FreeSpell(string StudentId, int Start, int Minutes, int? Place, string What)
{
    /// <summary>When it is over.</summary>
    public int End => Start + Minutes;
}

/// <summary>What to do meanwhile.</summary>
public static class Spells
{
    /// <summary>Shorter breaths than this are left alone.</summary>
    public const int Shortest = 5;

    private const int ToSharpen = 10;

    /// <summary>The free spells of a lesson, by time and then by student, each with something worth doing.</summary>
    public static IReadOnlyList<FreeSpell> In(LessonRequest request, LessonPlan plan, int lesson)
    {
        var program = plan.Lessons[lesson];
        var sharpening = new int[request.StationsIn(lesson).Sharpening];
        for (var place = 0; place < sharpening.Length; place++)
            sharpening[place] = program
                .Turns.Where(t => t.Turn.Station is Station.Sharpening && t.Place == place + 1)
                .Select(t => t.End)
                .DefaultIfEmpty(0)
                .Max();
        var spells = new List<FreeSpell>();
        var gaps = request
            .Students.Where(s =>
                s.Work is { Steps.Count: > 0 } && request.Lessons[lesson].IsAttendedBy(s.StudentId)
            )
            .SelectMany(
                (s, i) =>
                    Gaps(request, program, lesson, s).Select(g => (Student: s, g.Start, g.End, i))
            )
            .OrderBy(g => g.Start)
            .ThenBy(g => g.i);
        foreach (var (student, start, end, _) in gaps)
            spells.Add(SpellOf(plan, lesson, student, (start, end), sharpening));
        return spells;
    }

    private static FreeSpell SpellOf(
        LessonPlan plan,
        int lesson,
        StudentWork student,
        (int Start, int End) gap,
        int[] sharpening
    )
    {
        var minutes = gap.End - gap.Start;
        if (Next(plan, lesson, student.StudentId, gap.Start) is not { } next)
            return new(
                student.StudentId,
                gap.Start,
                minutes,
                null,
                plan.Left.Any(t => t.StudentId == student.StudentId)
                    ? "Nothing that can be done now: go over the lines already drawn, and help a neighbour check theirs."
                    : "Done: clean up the bench, then help whoever is furthest from it."
            );
        var tools = EdgeTools(next.Steps.SelectMany(n => student.Step(n).Tools));
        var place = Array.FindIndex(sharpening, f => f <= gap.Start);
        if (tools.Count > 0 && minutes >= ToSharpen && place >= 0)
        {
            sharpening[place] = gap.End;
            return new(
                student.StudentId,
                gap.Start,
                minutes,
                place + 1,
                $"Sharpen for what comes next: {string.Join(", ", tools)}."
            );
        }

        return new(student.StudentId, gap.Start, minutes, null, SkillBook.Of(next.Skill).Meanwhile);
    }

    /// <summary>Those of these tools that have an edge to sharpen.</summary>
    internal static IReadOnlyList<string> EdgeTools(IEnumerable<string> tools) =>
        [
            .. tools
                .Where(t =>
                    t.Contains("plane", StringComparison.OrdinalIgnoreCase)
                    || t.Contains("chisel", StringComparison.OrdinalIgnoreCase)
                    || t.Contains("knife", StringComparison.OrdinalIgnoreCase)
                )
                .Distinct(StringComparer.Ordinal),
        ];

    private static Turn? Next(LessonPlan plan, int lesson, string student, int from) =>
        plan
            .Lessons.Skip(lesson)
            .SelectMany(
                (program, i) =>
                    program
                        .Turns.Where(t => t.Turn.StudentId == student && (i > 0 || t.Start >= from))
                        .OrderBy(t => t.Start)
            )
            .FirstOrDefault()
            ?.Turn;

    private static IEnumerable<(int Start, int End)> Gaps(
        LessonRequest request,
        LessonProgram program,
        int lesson,
        StudentWork student
    )
    {
        var at = 0;
        var busy = program
            .Turns.Where(t => t.Turn.StudentId == student.StudentId)
            .Select(t => (t.Start, t.End))
            .Concat(
                program
                    .Showings.Where(s => s.StudentId is null || s.StudentId == student.StudentId)
                    .Select(s => (s.Start, s.End))
            )
            .Append((request.Lessons[lesson].Minutes, request.Lessons[lesson].Minutes))
            .Order();
        foreach (var (start, end) in busy)
        {
            if (start - at >= Shortest)
                yield return (at, start);
            at = Math.Max(at, end);
        }
    }
}
