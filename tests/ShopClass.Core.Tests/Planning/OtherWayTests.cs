using System.Text.Json;
using CsCheck;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Alternatives;

namespace ShopClass.Core.Tests.Planning;

public class OtherWayTests
{
    // A board that takes A and B one after the other without a rip, or side by side with one.
    private static readonly PlanningRequest EitherWay = Wood.Ask(
        Wood.Bare(Wood.Mm(2)),
        [Wood.Board("1", Wood.Mm(20), Wood.Mm(100), Wood.Mm(650))],
        Wood.Part("A", 1, Wood.Mm(20), Wood.Mm(60), Wood.Mm(300)),
        Wood.Part("B", 1, Wood.Mm(20), Wood.Mm(38), Wood.Mm(300))
    );

    private static IReadOnlyList<OtherWay> Ways(PlanningRequest request) =>
        OtherWays.Of(request, cancel: TestContext.Current.CancellationToken);

    private static Int128 Value(OtherWay way, PlanGoal goal) =>
        way.Plan.Plan.Goals.Single(g => g.Goal == goal).Value;

    [Fact]
    public void Less_sawing_and_a_bigger_offcut_are_two_ways()
    {
        var ways = Ways(EitherWay);

        Assert.Equal([WayKind.Usual, WayKind.BiggestOffcut], ways.Select(w => w.Kind));
        // One after the other: 300 + 2 + 300. Side by side, 60 + 2 + 38: 300.
        Assert.Equal(
            [Wood.Mm(602).Ticks, Wood.Mm(300).Ticks],
            ways.Select(w => (long)Value(w, PlanGoal.LengthUsed))
        );
        Assert.True(Value(ways[0], PlanGoal.SawingEffort) < Value(ways[1], PlanGoal.SawingEffort));
        Assert.Equal(PlanGoal.LengthUsed, ways[1].Plan.Request.Goals[0]);
    }

    [Fact]
    public void Where_the_board_allows_one_layout_there_is_one_way()
    {
        var board = EitherWay.Boards[0] with { Length = Wood.Mm(300) };
        Assert.Single(Ways(EitherWay with { Boards = [board] }));
    }

    [Fact]
    public void A_board_too_small_has_no_ways()
    {
        var board = EitherWay.Boards[0] with { Length = Wood.Mm(299) };
        Assert.Empty(Ways(EitherWay with { Boards = [board] }));
    }

    [Fact]
    public void Every_way_has_all_goals_its_own_first()
    {
        foreach (var kind in WayKinds.All)
            Assert.Equal(PlanGoals.Usual.Order(), kind.Goals().Order());
        Assert.Equal(PlanGoals.Usual, WayKind.Usual.Goals());
        Assert.Equal(4, WayKinds.All.Select(k => k.Goals()[0]).Distinct().Count());
    }

    [Fact]
    public void Ways_are_whole_rehearsed_different_and_each_best_at_what_it_puts_first() =>
        RandomWood
            .Requests(parts: 4, boards: 2, defects: 2)
            .Sample(request => Check(request, Ways(request)), iter: 40, threads: 1);

    [Theory]
    [MemberData(nameof(DemoPlanTests.All), MemberType = typeof(DemoPlanTests))]
    public void Whole_projects_too(string name, UnitSystem unit)
    {
        var request = DemoProjects.Find(name, unit);
        var ways = Ways(request);
        Assert.InRange(ways.Count, 1, OtherWays.Most);
        Check(request, ways);
    }

    [Fact]
    public void The_same_request_has_the_same_ways_to_the_byte() =>
        Assert.Equal(
            JsonSerializer.Serialize(Ways(EitherWay)),
            JsonSerializer.Serialize(Ways(EitherWay))
        );

    [Fact]
    public void Stopping_leaves_no_half_answer()
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        Assert.Throws<OperationCanceledException>(() =>
            OtherWays.Of(EitherWay, cancel: stopped.Token)
        );
    }

    [Fact]
    public void Progress_never_runs_back_nor_past_the_limit()
    {
        var told = new Told();
        OtherWays.Of(EitherWay, told, TestContext.Current.CancellationToken);
        Assert.NotEmpty(told.Steps);
        Assert.Equal(told.Steps.Order(), told.Steps);
        Assert.InRange(told.Steps[^1], 1, EitherWay.StepLimit);
    }

    private static void Check(PlanningRequest request, IReadOnlyList<OtherWay> ways)
    {
        Assert.Equal(ways.Count, ways.Select(w => w.Kind).Distinct().Count());
        foreach (var way in ways)
        {
            Assert.True(way.Plan.Plan.IsComplete);
            Assert.True(way.Plan.Rehearsal.Passed);
            Assert.Empty(LayoutProblems.In(request, way.Plan.Plan));
            var first = way.Kind.Goals()[0];
            foreach (var other in ways.Where(o => o != way))
            {
                Assert.True(Value(way, first) <= Value(other, first));
                Assert.False(OtherWays.AreAlike(way.Plan.Plan, other.Plan.Plan));
                Assert.NotEqual(
                    JsonSerializer.Serialize(way.Plan.Plan.Boards),
                    JsonSerializer.Serialize(other.Plan.Plan.Boards)
                );
            }
        }
    }

    private sealed class Told : IProgress<PlanProgress>
    {
        public List<int> Steps { get; } = [];

        public void Report(PlanProgress value) => Steps.Add(value.StepsTaken);
    }
}
