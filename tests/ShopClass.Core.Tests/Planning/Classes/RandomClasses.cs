using CsCheck;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning.Classes;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Tests.Planning.Classes;

/// <summary>Random small classes.</summary>
internal static class RandomClasses
{
    private static readonly Gen<Part> AnyPart = Gen.Select(
        Gen.Int[2, 9],
        Gen.Int[4, 14],
        Gen.Int[1, 2],
        Gen.Bool,
        Gen.Frequency(
            (4, Gen.Const(GrainDirection.AlongLength)),
            (1, Gen.Const(GrainDirection.Any))
        ),
        Gen.Int[0, 9],
        (width, length, quantity, glue, grain, thin) =>
            Wood.Part(
                "A",
                quantity,
                Wood.Mm(thin == 0 ? 10 : 20),
                Wood.Mm(width * 20),
                Wood.Mm(length * 40)
            ) with
            {
                GlueUpAllowed = glue,
                Grain = grain,
            }
    );

    private static readonly Gen<StockSize> AnySize = Gen.Select(
        Gen.Int[6, 12],
        Gen.Int[12, 30],
        Gen.Enum<Surfacing>(),
        Gen.Int[80, 120],
        Gen.Int[0, 6],
        (width, length, surfacing, rate, left) =>
            Size("", Wood.Mm(width * 20), Wood.Mm(length * 60), width * length * rate / 10) with
            {
                Surfacing = surfacing,
                Thickness = Wood.Mm(surfacing is Surfacing.Rough ? 25 : 21),
                Available = left <= 1 ? left : null,
            }
    );

    public static Gen<ClassRequest> Any { get; } =
        Gen.Select(
            AnyPart.Array[1, 5],
            AnySize.Array[1, 5],
            AnySize.Array[0, 3],
            Gen.Int[0, 6],
            Gen.Int[0, 1],
            Gen.Bool,
            (parts, sizes, rack, kits, spare, whole) =>
                new ClassRequest
                {
                    Project = new()
                    {
                        Name = "trial",
                        Parts =
                        [
                            .. parts.Select((p, i) => p with { Letter = $"{(char)('A' + i)}" }),
                        ],
                    },
                    Rules = Wood.Bare(Wood.Mm(2)) with
                    {
                        LengthAllowance = Wood.Mm(10),
                        WidthAllowance = Wood.Mm(4),
                        EdgeJointAllowance = Wood.Mm(1),
                    },
                    Kits = kits,
                    SpareKits = spare,
                    SpareParts = new SortedDictionary<string, int>(StringComparer.Ordinal)
                    {
                        ["A"] = spare,
                    },
                    Stock = [.. sizes.Select((s, i) => s with { Id = $"{i}" })],
                    Rack =
                    [
                        .. rack.Select(
                            (s, i) =>
                                new RackBoard(
                                    s.ToBoard($"r{i}", $"Rack {i}", Wood.Bare(Wood.Mm(2))),
                                    i * 100
                                )
                        ),
                    ],
                    Way = whole ? KitWay.WholeBoards : KitWay.Pooled,
                    StepLimit = 60,
                }
        );

    public static StockSize Size(string id, Length width, Length length, long price) =>
        new()
        {
            Id = id,
            SellerId = "yard",
            Name = $"size {id}",
            SpeciesId = "eastern-white-pine",
            Surfacing = Surfacing.S4S,
            Thickness = Wood.In(0, 3, 4),
            Width = width,
            Length = length,
            Price = price,
        };
}
