using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing;
using static ShopClass.Core.Tests.Sawing.HandDrawn;

namespace ShopClass.Core.Tests.Sawing;

/// <summary>
/// The wall shelf of the demo course, laid out by hand on a surfaced board of 3/4 x 9 1/4 x 96 in with an inch of trim at
/// each end, under a course's usual settings. Surplus width is shared between the two strips.
/// </summary>
internal static class WallShelf
{
    public static PlanningRequest Request { get; } =
        new()
        {
            Project = new()
            {
                Name = "Wall shelf",
                Parts =
                [
                    Part("A", 6, 14, 2) with
                    {
                        Name = "side",
                    },
                    Part("B", 6, 20.5m, 2) with
                    {
                        Name = "shelf",
                        Open = [new(PartDimension.Width, In(0.03125m), "planed flush")],
                    },
                    Part("C", 2.5m, 20) with
                    {
                        Name = "rail",
                        Open = [new(PartDimension.Length, In(0.5m), "the shelves are seated")],
                    },
                ],
            },
            Boards = [Board(96, 9.25m) with { TrimStart = In(1), TrimEnd = In(1) }],
            Rules = CourseRules.DefaultsFor(UnitSystem.Inch),
        };

    public static CutPlan Plan { get; } =
        HandDrawn.Plan(
            Layout(
                "b1",
                Section(1, 16, Near(Blank("A1", 1, 16))),
                Section(16.0625m, 31.0625m, Near(Blank("A2", 16.0625m, 31.0625m))),
                Section(
                    31.125m,
                    52.625m,
                    Near(Blank("B1", 31.125m, 52.625m)),
                    Far(Blank("C1", 31.125m, 52.625m))
                ),
                Section(52.6875m, 74.1875m, Near(Blank("B2", 52.6875m, 74.1875m)))
            )
        );

    public static SawingSequence Sequence { get; } = Sequencer.Order(Request, Plan);

    private static Strip Near(params PlacedBlank[] blanks) => Strip(0, 6.375m, blanks);

    private static Strip Far(params PlacedBlank[] blanks) => Strip(6.453125m, 9.25m, blanks);
}
