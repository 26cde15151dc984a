using CsCheck;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Search;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Tests.Planning;

/// <summary>Layouts that take no long search, against every layout there is.</summary>
public class SoonLayoutTests
{
    private static Candidate? Soon(PlanningRequest request)
    {
        var bench = Core.Planning.Search.Bench.Lay(request, GlueUpChoices.For(request)[0]);
        var steps = new Steps(20_000, TestContext.Current.CancellationToken);
        return bench.EachHasABoard && new ClearSearch(bench, steps).Soon(bench.Stocks) is { } draft
            ? Candidate.Of(bench, draft)
            : null;
    }

    [Fact]
    public void A_layout_is_found_soon_nearly_whenever_there_is_one_and_never_otherwise() =>
        IsFoundSoon(BadPlaceCases.OnOneBoard, r => BadPlaceCases.BestOf(r) is not null);

    [Fact]
    public void So_it_is_on_two_boards_where_each_of_them_is_needed() =>
        IsFoundSoon(
            BadPlaceCases.OnTwoBoards.Where(r =>
                r.Boards.All(b => BadPlaceCases.BestOf(r with { Boards = [b] }) is null)
            ),
            r => BadPlaceCases.BestOf(r) is not null
        );

    private static void IsFoundSoon(Gen<PlanningRequest> requests, Func<PlanningRequest, bool> has)
    {
        var (found, there) = (0, 0);
        requests.Sample(
            request =>
            {
                var isThere = has(request);
                there += isThere ? 1 : 0;
                if (Soon(request) is not { } candidate)
                    return;
                found++;
                Assert.True(isThere);
                Assert.True(candidate.IsComplete);
                var plan = new CutPlan
                {
                    Boards = candidate.Boards,
                    Missing = candidate.Missing,
                    Goals = [],
                    StepsTaken = 0,
                };
                Assert.True(Rehearsal.Replay(request, plan, Sequencer.Order(request, plan)).Passed);
            },
            iter: 300,
            threads: 1
        );
        Assert.True(there > 0 && found * 20 >= there * 19, $"{found} of {there}");
    }
}
