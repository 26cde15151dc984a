using CsCheck;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Search;
using ShopClass.Core.Planning.Search.Pricing;

namespace ShopClass.Core.Tests.Planning;

/// <summary>Two searches that share neither their way nor their bounds must come to the same plans.</summary>
public class SectionSearchTests
{
    private static readonly IReadOnlyList<IReadOnlyList<PlanGoal>> Orders =
    [
        PlanGoals.Usual,
        [PlanGoal.LengthUsed, PlanGoal.SawingEffort, PlanGoal.Lines],
        [PlanGoal.SawingEffort, PlanGoal.LengthUsed, PlanGoal.Lines],
        [PlanGoal.LengthUsed, PlanGoal.Lines, PlanGoal.SawingEffort],
    ];

    [Fact]
    public void Prices_and_all_choices_lead_to_plans_of_the_same_worth() =>
        Gen.Select(RandomWood.Requests(parts: 5, boards: 3, defects: 0), Gen.Int[0, 3])
            .Sample(
                (request, order) =>
                {
                    var steps = new Steps(int.MaxValue, CancellationToken.None);
                    var bench = Core.Planning.Search.Bench.Lay(
                        request with
                        {
                            Goals = Orders[order],
                        },
                        new SortedDictionary<string, int>(StringComparer.Ordinal)
                    );
                    if (!bench.EachHasABoard)
                        return;
                    var byChoices = ExactSearch.Over(bench, steps)!.OnClearWood(bench.Stocks);
                    var bySections = SectionSearch.Over(bench, steps)!.Solve(bench.Stocks, null);
                    Assert.True(bySections.IsSettled);
                    Assert.Equal(byChoices?.Cost, bySections.Plan?.Cost);
                    Assert.Equal(byChoices?.Length, bySections.Plan?.LengthUsed);
                },
                iter: 200,
                threads: 1
            );

    [Fact]
    public void A_plan_known_already_only_saves_looking_for_one() =>
        RandomWood
            .Requests(parts: 5, boards: 2, defects: 0)
            .Sample(
                request =>
                {
                    var steps = new Steps(int.MaxValue, CancellationToken.None);
                    var bench = Core.Planning.Search.Bench.Lay(
                        request,
                        new SortedDictionary<string, int>(StringComparer.Ordinal)
                    );
                    if (!bench.EachHasABoard)
                        return;
                    var search = SectionSearch.Over(bench, steps)!;
                    if (search.Solve(bench.Stocks, null).Plan is not { } plan)
                        return;
                    var dearer = (plan.Cost + new Cost(plan.Cost.Effort / 2, 3), plan.LengthUsed);
                    var again = search.Solve(bench.Stocks, dearer);
                    Assert.True(again.IsSettled);
                    Assert.Equal(plan.Cost, again.Plan?.Cost);
                    Assert.Equal(plan.LengthUsed, again.Plan?.LengthUsed);
                },
                iter: 60,
                threads: 1
            );
}
