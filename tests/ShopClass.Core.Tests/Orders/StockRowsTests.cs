using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using Xunit;

namespace ShopClass.Core.Tests.Orders;

public class StockRowsTests
{
    [Fact]
    public void Columns_stand_in_any_order_and_heads_carry_units()
    {
        var read = Read(
            ["Price per board foot", "Wood", "Length (ft)", "Size", "Grade", "In stock"],
            ["4,05", "eastern white pine", "8", "1x10", "Select", "12"]
        );
        var (line, stock) = Assert.Single(read.Stock);
        Assert.Empty(read.Problems);
        Assert.Equal(2, line);
        Assert.Equal(new(405, "USD"), stock.Price);
        Assert.Equal(PriceBasis.PerBoardFoot, stock.Basis);
        Assert.Equal(Length.FromInches(96), stock.Length);
        Assert.Equal(Length.FromInches(9, 1, 4), stock.Width);
        Assert.Equal(12, stock.Available);
        Assert.Equal("Select", stock.Grade);
        Assert.Equal(Surfacing.S4S, stock.Surfacing);
    }

    [Fact]
    public void Thickness_and_width_stand_for_a_size_and_quarters_for_a_thickness()
    {
        var read = Read(
            ["thickness", "width", "length", "species", "surfacing", "price", "per"],
            ["4/4", "8", "8 ft", "black cherry", "rough", "6.80", "bf"],
            ["20 mm", "195 mm", "2.4 m", "yellow-poplar", "S4S", "9", "metre"]
        );
        Assert.Empty(read.Problems);
        Assert.Equal(Length.FromInches(1), read.Stock[0].Stock.Thickness);
        Assert.Equal(533, read.Stock[0].Stock.BoardFeetHundredths);
        Assert.Equal(PriceBasis.PerMetre, read.Stock[1].Stock.Basis);
        Assert.Equal(2160, read.Stock[1].Stock.BoardPrice.MinorUnits);
    }

    [Theory]
    [InlineData("1x10", "8", "eastern white pine", "9.00", "shorter than sellers keep")]
    [InlineData("1x10", "8 ft", "eastern white pine", "-9.00", "less than zero")]
    [InlineData("1x10", "8 ft", "eastern white pine", "", "The price is missing")]
    [InlineData("1x10", "8 ft", "eastern white pine", "nine", "nine")]
    [InlineData("3/4 x 195", "8 ft", "eastern white pine", "9.00", "PS 20")]
    [InlineData("1x10", "8 ft", "eastern white pine", "0", "The price is missing")]
    [InlineData("1x10", "8 ft", "eastern white pine", "9 EUR", "this list is in USD")]
    [InlineData("1x11", "8 ft", "eastern white pine", "9.00", "PS 20")]
    [InlineData("1x10", "8 ft", "unobtainium", "9.00", "No wood in the list")]
    [InlineData("1x10", "8 ft", "oak", "9.00", "Several woods")]
    [InlineData("1x10", "40 ft", "eastern white pine", "9.00", "The most taken here")]
    public void A_wrong_line_says_what_was_read(
        string size,
        string length,
        string wood,
        string price,
        string part
    )
    {
        var read = Read(
            ["size", "length", "species", "price"],
            ["1x8", "8 ft", "eastern white pine", "8.00"],
            [size, length, wood, price]
        );
        Assert.Single(read.Stock);
        var problem = Assert.Single(read.Problems);
        Assert.Equal(3, problem.Line);
        Assert.Contains(part, problem.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_board_twice_names_the_earlier_line()
    {
        var read = Read(
            ["size", "length", "species", "price"],
            ["1x8", "8 ft", "eastern white pine", "8.00"],
            ["1x8", "96 in", "Eastern White Pine", "8.50"]
        );
        Assert.Single(read.Stock);
        Assert.Contains("line 2", Assert.Single(read.Problems).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_in_another_currency_is_not_mixed_in()
    {
        var read = Read(
            ["size", "length", "species", "price", "currency"],
            ["1x8", "8 ft", "eastern white pine", "8.00", "EUR"]
        );
        Assert.Empty(read.Stock);
        Assert.Contains(
            "is in EUR",
            Assert.Single(read.Problems).Sentence,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_list_of_ten_thousand_lines_is_refused_in_a_sentence()
    {
        var rows = Enumerable
            .Range(2, 10_000)
            .Select(i => new TypedRow(i, ["1x8", "8 ft", "eastern white pine", "8.00"]));
        var read = StockRows.Read(
            [new(1, ["size", "length", "species", "price"]), .. rows],
            "USD",
            UnitSystem.Inch
        );
        Assert.Contains("10,000", Assert.Single(read.Problems).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_column_is_named_and_an_unknown_one_left_out()
    {
        Assert.Contains(
            "length, price",
            Assert.Single(Read(["size", "species"], ["1x8", "pine"]).Problems).Sentence,
            StringComparison.Ordinal
        );
        var read = Read(
            ["size", "length", "species", "price", "aisle"],
            ["1x8", "8 ft", "eastern white pine", "8.00", "4"]
        );
        Assert.Single(read.Stock);
        Assert.Contains("aisle", Assert.Single(read.Problems).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pack_holds_at_least_one_board()
    {
        var read = Read(
            ["size", "length", "species", "price", "pack"],
            ["1x8", "8 ft", "eastern white pine", "8.00", "0"],
            ["1x8", "10 ft", "eastern white pine", "8.00", "two"]
        );
        Assert.Empty(read.Stock);
        Assert.Equal([2, 3], read.Problems.Select(p => p.Line));
    }

    [Fact]
    public void A_line_written_out_is_read_back()
    {
        foreach (
            var cells in new string[][]
            {
                ["1x10", "8 ft", "eastern white pine", "S4S", "4.05", "board foot"],
                ["4/4 x 8", "8 ft", "yellow-poplar", "S2S", "4.65", "bf"],
                ["3/4 x 9 1/4", "6 ft", "black cherry", "S4S", "31.20", "each"],
            }
        )
        {
            var read = Read(["size", "length", "species", "surfacing", "price", "per"], cells);
            var stock = Assert.Single(read.Stock).Stock;
            var again = Read([.. PriceList.Heads], [.. PriceList.Cells(stock, UnitSystem.Inch)]);
            Assert.Equal(stock, Assert.Single(again.Stock).Stock);
        }
    }

    private static StockReading Read(params string[][] lines) =>
        StockRows.Read(
            [.. lines.Select((cells, i) => new TypedRow(i + 1, cells))],
            "USD",
            UnitSystem.Inch
        );
}
