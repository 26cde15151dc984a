using CsCheck;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Tests.Planning;

/// <summary>Random requests, small enough to check by other means.</summary>
internal static class RandomWood
{
    private static readonly Gen<Part> AnyPart = Gen.Select(
        Gen.Int[2, 9],
        Gen.Int[3, 14],
        Gen.Int[1, 2],
        Gen.Frequency(
            (4, Gen.Const(GrainDirection.AlongLength)),
            (1, Gen.Const(GrainDirection.Any))
        ),
        Gen.Bool,
        Gen.Bool,
        (width, length, quantity, grain, glue, hidden) =>
            Wood.Part("A", quantity, Wood.Mm(20), Wood.Mm(width * 10), Wood.Mm(length * 20)) with
            {
                Grain = grain,
                GlueUpAllowed = glue,
                AcceptsHiddenDefect = hidden,
            }
    );

    private static readonly Gen<Board> AnyBoard = Gen.Select(
        Gen.Int[8, 20],
        Gen.Int[20, 50],
        Gen.Enum<Surfacing>(),
        Gen.Int[0, 2],
        Gen.Int[0, 2],
        (width, length, surfacing, start, end) =>
            Wood.Board("1", Wood.Mm(21), Wood.Mm(width * 10), Wood.Mm(length * 20), surfacing) with
            {
                TrimStart = Wood.Mm(start * 10),
                TrimEnd = Wood.Mm(end * 10),
            }
    );

    public static Gen<PlanningRequest> Requests(int parts, int boards, int defects) =>
        Gen.Select(
            AnyPart.Array[1, parts],
            Gen.Select(AnyBoard, Defects(defects)).Array[1, boards],
            Gen.Int[0, 3],
            Gen.Int[0, 2],
            (some, wood, kerf, allowance) =>
                Wood.Ask(
                    Wood.Bare(Wood.Mm(kerf)) with
                    {
                        LengthAllowance = Wood.Mm(allowance * 5),
                        WidthAllowance = Wood.Mm(allowance * 3),
                    },
                    [
                        .. wood.Select(
                            (w, i) =>
                                w.Item1 with
                                {
                                    Id = $"{i + 1}",
                                    Defects = [.. w.Item2.Select(d => Within(d, w.Item1))],
                                }
                        ),
                    ],
                    [.. some.Select((p, i) => p with { Letter = $"{(char)('A' + i)}" })]
                )
        );

    private static Gen<(int X, int Y, int Size, DefectReach Reach)[]> Defects(int most) =>
        Gen.Select(Gen.Int[0, 99], Gen.Int[0, 99], Gen.Int[5, 40], Gen.Enum<DefectReach>()).Array[
            0,
            most
        ];

    private static Defect Within((int X, int Y, int Size, DefectReach Reach) place, Board board)
    {
        var from = Length.FromTicks(board.Length.Ticks / 100 * place.X);
        var near = Length.FromTicks(board.SmallestWidth.Ticks / 100 * place.Y);
        var rect = new BoardRect(
            from,
            Length.Min(board.Length, from + Wood.Mm(place.Size)),
            near,
            Length.Min(board.SmallestWidth, near + Wood.Mm(place.Size))
        );
        return new(DefectKind.Knot, rect, place.Reach);
    }
}
