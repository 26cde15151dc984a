using ShopClass.Print.Pens;
using Xunit;

namespace ShopClass.Print.Tests;

public class FractionsTests
{
    // The single letters and the raised and lowered figures are Unicode's own (Number Forms; Superscripts and Subscripts).
    [Theory]
    [InlineData("3/8", "⅜")]
    [InlineData("14 1/2 in", "14 ½ in")]
    [InlineData("31 1/16", "31 ¹⁄₁₆")]
    [InlineData("27/64", "²⁷⁄₆₄")]
    [InlineData("3/4 × 6 × 14 13/32", "¾ × 6 × 14 ¹³⁄₃₂")]
    [InlineData("25/11/2026", "25/11/2026")]
    [InlineData("and/or", "and/or")]
    [InlineData("2/3 of a class", "2/3 of a class")]
    public void A_fraction_on_a_rule_is_set_and_nothing_else_is(string typed, string set) =>
        Assert.Equal(set, Fractions.Set(typed));

    [Fact]
    public void What_is_set_reads_back_as_what_was_written()
    {
        foreach (var below in (int[])[2, 4, 8, 16, 32, 64])
        foreach (var above in Enumerable.Range(1, below - 1).Where(a => a % 2 == 1))
            Assert.Equal(
                $"7 {above}/{below}",
                PrintedSheet.Plain(Fractions.Set($"7 {above}/{below}"))
            );
    }
}
