using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Core.Planning.Classes;
using Xunit;

namespace ShopClass.Core.Tests.Orders;

public class ClassOrderTests
{
    [Fact]
    public void The_cheapest_order_yields_every_kit_and_no_bound_is_above_its_cost()
    {
        var order = Make(SampleOrders.Ask());
        Assert.True(order.IsComplete);
        Assert.True(order.Bound <= order.Total.MinorUnits);
        Assert.True(ClassRehearsal.Replay(order.Request, order.Plan).Passed);
        Assert.All(
            Enumerable.Range(1, 4),
            kit => Assert.Equal(3, order.BlanksOf(kit).Sum(b => b.Blanks.Count))
        );
        Assert.Equal(
            ["Student 1", "Student 2", "Student 3", "Spare 1"],
            Enumerable.Range(1, 4).Select(order.KitName)
        );
    }

    [Theory]
    [InlineData(OrderWay.FewestSellers)]
    [InlineData(OrderWay.FewestSizes)]
    [InlineData(OrderWay.WholeBoards)]
    public void Other_ways_yield_every_kit_and_cost_no_less_than_the_cheapest_s_bound(OrderWay way)
    {
        var cheapest = Make(SampleOrders.Ask());
        var order = Make(SampleOrders.Ask() with { Way = way });
        Assert.True(order.IsComplete);
        Assert.True(order.Total.MinorUnits >= cheapest.Bound);
        if (way is OrderWay.FewestSellers)
            Assert.Single(order.Lines.Select(l => l.SellerId).Distinct());
        if (way is OrderWay.FewestSizes)
            Assert.Single(order.Lines);
        if (way is OrderWay.WholeBoards)
            Assert.All(order.Plan.Boards, b => Assert.NotNull(b.Kit));
    }

    [Theory]
    [InlineData(5)]
    public void The_cheapest_is_not_dearer_than_one_seller_s_wood(int students)
    {
        var ask = SampleOrders.Ask(students);
        var cheapest = Make(ask);
        var one = Make(ask with { Way = OrderWay.FewestSellers });
        Assert.True(cheapest.Total <= one.Total);
        Assert.True(cheapest.Bound <= cheapest.Total.MinorUnits);
    }

    [Fact]
    public void Only_whole_packs_are_bought()
    {
        var ask = SampleOrders.Ask();
        var order = Make(ask with { Sellers = [ask.Sellers[1]] });
        Assert.All(order.Lines, l => Assert.Equal(0, l.Bought % 2));
        Assert.All(order.Lines, l => Assert.True(l.Bought >= l.Needed));
    }

    [Fact]
    public void The_rack_is_used_before_anything_is_bought()
    {
        var rack = new[] { SampleOrders.Offcut("Rack 1", 96, count: 3) };
        var order = Make(SampleOrders.Ask() with { Rack = rack });
        Assert.Empty(order.Lines);
        Assert.Equal(0, order.Total.MinorUnits);
        Assert.All(order.Plan.Boards, b => Assert.Equal("Rack 1", order.RackOf(b)!.Place));
    }

    [Fact]
    public void An_order_nobody_can_fill_says_who_goes_without_and_what()
    {
        var ask = SampleOrders.Ask(12);
        var few = ask.Sellers[0] with
        {
            Stock = [SampleOrders.Board("1x8", 6, 1920) with { Available = 1 }],
        };
        var order = Make(ask with { Sellers = [few] });
        Assert.False(order.IsComplete);
        Assert.NotEmpty(order.Without);
        Assert.All(order.Without, w => Assert.NotEmpty(w.Missing));
        Assert.Contains(
            "does not make every kit",
            OrderWords.Quality(order),
            StringComparison.Ordinal
        );
        Assert.Contains(order.Without, w => w.Kit == "Student 12");
        Assert.Contains("1 board on these lists", Why(order), StringComparison.Ordinal);
    }

    [Fact]
    public void Why_nobody_gets_a_part_is_said_with_its_size()
    {
        var ask = SampleOrders.Ask();
        var list = ask.Sellers[0] with { Stock = [SampleOrders.Board("1x4", 8, 900)] };
        Assert.Contains(
            "A is 6 in wide, and the widest board there is measures 3 1/2 in.",
            Why(Make(ask with { Sellers = [list] })),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_wood_nobody_sells_is_said_to_be_missing()
    {
        var order = Make(SampleOrders.Ask() with { SpeciesId = "black-cherry" });
        Assert.Equal("No seller on these lists and no rack has a board of this wood.", Why(order));
    }

    [Fact]
    public void Costs_by_student_add_up_to_the_cent()
    {
        foreach (var students in new[] { 1, 3, 4 })
        {
            var order = Make(SampleOrders.Ask(students));
            var costs = KitCosts.Of(
                order,
                [
                    new("screws", SupplyKind.Hardware, "6", new(33, "USD")),
                    new("wax", SupplyKind.Finish, "", new(5, "EUR")),
                ]
            );
            Assert.Equal(
                order.Total.MinorUnits,
                costs.Sum(c => c.Wood.MinorUnits + c.Shared.MinorUnits)
            );
            Assert.All(costs, c => Assert.Equal(33, c.Supplies.MinorUnits));
        }
    }

    [Fact]
    public void A_price_and_a_late_joiner_show_as_differences()
    {
        var before = Make(SampleOrders.Ask());
        Assert.Empty(OrderChanges.Between(before, Make(SampleOrders.Ask())));
        var more = OrderChanges.Between(before, Make(SampleOrders.Ask(4)));
        Assert.Contains("Student 4 now gets a kit.", more);
        Assert.Contains(
            more,
            c =>
                c.StartsWith("It costs", StringComparison.Ordinal)
                && c.Contains("more", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void What_came_smaller_is_named()
    {
        var order = Make(SampleOrders.Ask());
        Arrived Came(OrderLine l, Length width) =>
            new(l.SellerId, l.Stock.Id, l.Bought, l.Stock.Thickness, width, l.Stock.Length);
        IReadOnlyList<Arrived> asOrdered = [.. order.Lines.Select(l => Came(l, l.Stock.Width))];
        Assert.Empty(Receiving.Differences(order, asOrdered));
        Assert.True(Receiving.StillFits(order, asOrdered));

        IReadOnlyList<Arrived> narrow = [.. order.Lines.Select(l => Came(l, Length.FromInches(5)))];
        Assert.Contains(
            Receiving.Differences(order, narrow),
            d => d.Contains("smaller than listed", StringComparison.Ordinal)
        );
        Assert.False(Receiving.StillFits(order, narrow));
    }

    private static string Why(ClassOrder order) =>
        GoingWithout.Why(order, order.Without[0].Missing);

    private static ClassOrder Make(OrderAsk ask) =>
        ClassOrders.Make(ask, TestContext.Current.CancellationToken);
}
