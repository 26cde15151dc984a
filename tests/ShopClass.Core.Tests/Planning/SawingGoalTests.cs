using CsCheck;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;

namespace ShopClass.Core.Tests.Planning;

public class SawingGoalTests
{
    private static readonly Gen<(int Kerf, int Width, int Length, (int, int)[] Sizes)> Cases =
        Gen.Select(
            Gen.Int[0, 3],
            Gen.Int[60, 130],
            Gen.Int[150, 320],
            Gen.Select(Gen.Int[20, 80], Gen.Int[30, 90]).Array[2, 5]
        );

    [Fact]
    public void The_sawing_of_a_best_plan_is_the_least_of_all_divisions() =>
        Cases.Sample(
            (kerf, width, length, sizes) =>
            {
                var rules = Wood.Bare(Wood.Mm(kerf)) with { NarrowestOffcut = Wood.Mm(30) };
                var board = Wood.Board("1", Wood.Mm(20), Wood.Mm(width), Wood.Mm(length));
                var request = Wood.Ask(
                    rules,
                    [board],
                    [
                        .. sizes.Select(
                            (s, i) =>
                                Wood.Part(
                                    $"{(char)('A' + i)}",
                                    1,
                                    Wood.Mm(20),
                                    Wood.Mm(s.Item1),
                                    Wood.Mm(s.Item2)
                                )
                        ),
                    ]
                ) with
                {
                    Goals = [PlanGoal.SawingEffort],
                };
                var least = new LeastSawing(
                    [.. sizes.Select(s => (Wood.Mm(s.Item2).Ticks, Wood.Mm(s.Item1).Ticks))],
                    board.Length.Ticks,
                    board.SmallestWidth.Ticks,
                    rules.RipKerf.Ticks,
                    rules.NarrowestOffcut.Ticks
                ).Find();
                var plan = Wood.Plan(request);
                Assert.Equal(least is not null, plan.IsComplete);
                if (least is null)
                    return;
                Assert.Equal(least.Value * board.Thickness.Ticks, plan.Goals[0].Value);
                Assert.True(plan.Goals[0].IsProven);
            },
            iter: 60,
            threads: 1
        );

    [Fact]
    public void A_rip_of_eight_square_inches_weighs_as_much_as_a_crosscut_of_six()
    {
        var rules = Wood.Bare(Length.Zero);
        Int128 Effort(
            Length width,
            Length length,
            int quantity,
            Length partWidth,
            Length partLength
        ) =>
            Wood.Plan(
                    Wood.Ask(
                        rules,
                        [Wood.Board("1", Wood.In(1), width, length)],
                        Wood.Part("A", quantity, Wood.In(1), partWidth, partLength)
                    ) with
                    {
                        Goals = [PlanGoal.SawingEffort],
                    }
                )
                .Goals[0]
                .Value;

        // One crosscut of 6 in frees the part; with the board 8 in long, ripped in two and crosscut once, 8 in more are ripped.
        var crosscut = Effort(Wood.In(6), Wood.In(9), 1, Wood.In(6), Wood.In(8));
        var withRip = Effort(Wood.In(6), Wood.In(9), 2, Wood.In(3), Wood.In(8));
        Assert.Equal(crosscut * 2, withRip);
    }
}
