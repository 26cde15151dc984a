using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using Xunit;

namespace ShopClass.Core.Tests.Lumber;

public class SellerSizesTests
{
    // American Softwood Lumber Standard PS 20, Table 3, minimum dry dressed sizes, written out from memory of the standard.
    [Theory]
    [InlineData("1x4", 3, 4, 3, 1, 2)]
    [InlineData("1x6", 3, 4, 5, 1, 2)]
    [InlineData("1x8", 3, 4, 7, 1, 4)]
    [InlineData("1x10", 3, 4, 9, 1, 4)]
    [InlineData("1x12", 3, 4, 11, 1, 4)]
    public void A_seller_s_name_stands_for_the_size_of_the_standard(
        string name,
        int thicknessOver,
        int thicknessUnder,
        int width,
        int over,
        int under
    )
    {
        var size = Assert.Single(SellerSizes.For(UnitSystem.Inch), s => s.Name == name);

        Assert.Equal(Length.FromInches(0, thicknessOver, thicknessUnder), size.Thickness);
        Assert.Equal(Length.FromInches(width, over, under), size.Width);
        Assert.StartsWith("PS 20", size.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void Metric_sizes_say_that_they_are_practice_and_from_memory() =>
        Assert.All(
            SellerSizes.For(UnitSystem.Metric),
            size =>
            {
                Assert.Equal(Basis.Memory, size.Basis);
                Assert.Contains("practice", size.Source, StringComparison.Ordinal);
            }
        );

    // Practice, from memory: lumber is kept in even feet from 6 to 16, or by 300 mm.
    [Fact]
    public void Lengths_are_the_ones_sellers_keep()
    {
        Assert.Equal(
            [6, 8, 10, 12, 14, 16],
            SellerSizes
                .LengthsFor(UnitSystem.Inch)
                .Select(l => l.Ticks / Length.FromInches(12).Ticks)
        );
        var metric = SellerSizes.LengthsFor(UnitSystem.Metric);
        Assert.Equal(
            (Length.FromMillimetres(1800), Length.FromMillimetres(5400)),
            (metric[0], metric[^1])
        );
        Assert.All(
            metric,
            l =>
                Assert.Equal(
                    Length.Zero,
                    Length.FromTicks(l.Ticks % Length.FromMillimetres(300).Ticks)
                )
        );
    }
}
