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

    /// <summary>Prices made anew at every turn, blank by blank only, board by board after no step and at once, and as usual.</summary>
    private static readonly Gen<CoverEffort> Efforts = Gen.OneOf(
        Gen.Const(new CoverEffort(2, int.MaxValue, int.MaxValue)),
        Gen.Const(new CoverEffort(80, int.MaxValue, int.MaxValue)),
        Gen.Const(new CoverEffort(80, -1, int.MaxValue)),
        Gen.Const(new CoverEffort(80, int.MaxValue, 0)),
        Gen.Const(CoverEffort.Usual)
    );

    [Fact]
    public void Prices_and_all_choices_lead_to_plans_of_the_same_worth() =>
        Gen.Select(RandomWood.Requests(parts: 5, boards: 3, defects: 0), Gen.Int[0, 3], Efforts)
            .Sample(
                (request, order, from) =>
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
                    var bySections = SectionSearch
                        .Over(bench, steps, from)!
                        .Solve(bench.Stocks, null);
                    Assert.True(bySections.IsSettled);
                    Assert.Equal(byChoices?.Cost, bySections.Plan?.Cost);
                    Assert.Equal(byChoices?.Length, bySections.Plan?.LengthUsed);
                },
                iter: 200,
                threads: 1
            );

    /// <summary>So many different blanks that sections are struck off by new prices while they are put together.</summary>
    [Fact]
    public void Nine_different_blanks_on_two_boards_cost_the_same_by_prices_and_by_all_choices() =>
        Gen.Select(Gen.Int[0, int.MaxValue], Efforts)
            .Sample(
                (seed, from) =>
                {
                    var random = new Random(seed);
                    var parts = Enumerable
                        .Range(0, 9)
                        .Select(i =>
                            Wood.Part(
                                $"{(char)('A' + i)}",
                                1,
                                Wood.Mm(20),
                                Wood.Mm(random.Next(30, 110)),
                                Wood.Mm(random.Next(60, 300))
                            )
                        )
                        .ToList();
                    var request = Wood.Ask(
                        Wood.Bare(Wood.Mm(3)),
                        [
                            Wood.Board("1", Wood.Mm(20), Wood.Mm(190), Wood.Mm(900)),
                            Wood.Board("2", Wood.Mm(20), Wood.Mm(140), Wood.Mm(700)),
                        ],
                        [.. parts]
                    );
                    var steps = new Steps(int.MaxValue, CancellationToken.None);
                    var bench = Core.Planning.Search.Bench.Lay(
                        request,
                        new SortedDictionary<string, int>(StringComparer.Ordinal)
                    );
                    var byChoices = ExactSearch.Over(bench, steps)!.OnClearWood(bench.Stocks);
                    var bySections = SectionSearch
                        .Over(bench, steps, from)!
                        .Solve(bench.Stocks, null);
                    Assert.True(bySections.IsSettled);
                    Assert.Equal(byChoices?.Cost, bySections.Plan?.Cost);
                    Assert.Equal(byChoices?.Length, bySections.Plan?.LengthUsed);
                },
                iter: 30,
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
