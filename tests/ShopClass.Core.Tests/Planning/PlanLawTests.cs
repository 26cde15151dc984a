using System.Text.Json;
using CsCheck;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Tests.Planning;

public class PlanLawTests
{
    [Fact]
    public void Every_plan_keeps_the_musts_and_no_value_is_below_its_bound() =>
        RandomWood
            .Requests(parts: 4, boards: 2, defects: 3)
            .Sample(
                request =>
                {
                    var plan = Wood.Plan(request);
                    Assert.Empty(LayoutProblems.In(request, plan));
                    Assert.All(plan.Goals, g => Assert.True(g.Bound <= g.Value, $"{g}"));
                },
                iter: 60,
                threads: 1
            );

    [Fact]
    public void The_rehearsal_agrees_with_every_complete_plan() =>
        RandomWood
            .Requests(parts: 3, boards: 2, defects: 2)
            .Sample(
                request =>
                {
                    var plan = Wood.Plan(request);
                    if (!plan.IsComplete)
                        return;
                    var report = Rehearsal.Replay(request, plan, Sequencer.Order(request, plan));
                    Assert.Empty(
                        report
                            .Findings.Where(f => f.Kind is FindingKind.Must)
                            .Select(f => f.Sentence)
                    );
                },
                iter: 40,
                threads: 1
            );

    /// <summary>The area law: the parts' area over the board's width is a length no plan can go below.</summary>
    [Fact]
    public void No_plan_uses_less_wood_than_the_parts_have() =>
        RandomWood
            .Requests(parts: 3, boards: 1, defects: 2)
            .Sample(
                request =>
                {
                    var plan = Wood.Plan(request);
                    if (!plan.IsComplete)
                        return;
                    var parts = request.Project.Parts.Aggregate(
                        (Int128)0,
                        (sum, p) =>
                            sum + p.Quantity * (p.Finished.Width * p.Finished.Length).SquareTicks
                    );
                    var used = plan.Goals.Single(g => g.Goal is PlanGoal.LengthUsed);
                    Int128 width = request.Boards[0].SmallestWidth.Ticks;
                    Assert.True(used.Value * width >= parts);
                    Assert.True(
                        (used.Bound + request.Rules.CrosscutKerf.Ticks)
                            * (width + request.Rules.RipKerf.Ticks)
                            >= parts
                    );
                },
                iter: 40,
                threads: 1
            );

    [Fact]
    public void The_same_request_gives_the_same_plan_to_the_byte() =>
        RandomWood
            .Requests(parts: 3, boards: 2, defects: 2)
            .Sample(
                request =>
                    Assert.Equal(
                        JsonSerializer.Serialize(Wood.Plan(request)),
                        JsonSerializer.Serialize(Wood.Plan(request))
                    ),
                iter: 15,
                threads: 1
            );

    [Fact]
    public void The_order_of_the_parts_list_changes_no_value() =>
        RandomWood
            .Requests(parts: 4, boards: 2, defects: 0)
            .Sample(
                request =>
                {
                    var turned = request with
                    {
                        Project = request.Project with
                        {
                            Parts = [.. request.Project.Parts.Reverse()],
                        },
                    };
                    Assert.Equal(Wood.Plan(request).Goals, Wood.Plan(turned).Goals);
                },
                iter: 25,
                threads: 1
            );

    [Fact]
    public void A_course_in_inches_lays_out_the_same_wood_as_one_in_millimetres() =>
        RandomWood
            .Requests(parts: 4, boards: 1, defects: 0)
            .Sample(
                request =>
                {
                    var inch = request with
                    {
                        Rules = request.Rules with
                        {
                            Unit = UnitSystem.Inch,
                            Precision = Precision.Sixteenth,
                        },
                    };
                    var (metric, other) = (Wood.Plan(request), Wood.Plan(inch));
                    Assert.Equal(metric.Goals, other.Goals);
                    Assert.Equal(AlongTheBoards(metric), AlongTheBoards(other));
                },
                iter: 40,
                threads: 1
            );

    /// <summary>Where every section and blank begins and ends; lines across a board fall on each course's own precision.</summary>
    private static IEnumerable<(string, Length, Length)> AlongTheBoards(CutPlan plan) =>
        from layout in plan.Boards
        from section in layout.Sections
        from place in section
            .Strips.SelectMany(s => s.Blanks)
            .Select(b => (b.Key.Part, b.From, b.To))
            .Order()
            .Prepend((layout.BoardId, section.From, section.To))
        select place;

    [Fact]
    public void A_longer_clear_board_never_makes_the_bound_worse() =>
        RandomWood
            .Requests(parts: 3, boards: 1, defects: 0)
            .Sample(
                request =>
                {
                    var goals = new[]
                    {
                        PlanGoal.SawingEffort,
                        PlanGoal.Lines,
                        PlanGoal.LengthUsed,
                    };
                    foreach (var goal in goals)
                    {
                        var asked = request with { Goals = [goal] };
                        var longer = asked with
                        {
                            Boards =
                            [
                                asked.Boards[0] with
                                {
                                    Length = asked.Boards[0].Length + Wood.Mm(100),
                                },
                            ],
                        };
                        var before = Wood.Plan(asked);
                        if (before.IsComplete)
                            Assert.True(Wood.Plan(longer).Goals[0].Bound <= before.Goals[0].Bound);
                    }
                },
                iter: 15,
                threads: 1
            );

    [Fact]
    public void A_bad_place_in_the_waste_changes_no_value() =>
        RandomWood
            .Requests(parts: 3, boards: 1, defects: 0)
            .Sample(
                request =>
                {
                    var plan = Wood.Plan(request);
                    var board = request.Boards[0];
                    if (!plan.IsComplete)
                        return;
                    var end = plan.Boards[0].Sections[^1].To + request.Rules.CrosscutKerf;
                    if (end >= board.Length - board.TrimEnd)
                        return;
                    var knot = new Defect(
                        DefectKind.Knot,
                        new(end, board.Length, Length.Zero, board.SmallestWidth)
                    );
                    var knotty = request with { Boards = [board with { Defects = [knot] }] };
                    Assert.Equal(
                        plan.Goals.Select(g => g.Value),
                        Wood.Plan(knotty).Goals.Select(g => g.Value)
                    );
                },
                iter: 40,
                threads: 1
            );
}
