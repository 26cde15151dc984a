using ShopClass.Web.Features.Plans;

namespace ShopClass.Web.Tests.Plans;

public class StepPlaceTests
{
    [Theory]
    [InlineData("ArrowRight", 2)]
    [InlineData("ArrowLeft", 1)]
    [InlineData("End", 3)]
    [InlineData("Home", 1)]
    [InlineData("x", 1)]
    public void Keys_go_from_the_first_of_three_steps(string key, int expected)
    {
        var place = new StepPlace(steps: 3);

        var moved = place.Press(key);

        Assert.Equal(expected, place.Current);
        Assert.Equal(expected != 1, moved);
    }

    [Fact]
    public void There_is_nothing_past_the_last_step()
    {
        var place = new StepPlace(steps: 3);

        place.GoTo(99);

        Assert.False(place.HasNext);
        Assert.Equal("Step 3 of 3", place.Words);
    }
}
