using CsCheck;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;

namespace ShopClass.Core.Tests.Planning;

public class OracleTests
{
    private static readonly Length Unit = Wood.Mm(10);

    /// <summary>Small cases on a grid of 10 mm, so that the solver's numbers stay small: kerf 0 or 10, trims, one or two boards.</summary>
    private static Gen<PlanningRequest> Cases(int boards) =>
        Gen.Select(
            Gen.Select(Gen.Int[2, 7], Gen.Int[2, 9]).Array[3, 5],
            Gen.Select(Gen.Int[6, 11], Gen.Int[9, 20], Gen.Int[0, 1], Gen.Int[0, 1]).Array[boards],
            Gen.Int[0, 1],
            (sizes, wood, kerf) =>
                Wood.Ask(
                    Wood.Bare(Wood.Mm(kerf * 10)),
                    [
                        .. wood.Select(
                            (w, i) =>
                                Wood.Board(
                                    $"{i + 1}",
                                    Wood.Mm(20),
                                    Wood.Mm(w.Item1 * 10),
                                    Wood.Mm(w.Item2 * 10)
                                ) with
                                {
                                    TrimStart = Wood.Mm(w.Item3 * 10),
                                    TrimEnd = Wood.Mm(w.Item4 * 10),
                                }
                        ),
                    ],
                    [
                        .. sizes.Select(
                            (s, i) =>
                                Wood.Part(
                                    $"{(char)('A' + i)}",
                                    1,
                                    Wood.Mm(20),
                                    Wood.Mm(s.Item1 * 10),
                                    Wood.Mm(s.Item2 * 10)
                                )
                        ),
                    ]
                )
        );

    private static SmallOracle OracleFor(PlanningRequest request) =>
        new(
            [.. request.Project.Parts.Select(p => (p.Finished.Length, p.Finished.Width))],
            [.. request.Boards.Select(b => (b.Length - b.TrimStart - b.TrimEnd, b.SmallestWidth))],
            request.Rules.CrosscutKerf,
            Unit
        );

    [Fact]
    public void On_one_board_the_least_length_is_what_a_general_solver_finds() =>
        Cases(1)
            .Sample(
                request =>
                {
                    request = request with { Goals = [PlanGoal.LengthUsed] };
                    var least = OracleFor(request).LeastLength(Unit);
                    var plan = Wood.Plan(request);
                    Assert.Equal(least is not null, plan.IsComplete);
                    if (least is not { } length)
                        return;
                    var goal = plan.Goals.Single();
                    Assert.Equal((length + request.Boards[0].TrimStart).Ticks, (long)goal.Value);
                    Assert.True(plan.IsBestPossible);
                },
                iter: 300,
                threads: 1
            );

    [Fact]
    public void On_two_boards_everything_fits_exactly_when_a_general_solver_says_so() =>
        Cases(2)
            .Sample(
                request =>
                {
                    var fewest = OracleFor(request).FewestBoards();
                    var plan = Wood.Plan(request);
                    Assert.Equal(fewest is not null, plan.IsComplete);
                    if (fewest is null)
                        return;
                    Assert.Equal(fewest, plan.Boards.Count);
                    Assert.True(plan.Goals[0].IsProven);
                },
                iter: 220,
                threads: 1
            );
}
