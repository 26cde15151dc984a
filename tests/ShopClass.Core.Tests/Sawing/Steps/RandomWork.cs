using CsCheck;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Tests.Sawing.Steps;

/// <summary>Random projects with joints and open dimensions, on random boards.</summary>
internal static class RandomWork
{
    private static readonly string[] Events =
    [
        "the ends dry-fit",
        "the shelves are seated",
        "glued",
        "planed flush with the sides",
        "the box stands",
        "the base is planed",
    ];

    public static Gen<PlanningRequest> Any { get; } =
        Gen.Select(
            RandomProjects.Any,
            Gen.Select(
                Gen.Enum<JointKind>(),
                Gen.Int[0, 3],
                Gen.Int[0, 3],
                Gen.Int[1, 4],
                Gen.Bool
            ).Array[0, 3],
            Gen.Select(
                Gen.Int[0, 3],
                Gen.Enum<PartDimension>(),
                Gen.Int[1, 8],
                Gen.Int[0, 5],
                Gen.Int[-6, 8]
            ).Array[0, 3],
            Gen.Bool,
            // Every second request has a board that is not flat: cup and twist in sixty-fourths of an inch.
            Gen.Select(Gen.Int[0, 3], Gen.Int[-12, 12], Gen.Int[-12, 12]),
            (request, joints, opens, noted, warp) =>
            {
                var parts = request
                    .Project.Parts.Select(
                        (p, i) =>
                            p with
                            {
                                JointNotes = noted && i % 2 == 0 ? "As the instructor shows." : "",
                                Open =
                                [
                                    .. opens
                                        .Where(o => o.Item1 % request.Project.Parts.Count == i)
                                        .Select(o => new OpenDimension(
                                            o.Item2,
                                            Length.FromTicks(o.Item3 * 1270),
                                            Events[o.Item4]
                                        )
                                        {
                                            Event = Chosen(o.Item5, request.Project.Parts),
                                        })
                                        .DistinctBy(o => o.Dimension),
                                ],
                            }
                    )
                    .ToList();
                return request with
                {
                    Boards =
                    [
                        .. request.Boards.Select(
                            (b, i) => i == warp.Item1 % 2 ? Warped(b, warp.Item2, warp.Item3) : b
                        ),
                    ],
                    Project = request.Project with
                    {
                        Parts = parts,
                        Joints =
                        [
                            .. joints.Select(j => Joint(j, parts)).Where(j => j.Part != j.Mate),
                        ],
                    },
                };
            }
        );

    /// <summary>Half of the dimensions wait for an event that was chosen; some of those joints and glue-ups are not there.</summary>
    private static OpenEvent? Chosen(int which, IReadOnlyList<Part> parts) =>
        which switch
        {
            < 0 => null,
            < 3 => new(
                OpenEventKind.JointFitted,
                parts[which % parts.Count].Letter,
                parts[(which + 1) % parts.Count].Letter
            ),
            < 6 => new(OpenEventKind.GluedUp, parts[which % parts.Count].Letter),
            6 => new(OpenEventKind.DryFit),
            7 => new(OpenEventKind.RestStands),
            _ => new(OpenEventKind.Together),
        };

    private static Board Warped(Board board, int cup, int twist) =>
        board with
        {
            Cup = Length.FromInches(0, Math.Max(0, cup), 64),
            Twist = Length.FromInches(0, Math.Max(0, twist), 64),
        };

    private static Joint Joint(
        (JointKind Kind, int Part, int Mate, int Depth, bool Twice) j,
        List<Part> parts
    ) =>
        new()
        {
            Kind = j.Kind,
            Part = parts[j.Part % parts.Count].Letter,
            Mate = parts[j.Mate % parts.Count].Letter,
            Depth = j.Kind is JointKind.Nailed ? Length.Zero : Length.FromTicks(j.Depth * 2540),
            // Every second joint says where it lies across: an eighth or more of the width from the edge, four eighths wide.
            Across = j.Depth % 2 == 0 ? Eighths(parts[j.Part % parts.Count], 4) : null,
            FromEdge = j.Depth % 2 == 0 ? Eighths(parts[j.Part % parts.Count], j.Mate) : null,
            Positions = j.Twice ? [Length.FromMillimetres(10), Length.FromMillimetres(60)] : [],
        };

    private static Length Eighths(Part part, int eighths) =>
        Length.FromTicks(part.Finished.Width.Ticks / 8 * eighths);
}
