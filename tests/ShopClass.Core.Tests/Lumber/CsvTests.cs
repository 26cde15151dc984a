using ShopClass.Core.Lumber;
using Xunit;

namespace ShopClass.Core.Tests.Lumber;

public class CsvTests
{
    [Fact]
    public void Quoted_fields_may_hold_commas_and_quotes()
    {
        var row = Assert.Single(Csv.Read("t.csv", "a,b\r\n\"x, \"\"y\"\"\",\r\n"));
        Assert.Equal("x, \"y\"", row["a"]);
        Assert.Equal("", row["b"]);
    }

    [Theory]
    [InlineData("a,b\n1\n", "t.csv line 2 has 1 fields; the header has 2.")]
    [InlineData("a,b\n1,2\n\n3,4", "t.csv line 3 has 1 fields; the header has 2.")]
    [InlineData("a,b\n\"1,2\n", "t.csv line 2 has a quote that is not closed.")]
    public void A_malformed_table_is_refused_with_its_line(string text, string message) =>
        Assert.Equal(
            message,
            Assert.Throws<InvalidDataException>(() => Csv.Read("t.csv", text)).Message
        );

    [Fact]
    public void A_field_that_is_not_what_its_column_holds_is_refused_with_its_place()
    {
        var row = Csv.Read("t.csv", "size,basis\nwide,heard\n")[0];
        Assert.Equal(
            "t.csv line 2: size is “wide”; expected a length in inches.",
            Assert.Throws<InvalidDataException>(() => row.Inches("size")).Message
        );
        Assert.Equal(
            "t.csv line 2: basis is “heard”; expected read or memory.",
            Assert.Throws<InvalidDataException>(() => row.BasisIn("basis")).Message
        );
        Assert.Equal(
            "t.csv line 2: there is no column colour.",
            Assert.Throws<InvalidDataException>(() => row["colour"]).Message
        );
    }

    [Fact]
    public void A_table_that_does_not_ship_is_refused() =>
        Assert.Throws<InvalidDataException>(() => Csv.ReadEmbedded("moon.csv"));
}
