using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using Xunit;

namespace ShopClass.Core.Tests.Orders;

public class PricedStockTests
{
    // Board feet = thickness in × width in × length ft / 12, on nominal sizes: Wood Handbook FPL-GTR-190, glossary, and
    // American Softwood Lumber Standard PS 20 (board measure). The products are arithmetic.
    [Theory]
    [InlineData("1x12", 1, 100)]
    [InlineData("1x10", 12, 1000)]
    [InlineData("2x4", 8, 533)]
    [InlineData("2x6", 10, 1000)]
    [InlineData("1x6", 8, 400)]
    [InlineData("5/4x6", 12, 750)]
    [InlineData("4/4 x 8", 8, 533)]
    public void Board_feet_count_on_the_nominal_size(string size, int feet, long hundredths)
    {
        var read = StockSizes.Read(size, Surfacing.S4S, UnitSystem.Inch).Value!;
        Assert.Equal(hundredths, Stock(read, feet, PriceBasis.Each, 100).BoardFeetHundredths);
    }

    // 8/4; 7.5 in; 10 ft = 12.5 board feet: computed, no rounding.
    [Fact]
    public void Rough_hardwood_counts_its_rough_thickness() =>
        Assert.Equal(
            1250,
            Stock(
                new(
                    "8/4",
                    new(Length.FromInches(2), Length.FromInches(7, 1, 2)),
                    Length.FromInches(2),
                    Length.FromInches(7, 1, 2),
                    Surfacing.Rough
                ),
                10,
                PriceBasis.Each,
                100
            ).BoardFeetHundredths
        );

    // Stock under an inch counts as an inch: practice, NHLA rules, from memory.
    [Fact]
    public void Thin_stock_counts_as_an_inch()
    {
        var thin = StockSizes.Read("1/2 x 6", Surfacing.S4S, UnitSystem.Inch).Value!;
        Assert.Equal(300, Stock(thin, 6, PriceBasis.Each, 100).BoardFeetHundredths);
    }

    // Dressed sizes: American Softwood Lumber Standard PS 20, Table 3.
    [Theory]
    [InlineData("1x10", "3/4", "9 1/4")]
    [InlineData("1x4", "3/4", "3 1/2")]
    [InlineData("2x8", "1 1/2", "7 1/4")]
    [InlineData("5/4 x 6", "1", "5 1/2")]
    public void A_nominal_size_stands_for_its_dressed_size(string name, string thick, string wide)
    {
        var read = StockSizes.Read(name, Surfacing.S4S, UnitSystem.Inch).Value!;
        Assert.Equal(thick, LengthWriter.WriteExact(read.Thickness, UnitSystem.Inch));
        Assert.Equal(wide, LengthWriter.WriteExact(read.Width, UnitSystem.Inch));
    }

    [Theory]
    [InlineData("1x7", "no size that PS 20 knows")]
    [InlineData("board", "no size")]
    [InlineData("1x", "no size")]
    public void A_size_nobody_knows_gets_a_sentence(string name, string part) =>
        Assert.Contains(
            part,
            StockSizes.Read(name, Surfacing.S4S, UnitSystem.Inch).Problem,
            StringComparison.Ordinal
        );

    [Fact]
    public void Measured_sizes_are_taken_as_they_are()
    {
        var metric = StockSizes.Read("20 × 195 mm", Surfacing.S4S, UnitSystem.Metric).Value!;
        Assert.Equal(Length.FromMillimetres(20), metric.Thickness);
        Assert.Equal(Length.FromMillimetres(195), metric.Width);
        Assert.Null(metric.Nominal);
    }

    [Theory]
    [InlineData(PriceBasis.Each, 1349, 1349)]
    [InlineData(PriceBasis.PerFoot, 112, 896)] // 8 ft
    [InlineData(PriceBasis.PerBoardFoot, 405, 2700)] // 6.6667 board feet x 4.05, not 6.67 x 4.05
    [InlineData(PriceBasis.PerMetre, 400, 975)] // 2.4384 m x 4.00 = 9.7536, down
    public void A_board_costs_its_measure_rounded_once(PriceBasis basis, long price, long board)
    {
        var read = StockSizes.Read("1x10", Surfacing.S4S, UnitSystem.Inch).Value!;
        Assert.Equal(board, Stock(read, 8, basis, price).BoardPrice.MinorUnits);
    }

    [Fact]
    public void Half_a_cent_goes_up()
    {
        var read = StockSizes.Read("1x6", Surfacing.S4S, UnitSystem.Inch).Value!;
        Assert.Equal(2, Stock(read, 1, PriceBasis.PerBoardFoot, 3).BoardPrice.MinorUnits);
    }

    // Net / (1 - waste): 7 board feet with 30 % waste are 10 to buy; 1 board foot is 1.43 (arithmetic).
    [Theory]
    [InlineData(7, 30, 1000)]
    [InlineData(1, 30, 143)]
    [InlineData(3, 0, 300)]
    [InlineData(3, 50, 600)]
    public void The_rule_of_thumb_divides_by_what_is_kept(int net, int waste, long hundredths) =>
        Assert.Equal(
            hundredths,
            BoardFeet.HundredthsIn(RuleOfThumb.ToBuy(BoardFeet.One * net, waste))
        );

    [Fact]
    public void The_rule_of_thumb_costs_what_its_wood_costs()
    {
        var read = StockSizes.Read("1x12", Surfacing.S4S, UnitSystem.Inch).Value!;
        var stock = Stock(read, 8, PriceBasis.Each, 2000);
        Assert.Equal(
            5000,
            RuleOfThumb.CostOf(stock.Wood * 5, stock with { Price = new(1000, "USD") }).MinorUnits
        );
    }

    internal static PricedStock Stock(SizeRead size, int feet, PriceBasis basis, long price) =>
        new()
        {
            Id = "a",
            Name = size.Name,
            SpeciesId = "eastern-white-pine",
            Surfacing = size.Usual,
            Nominal = size.Nominal,
            Thickness = size.Thickness,
            Width = size.Width,
            Length = Length.FromInches(12L * feet),
            Price = new(price, "USD"),
            Basis = basis,
        };
}
