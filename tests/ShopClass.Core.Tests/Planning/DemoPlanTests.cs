using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Tests.Planning;

public class DemoPlanTests
{
    public static TheoryData<string, UnitSystem> All =>
        new MatrixTheoryData<string, UnitSystem>(
            ["bench hook", "tool tote", "wall shelf", "planter", "peg rail"],
            [UnitSystem.Inch, UnitSystem.Metric]
        );

    [Theory]
    [MemberData(nameof(All))]
    public void A_clear_board_that_will_do_gets_the_best_plan(string name, UnitSystem unit)
    {
        var request = DemoProjects.Find(name, unit);
        var plan = Wood.Plan(request);
        Assert.Empty(LayoutProblems.In(request, plan));
        Assert.Empty(plan.Missing);
        Assert.True(plan.IsBestPossible, string.Join(", ", plan.Goals));
        Assert.True(Rehearsal.Replay(request, plan, Sequencer.Order(request, plan)).Passed);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void A_knot_in_the_first_third_is_worked_round(string name, UnitSystem unit)
    {
        var request = DemoProjects.Find(name, unit);
        var first = request.Boards[0];
        var third = Length.FromTicks(first.Length.Ticks / 3);
        var knot = new Defect(
            DefectKind.Knot,
            new(third, third + Wood.Mm(20), Length.Zero, Wood.Mm(20))
        );
        // Half as much length again is ample for working round one knot of 20 mm.
        var longer = first with
        {
            Length = first.Length + Length.FromTicks(first.Length.Ticks / 2),
            Defects = [knot],
        };
        var knotty = request with { Boards = [longer, .. request.Boards.Skip(1)] };
        var plan = Wood.Plan(knotty);
        Assert.Empty(LayoutProblems.In(knotty, plan));
        Assert.Empty(plan.Missing);
        Assert.True(Rehearsal.Replay(knotty, plan, Sequencer.Order(knotty, plan)).Passed);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Rough_stock_thick_enough_does_too(string name, UnitSystem unit)
    {
        var request = DemoProjects.Find(name, unit);
        var rough = request with
        {
            Boards =
            [
                .. request.Boards.Select(b =>
                    b with
                    {
                        Surfacing = Surfacing.Rough,
                        Thickness = b.Thickness + Wood.Mm(6),
                        Length = b.Length + b.Length,
                    }
                ),
            ],
        };
        var plan = Wood.Plan(rough);
        Assert.Empty(LayoutProblems.In(rough, plan));
        Assert.Empty(plan.Missing);
    }
}
