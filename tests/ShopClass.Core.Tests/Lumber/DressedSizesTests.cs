using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using Xunit;

namespace ShopClass.Core.Tests.Lumber;

public class DressedSizesTests
{
    // American Softwood Lumber Standard DOC PS 20 (PS 20-20), Table 3, minimum dry dressed sizes in inches.
    // The 2-inch rows were read as NDS Supplement 2018 Table 1A, which carries the same sizes; 1x4 to 1x12 were read
    // on secondary pages (1x5 aside); the rows marked Memory are from memory.
    [Theory]
    [InlineData("1x2", "1", "2", "3/4", "1 1/2", Basis.Memory)]
    [InlineData("1x3", "1", "3", "3/4", "2 1/2", Basis.Memory)]
    [InlineData("1x4", "1", "4", "3/4", "3 1/2", Basis.Read)]
    [InlineData("1x5", "1", "5", "3/4", "4 1/2", Basis.Memory)]
    [InlineData("1x6", "1", "6", "3/4", "5 1/2", Basis.Read)]
    [InlineData("1x8", "1", "8", "3/4", "7 1/4", Basis.Read)]
    [InlineData("1x10", "1", "10", "3/4", "9 1/4", Basis.Read)]
    [InlineData("1x12", "1", "12", "3/4", "11 1/4", Basis.Read)]
    [InlineData("5/4x6", "1 1/4", "6", "1", "5 1/2", Basis.Memory)]
    [InlineData("6/4x8", "1 1/2", "8", "1 1/4", "7 1/4", Basis.Memory)]
    [InlineData("2x2", "2", "2", "1 1/2", "1 1/2", Basis.Read)]
    [InlineData("2x3", "2", "3", "1 1/2", "2 1/2", Basis.Read)]
    [InlineData("2x4", "2", "4", "1 1/2", "3 1/2", Basis.Read)]
    [InlineData("2x6", "2", "6", "1 1/2", "5 1/2", Basis.Read)]
    [InlineData("2x8", "2", "8", "1 1/2", "7 1/4", Basis.Read)]
    [InlineData("2x10", "2", "10", "1 1/2", "9 1/4", Basis.Read)]
    [InlineData("2x12", "2", "12", "1 1/2", "11 1/4", Basis.Read)]
    public void A_nominal_size_stands_for_the_dressed_size_of_PS_20(
        string nominal,
        string nominalThickness,
        string nominalWidth,
        string thickness,
        string width,
        Basis basis
    )
    {
        var size = DressedSizes.TypedAsNominal(In(nominalThickness), In(nominalWidth));
        Assert.NotNull(size);
        Assert.Equal(nominal, size.Nominal);
        Assert.Equal(In(thickness), size.Thickness);
        Assert.Equal(In(width), size.Width);
        Assert.Equal(basis, size.Basis);
        Assert.StartsWith("PS 20 Table 3", size.Source, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("3/4", "9 1/4")]
    [InlineData("1", "9 15/16")]
    [InlineData("1 1/64", "10")]
    [InlineData("1", "7")]
    public void An_actual_size_is_no_nominal_size(string thickness, string width) =>
        Assert.Null(DressedSizes.TypedAsNominal(In(thickness), In(width)));

    [Fact]
    public void Sizes_come_thinnest_and_narrowest_first()
    {
        Assert.Equal(32, DressedSizes.All.Count);
        Assert.Equal("1x2", DressedSizes.All[0].Nominal);
        Assert.Equal("2x12", DressedSizes.All[^1].Nominal);
    }

    private static Length In(string text) => LengthReader.Read(text, UnitSystem.Inch).Value;
}
