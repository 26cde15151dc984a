using ShopClass.Core.Lessons;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Tests.Lessons;

/// <summary>Steps, students and lessons made up for tests.</summary>
internal static partial class MadeUp
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
}
