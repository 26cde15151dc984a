using ShopClass.Core.Drawings;
using ShopClass.Core.Lessons;

namespace ShopClass.Core.Tools;

/// <summary>A kind of tool in a lesson.</summary>
/// <param name="Need">The kinds that do, and how many are in use at once, at most. What is in every kit is not counted again.</param>
/// <param name="Have">How many the shop has beside those handed out with the kits.</param>
/// <param name="Wanting">How many are wanting at the worst moment; 0 when they go round.</param>
/// <param name="WantingAt">That moment: minutes after the lesson begins.</param>
public sealed record LessonTool(ToolNeed Need, int Have, int Wanting, int WantingAt)
{
    /// <summary>What is wanting, in a sentence; null when nothing is.</summary>
    public string? Sentence =>
        Wanting == 0
            ? null
            : $"{Capital(Need.Words)}: {Need.Count} in use at once, the shop has {Have}: {Wanting} too few, {RotationWords.At(WantingAt)} into the lesson.";

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}

/// <summary>What lessons need in tools against what the shop has.</summary>
public static class LessonTools
{
    /// <summary>Whether the tool sets can be handed to so many students, a sentence for each kind that does not go round.</summary>
    public static IReadOnlyList<string> ShortForKits(ToolChest chest, int students) =>
        [
            .. chest
                .Sets.SelectMany(s => s.Tools)
                .Select(t => t.Kind)
                .Distinct(StringComparer.Ordinal)
                .Select(kind =>
                    (kind, Take: chest.InEveryKit(kind) * students, Have: chest.CountOf([kind]))
                )
                .Where(k => k.Take > k.Have)
                .Select(k =>
                    $"The kits of {students} students take {ToolBook.Count(k.Take, k.kind)}; the shop has {k.Have}."
                ),
        ];

    /// <summary>What a lesson needs, in the order of <see cref="ToolBook"/>, then by name.</summary>
    /// <param name="request">The lessons and the students' steps.</param>
    /// <param name="plan">Who does what when.</param>
    /// <param name="lesson">Which lesson, from 0.</param>
    /// <param name="chest">What there is.</param>
    public static IReadOnlyList<LessonTool> For(
        LessonRequest request,
        LessonPlan plan,
        int lesson,
        ToolChest chest
    )
    {
        var uses = Uses(request, plan, lesson, chest);
        var have = Left(request, lesson, chest);
        var tools = uses.SelectMany(u => u.Needs.Select(n => n.Words))
            .Distinct(StringComparer.Ordinal)
            .ToDictionary(w => w, _ => (Need: (ToolNeed?)null, Short: 0, At: 0));
        foreach (var moment in uses.Select(u => u.Start).Distinct().Order())
        {
            ToolNeed[] now =
            [
                .. uses.Where(u => u.Start <= moment && moment < u.End)
                    .SelectMany(u => u.Needs)
                    .GroupBy(n => n.Words, StringComparer.Ordinal)
                    .Select(g => new ToolNeed(g.First().AnyOf, g.Sum(n => n.Count)))
                    .OrderBy(n => n.AnyOf.Count)
                    .ThenBy(n => n.Words, StringComparer.Ordinal),
            ];
            foreach (var (need, wanting) in now.Zip(ToolMatch.Short(now, have)))
            {
                var worst = tools[need.Words];
                tools[need.Words] = (
                    worst.Need is { } most && most.Count >= need.Count ? most : need,
                    Math.Max(worst.Short, wanting),
                    wanting > worst.Short ? moment : worst.At
                );
            }
        }

        return
        [
            .. tools
                .Values.Select(t => new LessonTool(
                    t.Need!,
                    t.Need!.AnyOf.Sum(k => have.GetValueOrDefault(k)),
                    t.Short,
                    t.At
                ))
                .OrderBy(t => PlaceOf(t.Need.AnyOf[0]))
                .ThenBy(t => t.Need.Words, StringComparer.Ordinal),
        ];
    }

    // A turn's steps follow one another, so it takes the most that any one of them takes.
    private static List<(int Start, int End, ToolNeed[] Needs)> Uses(
        LessonRequest request,
        LessonPlan plan,
        int lesson,
        ToolChest chest
    )
    {
        var students = request.Students.ToDictionary(s => s.StudentId, StringComparer.Ordinal);
        return
        [
            .. plan.Lessons[lesson]
                .Turns.Select(turn =>
                    (
                        turn.Start,
                        turn.End,
                        turn.Turn.Steps.SelectMany(n =>
                                ToolBook.NeedsOf(students[turn.Turn.StudentId].Step(n))
                            )
                            .GroupBy(n => n.Words, StringComparer.Ordinal)
                            .Select(g => g.MaxBy(n => n.Count)!)
                            .Select(n => n with { Count = n.Count - n.AnyOf.Sum(chest.InEveryKit) })
                            .Where(n => n.Count > 0)
                            .ToArray()
                    )
                ),
        ];
    }

    private static Dictionary<string, int> Left(LessonRequest request, int lesson, ToolChest chest)
    {
        var there = request.Students.Count(s => request.Lessons[lesson].IsAttendedBy(s.StudentId));
        return chest
            .Tools.GroupBy(t => t.Kind, StringComparer.Ordinal)
            .ToDictionary(
                g => g.Key,
                g => Math.Max(0, g.Sum(t => t.Count) - chest.InEveryKit(g.Key) * there),
                StringComparer.Ordinal
            );
    }

    private static int PlaceOf(string kind)
    {
        var at = ToolBook.Entries.Index().FirstOrDefault(e => e.Item.Name == kind);
        return at.Item is null ? int.MaxValue : at.Index;
    }
}
