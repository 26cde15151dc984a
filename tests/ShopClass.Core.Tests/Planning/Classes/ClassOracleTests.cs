using CsCheck;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning.Classes;
using ShopClass.Core.Projects;
using Xunit;

namespace ShopClass.Core.Tests.Planning.Classes;

/// <summary>Tiny classes, put to a general solver as well (<see cref="SmallOracle"/>).</summary>
public class ClassOracleTests
{
    private static readonly Length Unit = Wood.Mm(10);

    /// <summary>Two kits of two or three blanks on a grid of 10 mm, one size of board, kerf 0 or 10.</summary>
    private static readonly Gen<ClassRequest> OneSize = Gen.Select(
        Gen.Select(Gen.Int[2, 6], Gen.Int[2, 8]).Array[2, 3],
        Gen.Int[6, 9],
        Gen.Int[8, 12],
        Gen.Int[0, 1],
        (sizes, width, length, kerf) => Class(sizes, kerf, (width, length, 100))
    );

    [Fact]
    public void A_class_on_one_size_buys_as_few_boards_as_a_general_solver_finds() =>
        OneSize.Sample(
            request =>
            {
                var fewest = OracleFor(request, [0, 0, 0, 0]).FewestBoards();
                if (fewest is null)
                    return;
                var plan = ClassPlannerTests.Plan(request);
                Assert.Equal(100 * fewest, plan.Cost);
                Assert.True(plan.Bound <= plan.Cost);
            },
            iter: 25,
            threads: 1
        );

    /// <summary>Every set of up to three boards of two sizes, cheapest first: the first that holds all is the optimum.</summary>
    [Fact]
    public void A_class_on_two_sizes_costs_what_trying_every_set_of_boards_costs() =>
        Gen.Select(
                Gen.Select(Gen.Int[2, 6], Gen.Int[2, 8]).Array[2, 2],
                Gen.Int[0, 1],
                Gen.Int[40, 90],
                (sizes, kerf, price) => Class(sizes, kerf, (7, 12, 100), (6, 8, price))
            )
            .Sample(
                request =>
                {
                    if (Cheapest(request) is not { } least)
                        return;
                    var plan = ClassPlannerTests.Plan(request);
                    Assert.True(plan.Bound <= least, $"bound {plan.Bound}, optimum {least}");
                    // Four and more small boards may cost less than the best three.
                    if (plan.Purchases.Sum(p => p.Count) <= 3)
                        Assert.Equal(least, plan.Cost);
                    else
                        Assert.True(plan.Cost <= least, $"cost {plan.Cost}, three boards {least}");
                },
                iter: 15,
                threads: 1
            );

    private static long? Cheapest(ClassRequest request)
    {
        var sets =
            from a in Enumerable.Range(0, 4)
            from b in Enumerable.Range(0, 4)
            where a + b is > 0 and < 4
            orderby a * request.Stock[0].Price + b * request.Stock[1].Price
            select Enumerable.Repeat(0, a).Concat(Enumerable.Repeat(1, b)).ToArray();
        foreach (var set in sets)
        {
            if (OracleFor(request, set).LeastLength(Unit) is not null)
                return set.Sum(s => request.Stock[s].Price);
        }

        return null;
    }

    private static SmallOracle OracleFor(ClassRequest request, int[] boards) =>
        new(
            [
                .. request.WholeClass.Parts.SelectMany(p =>
                    Enumerable.Repeat((p.Finished.Length, p.Finished.Width), p.Quantity)
                ),
            ],
            [.. boards.Select(b => (request.Stock[b].Length, request.Stock[b].Width))],
            request.Rules.CrosscutKerf,
            Unit
        );

    private static ClassRequest Class(
        (int Width, int Length)[] parts,
        int kerf,
        params (int Width, int Length, int Price)[] sizes
    ) =>
        new()
        {
            Project = new()
            {
                Name = "tiny",
                Parts =
                [
                    .. parts.Select(
                        (p, i) =>
                            Wood.Part(
                                $"{(char)('A' + i)}",
                                1,
                                Wood.Mm(20),
                                Wood.Mm(p.Width * 10),
                                Wood.Mm(p.Length * 10)
                            )
                    ),
                ],
            },
            Rules = Wood.Bare(Wood.Mm(kerf * 10)),
            Kits = 2,
            Stock =
            [
                .. sizes.Select(
                    (s, i) =>
                        RandomClasses.Size(
                            $"{i}",
                            Wood.Mm(s.Width * 10),
                            Wood.Mm(s.Length * 10),
                            s.Price
                        ) with
                        {
                            Surfacing = Core.Lumber.Surfacing.S2S,
                            Thickness = Wood.Mm(20),
                        }
                ),
            ],
            StepLimit = 300,
        };
}
