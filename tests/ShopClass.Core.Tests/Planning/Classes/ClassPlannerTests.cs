using CsCheck;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Classes;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing;
using Xunit;

namespace ShopClass.Core.Tests.Planning.Classes;

public class ClassPlannerTests
{
    [Fact]
    public void Every_kit_is_whole_and_every_board_passes_the_rehearsal() =>
        RandomClasses.Any.Sample(
            request =>
            {
                var plan = Plan(request);
                Assert.Empty(ClassRehearsal.Replay(request, plan).Findings);
                Assert.True(plan.Bound <= plan.Cost);
                Assert.Equal(CostOf(request, plan), plan.Cost);
            },
            iter: 12,
            threads: 1
        );

    [Fact]
    public void The_whole_class_as_one_makers_plan_passes_the_rehearsal()
    {
        var request = Shelves(4) with { SpareKits = 1 };
        var plan = Plan(request);
        var (ask, cut) = plan.AsOneMaker(request);
        Assert.True(Rehearsal.Replay(ask, cut, Sequencer.Order(ask, cut)).Passed);
    }

    [Theory]
    [InlineData(KitWay.Pooled)]
    [InlineData(KitWay.WholeBoards)]
    public void The_same_request_gives_the_same_plan_to_the_byte(KitWay way)
    {
        var request = Shelves(5) with { Way = way };
        Assert.Equal(Text(Plan(request)), Text(Plan(request)));
    }

    [Fact]
    public void With_whole_boards_no_board_serves_two_kits()
    {
        var request = Shelves(3) with { Way = KitWay.WholeBoards };
        var plan = Plan(request);
        Assert.True(plan.IsComplete);
        foreach (var board in plan.Boards)
            Assert.All(board.Blanks, b => Assert.Equal(board.Kit, request.KitOf(b.Key)));
    }

    [Fact]
    public void Pooling_is_never_dearer_than_whole_boards() =>
        RandomClasses.Any.Sample(
            request =>
            {
                var whole = Plan(request with { Way = KitWay.WholeBoards });
                if (whole.IsComplete)
                    Assert.True(Plan(request).Bound <= whole.Cost);
            },
            iter: 8,
            threads: 1
        );

    [Fact]
    public void What_runs_short_is_named()
    {
        var request = Shelves(3);
        var none = request with { Stock = [request.Stock[0] with { Available = 1 }] };
        var plan = Plan(none);
        Assert.False(plan.IsComplete);
        Assert.Equal(1, plan.Purchases.Sum(p => p.Count));
        Assert.Empty(ClassRehearsal.Replay(none, plan).Findings);
    }

    [Fact]
    public void Free_wood_on_the_rack_is_used_first()
    {
        var request = Shelves(2);
        var plan = Plan(request);
        var board = request.Stock[^1].ToBoard("r", "Rack board", request.Rules);
        var with = request with { Rack = [new RackBoard(board)] };
        Assert.True(Plan(with).Cost < plan.Cost);
    }

    [Fact]
    public void A_board_with_a_knot_is_laid_out_clear_of_it()
    {
        var request = Shelves(2);
        var board = request.Stock[^1].ToBoard("r", "Rack board", request.Rules) with
        {
            Defects = [new(DefectKind.Knot, new(Wood.In(30), Wood.In(31), Wood.In(2), Wood.In(3)))],
        };
        var with = request with { Rack = [new RackBoard(board)] };
        var plan = Plan(with);
        Assert.Contains(plan.Boards, b => b.StockSizeId is null);
        Assert.Empty(ClassRehearsal.Replay(with, plan).Findings);
    }

    [Fact]
    public void Nobody_to_buy_for_costs_nothing()
    {
        var plan = Plan(Shelves(0));
        Assert.True(plan.IsBestPossible);
        Assert.Empty(plan.Purchases);
    }

    [Fact]
    public void Copies_are_numbered_kit_by_kit()
    {
        var request = Shelves(3) with
        {
            SpareParts = new Dictionary<string, int>(StringComparer.Ordinal) { ["A"] = 1 },
        };
        Assert.Equal(1, request.KitOf(new BlankKey("A", 2)));
        Assert.Equal(3, request.KitOf(new BlankKey("A", 6)));
        Assert.Equal(0, request.KitOf(new BlankKey("A", 7)));
    }

    internal static ClassPlan Plan(ClassRequest request) =>
        ClassPlanner.Plan(request, cancel: TestContext.Current.CancellationToken);

    internal static ClassRequest Shelves(int kits) =>
        new()
        {
            Project = new()
            {
                Name = "wall shelf",
                Parts =
                [
                    Wood.Part("A", 2, Wood.In(0, 3, 4), Wood.In(6), Wood.In(18)),
                    Wood.Part("B", 2, Wood.In(0, 3, 4), Wood.In(6), Wood.In(23)),
                    Wood.Part("C", 1, Wood.In(0, 3, 4), Wood.In(2), Wood.In(23)),
                ],
            },
            Rules = Core.Courses.CourseRules.DefaultsFor(UnitSystem.Inch),
            Kits = kits,
            Stock =
            [
                RandomClasses.Size("0", Wood.In(7, 1, 4), Wood.In(96), 1100),
                RandomClasses.Size("1", Wood.In(9, 1, 4), Wood.In(96), 1500),
                RandomClasses.Size("2", Wood.In(7, 1, 4), Wood.In(120), 1450),
            ],
            StepLimit = 400,
        };

    private static long CostOf(ClassRequest request, ClassPlan plan) =>
        plan.Purchases.Sum(p => p.Cost)
        + request
            .Rack.Where(r =>
                plan.Boards.Any(b => b.StockSizeId is null && b.Board.Id == r.Board.Id)
            )
            .Sum(r => r.Value);

    private static string Text(ClassPlan plan) => System.Text.Json.JsonSerializer.Serialize(plan);
}
