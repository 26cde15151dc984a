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
                var made = CheckedPlan.Make(request);
                Assert.Equal([], made.Rehearsal.Findings.Where(f => f.Kind is FindingKind.Must));
                foreach (var b in made.Rehearsal.Balances)
                    Assert.Equal(b.Board, b.Blanks + b.Kerf + b.Offcuts + b.Waste);
            },
            iter: 30,
            print: Print
        );

    [Fact]
    public void Every_blank_is_made_once_or_named_as_missing() =>
        RandomProjects.Any.Sample(
            request =>
            {
                var made = CheckedPlan.Make(request);
                var there = made
                    .Rehearsal.Steps[^1]
                    .Pieces.Select(p => p.Blank)
                    .OfType<BlankKey>()
                    .Concat(made.Plan.Missing);
                Assert.Equal(
                    request.Project.Parts.SelectMany(p =>
                        Enumerable.Range(1, p.Quantity).Select(copy => (p.Letter, copy))
                    ),
                    there.Select(k => (k.Part, k.Copy)).Distinct().Order()
                );
            },
            iter: 12,
            print: Print
        );

    private static string Print(PlanningRequest r) =>
        string.Join(
            '\n',
            r.Boards.Select(b => b.ToString() + string.Join(",", b.Defects))
                .Concat(r.Project.Parts.Select(p => p.ToString()))
        );
}
