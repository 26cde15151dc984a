using CsCheck;
using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Tests.Sawing;

/// <summary>Random projects and boards under a course's usual settings, inch and metric, in whole 1/16 in or mm.</summary>
internal static class RandomProjects
{
    public static Gen<PlanningRequest> Any { get; } =
        Gen.Enum<UnitSystem>()
            .SelectMany(unit =>
            {
                Length Of(int sixteenths) =>
                    unit is UnitSystem.Inch
                        ? RandomLayouts.Sixteenths(sixteenths)
                        : Length.FromMillimetres(sixteenths * 25 / 16);
                return Gen.Select(
                    Part(Of).Array[1, 4],
                    Board(Of).Array[1, 3],
                    Gen.Frequency((4, Gen.Const(true)), (1, Gen.Const(false))),
                    Gen.Frequency((4, Gen.Const(true)), (1, Gen.Const(false))),
                    (parts, boards, planing, gluing) =>
                        new PlanningRequest
                        {
                            Project = new()
                            {
                                Name = "random",
                                Parts =
                                [
                                    .. parts.Select(
                                        (p, i) => p with { Letter = $"{(char)('A' + i)}" }
                                    ),
                                ],
                            },
                            Boards =
                            [
                                .. boards.Select(
                                    (b, i) => b with { Id = $"b{i + 1}", Name = $"Board {i + 1}" }
                                ),
                            ],
                            Rules = CourseRules.DefaultsFor(unit) with
                            {
                                PlaningTaught = planing,
                                EdgeGluingTaught = gluing,
                            },
                            StepLimit = 500,
                        }
                );
            });

    private static Gen<Part> Part(Func<int, Length> of) =>
        Gen.Select(
            Gen.Int[24, 140],
            Gen.Int[40, 400],
            Gen.Int[1, 4],
            Gen.Enum<GrainDirection>(),
            Gen.Bool,
            Gen.Bool,
            Gen.Frequency((3, Gen.Const(0)), (1, Gen.Int[1, 16])),
            (width, length, quantity, grain, glueUp, hidden, open) =>
                new Part
                {
                    Letter = "",
                    Name = "part",
                    Finished = new(of(12), of(width), of(length)),
                    Quantity = quantity,
                    Grain = grain,
                    GlueUpAllowed = glueUp,
                    AcceptsHiddenDefect = hidden,
                    Open = open == 0 ? [] : [new(PartDimension.Length, of(open), "the dry fit")],
                }
        );

    private static Gen<Board> Board(Func<int, Length> of) =>
        Gen.Select(
            Gen.Int[300, 1600],
            Gen.Int[48, 190],
            Gen.Int[0, 12],
            Gen.Select(Gen.Int[0, 24], Gen.Int[0, 24]),
            Gen.Enum<Surfacing>(),
            Gen.Int[12, 16],
            Spot(of).Array[0, 4],
            (length, width, taper, trim, surfacing, thick, spots) =>
                new Board
                {
                    Id = "",
                    Name = "",
                    SpeciesId = "eastern-white-pine",
                    Surfacing = surfacing,
                    Thickness = of(thick),
                    WidthAtStart = of(width + taper),
                    WidthAtMiddle = of(width),
                    WidthAtEnd = of(width),
                    Length = of(length),
                    TrimStart = of(trim.Item1),
                    TrimEnd = of(trim.Item2),
                    Defects =
                    [
                        .. spots.Where(s => s.Place.To <= of(length) && s.Place.Far <= of(width)),
                    ],
                }
        );

    private static Gen<Defect> Spot(Func<int, Length> of) =>
        Gen.Select(
            Gen.Int[0, 1500],
            Gen.Int[4, 40],
            Gen.Int[0, 150],
            Gen.Int[4, 20],
            Gen.Enum<DefectReach>(),
            (from, along, near, across, reach) =>
                new Defect(
                    DefectKind.Knot,
                    new(of(from), of(from + along), of(near), of(near + across)),
                    reach
                )
        );
}
