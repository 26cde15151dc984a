using CsCheck;
using ShopClass.Core.Planning;

namespace ShopClass.Core.Tests.Planning;

public class ProvenImpossibleTests
{
    private static PlanningRequest Ask(int boardLength, params (int Length, int Width)[] parts) =>
        Wood.Ask(
            Wood.Bare(Wood.Mm(0)),
            [Wood.Board("1", Wood.Mm(20), Wood.Mm(100), Wood.Mm(boardLength))],
            [
                .. parts.Select(
                    (p, i) =>
                        Wood.Part(
                            $"{(char)('A' + i)}",
                            1,
                            Wood.Mm(20),
                            Wood.Mm(p.Width),
                            Wood.Mm(p.Length)
                        )
                ),
            ]
        );

    [Fact]
    public void A_board_that_is_too_short_by_argument_is_proven_impossible()
    {
        var plan = Wood.Plan(Ask(399, (200, 60), (200, 60)));
        Assert.True(plan.IsProvenImpossible);
        Assert.False(plan.IsComplete);
    }

    [Fact]
    public void A_board_that_no_layout_fills_is_proven_impossible_without_an_argument_in_words()
    {
        // 300 x 100 board; A and B lie beside each other, C and D need 101 of the length after them, 100 are left: area would do.
        var request = Ask(300, (200, 50), (200, 50), (50, 60), (51, 60));
        var plan = Wood.Plan(request);
        Assert.Empty(Core.Planning.Reasons.Impossibilities.Of(request));
        Assert.True(plan.IsProvenImpossible);
        Assert.True(Verdicts.Judge(request, plan).IsProven);
    }

    [Fact]
    public void A_search_that_ends_early_proves_nothing()
    {
        var plan = Wood.Plan(
            Ask(300, (200, 50), (200, 50), (50, 60), (51, 60)) with
            {
                StepLimit = 1,
            }
        );
        Assert.False(plan.IsComplete);
        Assert.False(plan.IsProvenImpossible);
    }

    [Fact]
    public void What_is_proven_impossible_does_not_fit_by_a_general_solver_either() =>
        Gen.Select(Gen.Int[2, 7], Gen.Int[2, 9])
            .Array[3, 5]
            .Select(Gen.Int[9, 20])
            .Sample(
                drawn =>
                {
                    var (sizes, length) = drawn;
                    var request = Ask(
                        length * 10,
                        [.. sizes.Select(s => (s.Item1 * 10, s.Item2 * 10))]
                    );
                    var plan = Wood.Plan(request);
                    var oracle = new SmallOracle(
                        [
                            .. request.Project.Parts.Select(p =>
                                (p.Finished.Length, p.Finished.Width)
                            ),
                        ],
                        [(request.Boards[0].Length, request.Boards[0].SmallestWidth)],
                        request.Rules.CrosscutKerf,
                        Wood.Mm(10)
                    );
                    Assert.Equal(oracle.LeastLength(Wood.Mm(10)) is null, plan.IsProvenImpossible);
                    Assert.NotEqual(plan.IsComplete, plan.IsProvenImpossible);
                },
                iter: 30,
                threads: 1
            );
}
