using CsCheck;
using ShopClass.Core.Planning;
using Xunit;

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
                    var plan = Planner.Plan(request);
                    Assert.Empty(LayoutProblems.In(request, plan));
                    Assert.All(plan.Goals, g => Assert.True(g.Bound <= g.Value, $"{g}"));
                },
                iter: 100,
                threads: 1
            );
}
