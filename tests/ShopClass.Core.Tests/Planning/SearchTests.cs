using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Tests.Planning;

public class SearchTests
{
    [Fact]
    public void A_cancelled_search_still_hands_over_a_plan_that_keeps_the_musts()
    {
        var request = DemoProjects.Find("planter", UnitSystem.Inch);
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        var plan = Planner.Plan(request, cancel: stop.Token);
        Assert.Empty(LayoutProblems.In(request, plan));
        Assert.NotEmpty(plan.Boards);
        Assert.False(plan.IsBestPossible);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(20)]
    [InlineData(200)]
    public void A_search_cut_short_claims_no_proof_it_has_not_got(int steps)
    {
        var request = DemoProjects.Find("planter", UnitSystem.Inch);
        var best = Wood.Plan(request);
        var plan = Wood.Plan(request with { StepLimit = steps });
        Assert.Empty(LayoutProblems.In(request, plan));
        Assert.InRange(plan.StepsTaken, 0, steps);
        if (plan.IsBestPossible)
            Assert.Equal(best.Goals, plan.Goals);
        Assert.All(
            plan.Goals.Zip(best.Goals).Take(3),
            g => Assert.True(g.First.Bound <= g.Second.Value)
        );
    }

    [Fact]
    public void Progress_tells_of_each_better_plan()
    {
        var told = new Told();
        var plan = Planner.Plan(
            DemoProjects.Find("planter", UnitSystem.Inch),
            told,
            TestContext.Current.CancellationToken
        );
        Assert.NotEmpty(told.Reports);
        Assert.Equal(
            plan.Goals.Select(g => g.Value),
            told.Reports[^1].Best.Goals.Select(g => g.Value)
        );
    }

    [Fact]
    public void What_does_not_fit_is_named_and_as_much_as_possible_is_placed()
    {
        var request = Wood.Ask(
            Wood.Bare(Length.Zero),
            [Wood.Board("1", Wood.Mm(20), Wood.Mm(100), Wood.Mm(500))],
            Wood.Part("A", 3, Wood.Mm(20), Wood.Mm(100), Wood.Mm(200)),
            Wood.Part("B", 1, Wood.Mm(20), Wood.Mm(100), Wood.Mm(100))
        );
        Assert.Equal(["A3"], Wood.Plan(request).Missing.Select(m => m.ToString()));
    }

    [Fact]
    public void No_boards_or_no_parts_give_an_empty_plan()
    {
        var none = Wood.Ask(
            Wood.Bare(Length.Zero),
            [],
            Wood.Part("A", 1, Wood.Mm(20), Wood.Mm(10), Wood.Mm(10))
        );
        Assert.Equal(["A1"], Wood.Plan(none).Missing.Select(m => m.ToString()));
        var empty = Wood.Ask(
            Wood.Bare(Length.Zero),
            [Wood.Board("1", Wood.Mm(20), Wood.Mm(100), Wood.Mm(500))]
        );
        Assert.Empty(Wood.Plan(empty).Boards);
    }

    /// <summary>Sixty rows is the longest parts list there may be (<see cref="PartChecks.MostParts"/>).</summary>
    [Fact]
    public void The_longest_parts_list_still_gets_a_plan_that_keeps_the_musts()
    {
        var parts = Enumerable
            .Range(0, PartChecks.MostParts)
            .Select(i =>
                Wood.Part(
                    $"{(char)('A' + i / 26)}{(char)('A' + i % 26)}",
                    2,
                    Wood.Mm(20),
                    Wood.Mm(40 + i),
                    Wood.Mm(150 + i * 3)
                )
            );
        var request = Wood.Ask(
            Wood.Bare(Wood.Mm(2)),
            [
                .. Enumerable
                    .Range(1, 4)
                    .Select(i => Wood.Board($"{i}", Wood.Mm(20), Wood.Mm(250), Wood.Mm(4000))),
            ],
            [.. parts]
        );
        var plan = Wood.Plan(request);
        Assert.Empty(LayoutProblems.In(request, plan));
        Assert.NotEmpty(plan.Boards);
        Assert.False(plan.IsBestPossible);
    }

    private sealed class Told : IProgress<PlanProgress>
    {
        public List<PlanProgress> Reports { get; } = [];

        public void Report(PlanProgress value) => Reports.Add(value);
    }
}
