using ShopClass.Web.Features.Plans;

namespace ShopClass.Web.Tests.Plans;

public class CutStepsTests
{
    [Theory]
    [InlineData("ArrowRight", 2)]
    [InlineData("ArrowLeft", 1)]
    [InlineData("End", 4)]
    [InlineData("Home", 1)]
    [InlineData("x", 1)]
    public void Keys_step_from_the_first_of_three_cuts(string key, int expected)
    {
        var steps = new CutSteps(cuts: 3);

        var moved = steps.Press(key);

        Assert.Equal(expected, steps.Current);
        Assert.Equal(expected != 1, moved);
    }

    [Fact]
    public void One_place_past_the_last_cut_shows_that_all_are_made()
    {
        var steps = new CutSteps(cuts: 3);

        steps.GoTo(99);

        Assert.True(steps.IsDone);
        Assert.False(steps.HasNext);
        Assert.Equal("All 3 cuts made", steps.Words);
    }
}
