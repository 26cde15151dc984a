using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Tests.Planning;

/// <summary>Projects as a beginners' course makes them, in inches and in millimetres, each with boards that just about do.</summary>
internal static class DemoProjects
{
    public static PlanningRequest Find(string name, UnitSystem unit)
    {
        var inch = unit is UnitSystem.Inch;
        var (parts, boards) = name switch
        {
            "bench hook" => inch ? BenchHookInch : BenchHookMetric,
            "tool tote" => inch ? ToteInch : ToteMetric,
            "wall shelf" => inch ? ShelfInch : ShelfMetric,
            "planter" => inch ? PlanterInch : PlanterMetric,
            "peg rail" => inch ? PegRailInch : PegRailMetric,
            _ => throw new ArgumentOutOfRangeException(nameof(name), name, "Not a demo project."),
        };
        return new()
        {
            Project = new() { Name = name, Parts = parts },
            Boards = boards,
            Rules = CourseRules.DefaultsFor(unit),
        };
    }

    private static Length Q(double inches) => Length.FromInches(0, (long)(inches * 32), 32);

    private static Length M(double millimetres) =>
        Length.FromHundredthsOfMillimetre((long)(millimetres * 100));

    private static Part Inch(string letter, int quantity, double t, double w, double l) =>
        Wood.Part(letter, quantity, Q(t), Q(w), Q(l));

    private static Part Metric(string letter, int quantity, double t, double w, double l) =>
        Wood.Part(letter, quantity, M(t), M(w), M(l));

    private static Part Open(this Part part, PartDimension dimension, Length extra) =>
        part with
        {
            Open = [new(dimension, extra, "it is fitted")],
        };

    private static Board Inch(string id, double t, double w, double l) =>
        Wood.Board(id, Q(t), Q(w), Q(l), Surfacing.S4S) with
        {
            TrimStart = Q(0.5),
            TrimEnd = Q(0.5),
        };

    private static Board Metric(string id, double t, double w, double l) =>
        Wood.Board(id, M(t), M(w), M(l), Surfacing.S4S) with
        {
            TrimStart = M(12),
            TrimEnd = M(12),
        };

    private static (Part[], Board[]) BenchHookInch =>
        (
            [Inch("A", 1, .75, 6, 10), Inch("B", 1, .75, 1.5, 5), Inch("C", 1, .75, 1.5, 6)],
            [Inch("1", .75, 7.25, 20)]
        );

    private static (Part[], Board[]) BenchHookMetric =>
        (
            [
                Metric("A", 1, 20, 140, 250),
                Metric("B", 1, 20, 38, 115),
                Metric("C", 1, 20, 38, 140),
            ],
            [Metric("1", 20, 190, 500)]
        );

    private static (Part[], Board[]) ToteInch =>
        (
            [
                Inch("A", 2, .75, 7, 9),
                Inch("B", 2, .5, 4, 18).Open(PartDimension.Length, Q(1 / 16.0)),
                Inch("C", 1, .5, 6, 17),
                Inch("D", 1, .75, 1.25, 18.25).Open(PartDimension.Length, Q(.5)),
            ],
            [Inch("1", .75, 9.25, 22), Inch("2", .5, 11.25, 40)]
        );

    private static (Part[], Board[]) ToteMetric =>
        (
            [
                Metric("A", 2, 20, 180, 230),
                Metric("B", 2, 12, 100, 460).Open(PartDimension.Length, M(1.5)),
                Metric("C", 1, 12, 156, 432),
                Metric("D", 1, 20, 32, 466).Open(PartDimension.Length, M(12)),
            ],
            [Metric("1", 20, 235, 560), Metric("2", 12, 280, 1020)]
        );

    private static (Part[], Board[]) ShelfInch =>
        (
            [
                Inch("A", 2, .75, 6, 14),
                Inch("B", 2, .75, 6, 20.5).Open(PartDimension.Width, Q(1 / 32.0)),
                Inch("C", 1, .75, 2.5, 20),
            ],
            [Inch("1", .75, 9.25, 75)]
        );

    private static (Part[], Board[]) ShelfMetric =>
        (
            [
                Metric("A", 2, 20, 140, 360),
                Metric("B", 2, 20, 140, 512).Open(PartDimension.Width, M(1)),
                Metric("C", 1, 20, 65, 500),
            ],
            [Metric("1", 20, 235, 1900)]
        );

    private static (Part[], Board[]) PlanterInch =>
        (
            [
                Inch("A", 2, .75, 7, 24),
                Inch("B", 2, .75, 7, 8),
                Inch("C", 3, .75, 2.25, 22.5),
                Inch("D", 2, .75, 1, 7),
            ],
            [Inch("1", .75, 9.25, 96)]
        );

    private static (Part[], Board[]) PlanterMetric =>
        (
            [
                Metric("A", 2, 20, 180, 600),
                Metric("B", 2, 20, 180, 200),
                Metric("C", 3, 20, 60, 560),
                Metric("D", 2, 20, 25, 180),
            ],
            [Metric("1", 20, 235, 2400)]
        );

    private static (Part[], Board[]) PegRailInch =>
        ([Inch("A", 1, .75, 4, 20), Inch("B", 4, .75, .75, 4)], [Inch("1", .75, 5.5, 23)]);

    private static (Part[], Board[]) PegRailMetric =>
        ([Metric("A", 1, 20, 100, 500), Metric("B", 4, 20, 20, 100)], [Metric("1", 20, 140, 560)]);
}
