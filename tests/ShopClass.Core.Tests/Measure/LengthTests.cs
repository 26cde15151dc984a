using ShopClass.Core.Measure;
using Xunit;

namespace ShopClass.Core.Tests.Measure;

public class LengthTests
{
    // International yard and pound agreement, 1959: a yard is 0.9144 m exactly, so an inch is 25.4 mm exactly.
    [Fact]
    public void An_inch_is_25_4_millimetres_exactly()
    {
        Assert.Equal(Length.FromHundredthsOfMillimetre(2540), Length.FromInches(1));
        Assert.Equal(Length.FromHundredthsOfMillimetre(91_440), Length.FromInches(36));
    }

    [Fact]
    public void Every_sixty_fourth_and_every_hundredth_of_a_millimetre_is_whole()
    {
        Assert.Equal(635, Length.FromInches(0, 1, 64).Ticks);
        Assert.Equal(16, Length.FromHundredthsOfMillimetre(1).Ticks);
    }

    [Fact]
    public void A_third_of_an_inch_is_refused() =>
        Assert.Throws<ArgumentException>(() => Length.FromInches(0, 1, 3));

    [Fact]
    public void The_default_is_zero() => Assert.Equal(Length.Zero, default);

    [Fact]
    public void Leaving_the_range_throws()
    {
        var longest = Length.FromTicks(long.MaxValue);
        Assert.Throws<OverflowException>(() => longest + Length.FromTicks(1));
        Assert.Throws<OverflowException>(() => longest * 2);
    }

    [Fact]
    public void A_length_cannot_be_shared_among_none_or_be_less_than_nothing()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Length.FromInches(1).Split(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Length.FromInches(-1).Split(2));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            Length.FromInches(1).RoundDownTo(Length.Zero)
        );
    }

    [Fact]
    public void A_square_foot_is_144_square_inches() =>
        Assert.Equal(
            144 * (Length.FromInches(1) * Length.FromInches(1)).SquareTicks,
            (Length.FromInches(12) * Length.FromInches(12)).SquareTicks
        );
}
