using CsCheck;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;
using Xunit;

namespace ShopClass.Core.Tests.Sawing;

/// <summary>The planner and the rehearsal were written apart; here they have to agree.</summary>
public class PlannedLaws
{
    [Fact]
    public void The_rehearsal_agrees_to_every_plan_the_planner_makes() =>
        RandomProjects.Any.Sample(
            request =>
            {
                var plan = Planner.Plan(request);
                var report = HandDrawn.Rehearse(request, plan);
                Assert.Equal([], report.Findings.Where(f => f.Kind is FindingKind.Must));
            },
            iter: 40,
            print: Print
        );

    [Fact]
    public void Every_board_that_is_cut_balances_to_the_tick() =>
        RandomProjects.Any.Sample(
            request =>
            {
                var plan = Planner.Plan(request);
                foreach (var b in HandDrawn.Rehearse(request, plan).Balances)
                    Assert.Equal(b.Board, b.Blanks + b.Kerf + b.Offcuts + b.Waste);
            },
            iter: 40,
            print: Print
        );

    private static string Print(PlanningRequest r) =>
        string.Join(
            '\n',
            r.Boards.Select(b => b.ToString() + string.Join(",", b.Defects))
                .Concat(r.Project.Parts.Select(p => p.ToString()))
        );
}
