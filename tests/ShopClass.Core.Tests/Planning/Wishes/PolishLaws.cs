using System.Text.Json;
using CsCheck;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Search;
using ShopClass.Core.Planning.Wishes;
using ShopClass.Core.Sawing;
using SearchBench = ShopClass.Core.Planning.Search.Bench;

namespace ShopClass.Core.Tests.Planning.Wishes;

public class PolishLaws
{
    private static readonly Gen<PlanningRequest> Requests = Gen.Select(
        RandomWood.Requests(parts: 4, boards: 2, defects: 3),
        Gen.Bool.Array[4],
        (request, shows) =>
            request with
            {
                Project = request.Project with
                {
                    Parts =
                    [
                        .. request.Project.Parts.Select((p, i) => p with { ShowFace = shows[i] }),
                    ],
                },
            }
    );

    [Fact]
    public void A_polished_plan_keeps_the_musts_and_every_goal_and_is_never_further_from_the_wishes() =>
        Requests.Sample(request => Check(request), iter: 250, threads: 1);

    [Theory]
    [MemberData(nameof(DemoPlanTests.All), MemberType = typeof(DemoPlanTests))]
    public void Whole_projects_too(string name, UnitSystem unit) =>
        Check(DemoProjects.Find(name, unit));

    [Fact]
    public void A_plan_with_something_missing_stays_as_it_is()
    {
        var request = Wood.Ask(
            Wood.Bare(Wood.Mm(2)),
            [Wood.Board("1", Wood.Mm(20), Wood.Mm(100), Wood.Mm(500))],
            Wood.Part("A", 2, Wood.Mm(20), Wood.Mm(100), Wood.Mm(300))
        );
        var plan = Wood.Plan(request);
        Assert.Same(plan, Polish.Of(request, plan));
    }

    private static void Check(PlanningRequest request)
    {
        var plan = new PlanSearch(request, null, TestContext.Current.CancellationToken).Run();
        if (!plan.IsComplete)
            return;
        var polished = Polish.Of(request, plan);
        Assert.Empty(LayoutProblems.In(request, polished));
        var report = Rehearsal.Replay(request, polished, Sequencer.Order(request, polished));
        Assert.Empty(
            report.Findings.Where(f => f.Kind is FindingKind.Must).Select(f => f.Sentence)
        );
        var bench = SearchBench.Lay(request, plan.GlueUps);
        Assert.Equal(Score.Of(bench, plan.Boards), Score.Of(bench, polished.Boards));
        Assert.True(Compare(request, polished, plan) <= 0);
        Assert.Equal(
            JsonSerializer.Serialize(polished),
            JsonSerializer.Serialize(Polish.Of(request, plan))
        );
    }

    private static int Compare(PlanningRequest request, CutPlan one, CutPlan other) =>
        CraftWishes
            .InOrder.Select(w =>
                w.FallsShortBy(LaidOut.Of(request, one.Boards)!)
                    .CompareTo(w.FallsShortBy(LaidOut.Of(request, other.Boards)!))
            )
            .FirstOrDefault(by => by != 0);
}
