using ShopClass.Core.Drawings;

namespace ShopClass.Core.Lessons;

/// <summary>The sentences of a lesson's lists, the same on screen and on paper.</summary>
public static class LessonWords
{
    /// <summary>How to read a rotation's boxes.</summary>
    public static string Legend =>
        "S saw bench, V bench with a vise, H bench hook, E sharpening, each with its number; B bench top, G glue table; "
        + "w or watch: a demonstration.";

    /// <summary>What to see to before a lesson.</summary>
    public static IReadOnlyList<string> Prepare(LessonRequest request, LessonPlan plan, int lesson)
    {
        var list = SetOut.For(request, plan, lesson);
        string[] stations = [.. list.Stations.Select(s => StationWords.Count(s.Count, s.Station))];
        string[] tools =
        [
            .. list.Tools.Select(t => t.Count == 1 ? t.Tool : $"{t.Count} × {t.Tool}"),
        ];
        return
        [
            .. stations.Length > 0
                ? [$"Stations in use at once: {string.Join(", ", stations)}."]
                : Array.Empty<string>(),
            .. tools.Length > 0 ? [$"Set out: {string.Join("; ", tools)}."] : Array.Empty<string>(),
            .. list.Sharp.Count > 0
                ? [$"Sharp before the lesson: {string.Join(", ", list.Sharp)}."]
                : Array.Empty<string>(),
            .. Absent(request, lesson),
        ];
    }

    /// <summary>What is demonstrated, when and how.</summary>
    public static IReadOnlyList<string> Demonstrate(
        LessonRequest request,
        LessonPlan plan,
        int lesson
    ) =>
        [
            .. plan.Lessons[lesson]
                .Showings.Select(s =>
                {
                    var skill = SkillBook.Of(s.Skill);
                    var whom = s.StudentId is { } one ? $" again, to {NameOf(request, one)}" : "";
                    return $"{RotationWords.At(request.Lessons[lesson], s.Start)}, {s.Minutes} minutes: {skill.Name}{whom}. {skill.Show}";
                }),
        ];

    /// <summary>What to do meanwhile, a line for each thing to do with whom and when.</summary>
    public static IReadOnlyList<string> Meanwhile(
        LessonRequest request,
        LessonPlan plan,
        int lesson
    ) =>
        [
            .. Spells
                .In(request, plan, lesson)
                .GroupBy(s => s.What, StringComparer.Ordinal)
                .Select(g =>
                    $"{g.Key} ({string.Join(", ", g.Select(s => When(request, lesson, s)))})"
                ),
        ];

    private static string When(LessonRequest request, int lesson, FreeSpell spell)
    {
        var place = spell.Place is { } n ? $", sharpening place {n}" : "";
        return $"{NameOf(request, spell.StudentId)} {RotationWords.At(request.Lessons[lesson], spell.Start)} to {RotationWords.At(request.Lessons[lesson], spell.End)}{place}";
    }

    private static IEnumerable<string> Absent(LessonRequest request, int lesson)
    {
        string[] names =
        [
            .. request
                .Students.Where(s => !request.Lessons[lesson].IsAttendedBy(s.StudentId))
                .Select(s => s.Name),
        ];
        if (names.Length > 0)
            yield return $"Absent: {string.Join(", ", names)}.";
    }

    private static string NameOf(LessonRequest request, string student) =>
        request.Students.First(s => s.StudentId == student).Name;
}
