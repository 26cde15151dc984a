using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Tests.Sawing.Steps;

/// <summary>The wall shelf of the demo course on three of its students' boards.</summary>
internal static class WorkCases
{
    private static readonly Lazy<CheckedPlan> SurfacedPlan = new(() => Plan(Surfaced));
    private static readonly Lazy<CheckedPlan> RoughPlan = new(() => Plan(Rough));
    private static readonly Lazy<CheckedPlan> StoppedPlan = new(Stopped);
    private static readonly Lazy<CheckedPlan> NarrowPlan = new(() => Plan(Narrow));

    /// <summary>A surfaced board with straight edges.</summary>
    public static CheckedPlan OnSurfacedPine => SurfacedPlan.Value;

    /// <summary>A rough board that tapers.</summary>
    public static CheckedPlan OnRoughBirch => RoughPlan.Value;

    /// <summary>Two boards narrower than the sides and shelves.</summary>
    public static CheckedPlan OnNarrowPine => NarrowPlan.Value;

    /// <summary>The surfaced board once more, for a shelf whose dados stop an inch before the front edge.</summary>
    public static CheckedPlan OnStoppedDados => StoppedPlan.Value;

    public static PlanningRequest Request(params Board[] boards) =>
        new()
        {
            Project = Shelf,
            Boards = boards,
            Rules = CourseRules.DefaultsFor(UnitSystem.Inch),
        };

    private static Board Surfaced =>
        Board("Surfaced pine", "eastern-white-pine", Surfacing.S4S, 9.25, 9.25, 9.25, 96);

    private static Board[] Rough =>
        [
            Board("Tapered rough birch", "paper-birch", Surfacing.Rough, 11.25, 10.5, 9.5, 102) with
            {
                Thickness = In(1),
            },
        ];

    private static Board[] Narrow =>
        [
            Board("Narrow pine, first", "western-white-pine", Surfacing.S4S, 5.5, 5.5, 5.5, 96),
            Board("Narrow pine, second", "western-white-pine", Surfacing.S4S, 5.5, 5.5, 5.5, 96),
        ];

    public static Project Shelf { get; } =
        new()
        {
            Name = "Wall shelf",
            Parts =
            [
                Part("A", "side", 2, 6, 14) with
                {
                    ShowFace = true,
                    ReferenceFace = ReferenceFace.Inside,
                },
                Part("B", "shelf", 2, 6, 20.5) with
                {
                    JointNotes = "Make the pair equal first.",
                    Open =
                    [
                        new(PartDimension.Width, In(1 / 32.0), "planed flush with the sides")
                        {
                            TakenFrom = "A",
                        },
                    ],
                },
                Part("C", "rail", 1, 2.5, 20) with
                {
                    Open =
                    [
                        new(PartDimension.Length, In(.25), "the shelves are seated")
                        {
                            TakenFrom = "B",
                        },
                    ],
                },
            ],
            Joints =
            [
                new()
                {
                    Kind = JointKind.Dado,
                    Part = "A",
                    Mate = "B",
                    Depth = In(.25),
                    Width = In(.75),
                    Positions = [In(2), In(10)],
                    Note = "Marked on both sides at once, so that the shelves come out level.",
                },
                new()
                {
                    Kind = JointKind.Nailed,
                    Part = "A",
                    Mate = "C",
                    Note = "Between the sides, under the upper shelf.",
                },
            ],
        };

    /// <summary>The same shelf, its dados hidden from the front: they begin at the back, the reference edge, and stop 1 in before the other.</summary>
    public static Project StoppedShelf { get; } =
        Shelf with
        {
            Joints =
            [
                Shelf.Joints[0] with
                {
                    Across = In(5),
                    FromEdge = Length.Zero,
                },
                Shelf.Joints[1],
            ],
        };

    public static Length In(double inches) => Length.FromInches(0, (long)(inches * 32), 32);

    private static CheckedPlan Stopped() =>
        CheckedPlan.Make(Request(Surfaced) with { Project = StoppedShelf });

    private static CheckedPlan Plan(params Board[] boards) => CheckedPlan.Make(Request(boards));

    private static Part Part(
        string letter,
        string name,
        int quantity,
        double width,
        double length
    ) =>
        new()
        {
            Letter = letter,
            Name = name,
            Finished = new(In(.75), In(width), In(length)),
            Quantity = quantity,
            GlueUpAllowed = letter != "C",
        };

    private static Board Board(
        string name,
        string species,
        Surfacing surfacing,
        double start,
        double middle,
        double end,
        double length
    ) =>
        new()
        {
            Id = name,
            Name = name,
            SpeciesId = species,
            Surfacing = surfacing,
            Thickness = In(.75),
            WidthAtStart = In(start),
            WidthAtMiddle = In(middle),
            WidthAtEnd = In(end),
            Length = In(length),
            TrimStart = In(1),
            TrimEnd = In(1),
        };
}
