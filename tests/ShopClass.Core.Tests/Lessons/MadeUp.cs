using CsCheck;
using ShopClass.Core.Lessons;
using ShopClass.Core.Sawing.Steps;
using Xunit;

namespace ShopClass.Core.Tests.Lessons;

/// <summary>Steps, students and lessons made up for tests.</summary>
internal static class MadeUp
{
    public static DateOnly FirstDay { get; } = new(2026, 3, 3);

    public static Step Step(
        int number,
        int minutes,
        Station station = Station.BenchTop,
        Skill skill = Skill.MarkingOut,
        int waiting = 0,
        StepKind kind = StepKind.MarkOut,
        params int[] after
    ) =>
        new()
        {
            Id = $"step:{number}",
            Number = number,
            Kind = kind,
            Skill = skill,
            Station = station,
            Title = $"Do number {number}",
            Pieces = ["A"],
            Reason = "made up",
            After = after,
            Time = new(0, minutes * 60, waiting * 60, "made up"),
        };

    public static StudentWork Student(string name, params Step[] steps) =>
        new(name, name, "a board", new WorkSequence(steps));

    /// <summary>One evening a week.</summary>
    public static Lesson Evening(int number, int minutes = 120, params Skill[] shows) =>
        new()
        {
            Title = $"Evening {number + 1}",
            Date = FirstDay.AddDays(7 * number),
            Minutes = minutes,
            Shows = shows,
        };

    /// <summary>Work much like a wall shelf's: four hours and a half at all stations, with a glue-up for some.</summary>
    public static StudentWork Shelf(int number, bool gluesUp)
    {
        var slower = number % 4;
        List<Step> steps =
        [
            Step(1, 6),
            Step(2, 12 + slower, after: 1),
            Step(3, 5, Station.SawBench, Skill.Crosscutting, kind: StepKind.EndTrim, after: 2),
            Step(4, 8, Station.SawBench, Skill.Crosscutting, kind: StepKind.Practise, after: 3),
            Step(
                5,
                6 + slower,
                Station.SawBench,
                Skill.Crosscutting,
                kind: StepKind.Crosscut,
                after: [3, 4]
            ),
            Step(
                6,
                6 + slower,
                Station.SawBench,
                Skill.Crosscutting,
                kind: StepKind.Crosscut,
                after: 5
            ),
            Step(7, 26 + 3 * slower, Station.SawBench, Skill.Ripping, kind: StepKind.Rip, after: 5),
            Step(
                8,
                14 + slower,
                Station.Vise,
                Skill.Planing,
                kind: StepKind.StraightenEdge,
                after: 7
            ),
            gluesUp
                ? Step(9, 18, Station.Gluing, Skill.EdgeGluing, 60, StepKind.GlueUp, 8)
                : Step(9, 4, after: 8),
            Step(10, 8, after: 9),
            Step(
                11,
                10,
                Station.BenchHook,
                Skill.FineCrosscutting,
                kind: StepKind.Practise,
                after: 6
            ),
            Step(
                12,
                9,
                Station.BenchHook,
                Skill.FineCrosscutting,
                kind: StepKind.SquareEnd,
                after: [10, 11]
            ),
            Step(
                13,
                9,
                Station.BenchHook,
                Skill.FineCrosscutting,
                kind: StepKind.SquareEnd,
                after: 11
            ),
            Step(14, 8, Station.BenchTop, Skill.Gauging, kind: StepKind.SetGauge, after: [12, 13]),
            Step(15, 22 + slower, Station.Vise, Skill.Joinery, kind: StepKind.CutJoint, after: 14),
            Step(16, 22 + slower, Station.Vise, Skill.Joinery, kind: StepKind.CutJoint, after: 14),
            Step(17, 15, Station.BenchTop, Skill.Assembly, kind: StepKind.Fit, after: [15, 16]),
            Step(18, 20, Station.Gluing, Skill.Assembly, 60, StepKind.Assemble, 17),
            Step(19, 25, Station.BenchTop, Skill.Finishing, kind: StepKind.Finish, after: 18),
        ];
        return Student($"Student {number + 1}", [.. steps]);
    }

    /// <summary>A class of shelves.</summary>
    public static LessonRequest Class(int students, int lessons, int minutes, StationCounts shop) =>
        new()
        {
            Shop = shop,
            Lessons = [.. Enumerable.Range(0, lessons).Select(l => Evening(l, minutes))],
            Students = [.. Enumerable.Range(0, students).Select(s => Shelf(s, s % 5 == 2))],
        };

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
