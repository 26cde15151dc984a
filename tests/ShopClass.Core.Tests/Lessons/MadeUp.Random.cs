using CsCheck;
using ShopClass.Core.Lessons;
using ShopClass.Core.Sawing.Steps;
using Xunit;

namespace ShopClass.Core.Tests.Lessons;

/// <summary>Random classes.</summary>
internal static partial class MadeUp
{
    private static Gen<Step> AnyStep { get; } =
        from minutes in Gen.Int[0, 45]
        from station in Gen.Enum<Station>()
        from skill in Gen.Enum<Skill>()
        from kind in Gen.OneOf(
            Gen.Const(StepKind.Crosscut),
            Gen.Const(StepKind.Practise),
            Gen.Const(StepKind.GlueUp),
            Gen.Const(StepKind.Fit)
        )
        from waiting in Gen.Frequency((4, Gen.Const(0)), (1, Gen.Int[1, 2000]))
        select Step(1, minutes, station, skill, waiting, kind);

    private static Gen<WorkSequence> Work { get; } =
        from steps in AnyStep.Array[0, 14]
        from reach in Gen.Int[0, 3].Array[28]
        select new WorkSequence([
            .. steps.Select(
                (s, i) =>
                    s with
                    {
                        Number = i + 1,
                        Id = $"step:{i + 1}",
                        After =
                        [
                            .. new[] { i - reach[i], i - reach[i + 14] }
                                .Where(n => n >= 1 && n < i + 1)
                                .Distinct()
                                .Order(),
                        ],
                    }
            ),
        ]);

    /// <summary>The rule's plan.</summary>
    public static LessonPlan Plan(LessonRequest request) =>
        LessonPlanner.Plan(request, progress: null, TestContext.Current.CancellationToken);

    /// <summary>Random classes: tight and roomy shops, short and long lessons, absences, several lessons a day, glue that dries.</summary>
    public static Gen<LessonRequest> Any { get; } =
        from students in Gen.Select(Work.List[1, 6], Gen.Int[0, 1])
        from lessons in AnyLesson(students.Item1.Count).List[0, 6]
        from counts in Gen.Int[0, 3].Array[4]
        from gap in Gen.Int[0, 7].Array[6]
        select new LessonRequest
        {
            Shop = new(counts[0], counts[1], counts[2], counts[3]),
            Students =
            [
                .. students.Item1.Select(
                    (w, i) =>
                        i == 0 && students.Item2 == 0
                            ? new StudentWork("s0", "s0", "", null, "s0 has no board yet.")
                            : new StudentWork($"s{i}", $"s{i}", "a board", w)
                ),
            ],
            Lessons =
            [
                .. lessons.Select((l, i) => l with { Date = FirstDay.AddDays(gap.Take(i).Sum()) }),
            ],
        };

    private static Gen<Lesson> AnyLesson(int students) =>
        from minutes in Gen.Int[0, 150]
        from shows in Gen.Enum<Skill>().Array[0, 2]
        from absent in Gen.Int[0, students - 1].Array[0, 2]
        from own in Gen.Int[0, 4].Array[5]
        select new Lesson
        {
            Title = "A lesson",
            Date = FirstDay,
            Minutes = minutes,
            Shows = [.. shows.Distinct().Order()],
            Absent = [.. absent.Distinct().Order().Select(s => $"s{s}")],
            Stations = own[4] == 0 ? new(own[0], own[1], own[2], own[3]) : null,
        };
}
