using ShopClass.Core.Planning;

namespace ShopClass.Core.Tests.Planning;

public sealed class PracticePlanTests
{
    [Fact]
    public void It_is_a_whole_plan_that_takes_little_search()
    {
        var made = PracticePlan.Make(TestContext.Current.CancellationToken);

        Assert.True(made.Plan.IsComplete);
        Assert.True(made.Rehearsal.Passed);
        Assert.InRange(made.Plan.StepsTaken, 1, 40_000);
    }
}
