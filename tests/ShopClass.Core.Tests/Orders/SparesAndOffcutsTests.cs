using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Core.Planning.Classes;
using Xunit;

namespace ShopClass.Core.Tests.Orders;

public class SparesAndOffcutsTests
{
    private static readonly PracticePiece Practice = new(
        2,
        Length.FromInches(0, 3, 4),
        Length.FromInches(2),
        Length.FromInches(12)
    );

    [Theory]
    [InlineData(OrderWay.Cheapest)]
    [InlineData(OrderWay.WholeBoards)]
    public void Spare_parts_belong_to_no_kit_and_practice_pieces_to_every_kit(OrderWay way)
    {
        var ask = SampleOrders.Ask() with
        {
            Way = way,
            SpareParts = new SortedDictionary<string, int> { ["C"] = 2 },
            Practice = Practice,
        };

        var order = Make(ask);

        Assert.True(order.IsComplete);
        Assert.Empty(ClassRehearsal.Replay(order.Request, order.Plan).Findings);
        var spares = order
            .Plan.Boards.SelectMany(b =>
                b.Blanks.Where(k => order.KitOn(b, k) == 0).Select(k => k.Key.Part)
            )
            .ToList();
        Assert.Equal(["C", "C"], spares);
        Assert.All(
            Enumerable.Range(1, 4),
            kit =>
                Assert.Equal(
                    ["A", "B", "C", "P", "P"],
                    order.BlanksOf(kit).SelectMany(b => b.Blanks).Select(b => b.Key.Part).Order()
                )
        );
        // Two pieces of 3/4 × 2 × 12 in in each of four kits, and two hooks of 3/4 × 1 1/2 × 6 in, more than without.
        var more =
            order.Net.CubicTicks - Make(SampleOrders.Ask() with { Way = way }).Net.CubicTicks;
        var inch = (Int128)Length.TicksPerInch;
        Assert.Equal(inch * inch * inch * (8 * 18 * 4 + 2 * 27) / 4, more);
        var costs = KitCosts.Of(order, []);
        Assert.Equal(order.Total.MinorUnits, costs.Sum(c => c.Total.MinorUnits));
    }

    [Theory]
    [InlineData(0, 2, "Quantity")]
    [InlineData(21, 2, "Quantity")]
    [InlineData(2, 0, "Width")]
    public void A_practice_piece_that_cannot_be_is_named(int count, int width, string field) =>
        Assert.Contains(
            (Practice with { Count = count, Width = Length.FromInches(width) }).ProblemsIn(
                SampleOrders.Ask().Project,
                SampleOrders.Ask().Rules
            ),
            p => p.Field == field
        );

    [Fact]
    public void What_an_order_leaves_is_what_its_boards_hold_less_blanks_kerfs_and_waste()
    {
        var order = Make(SampleOrders.Ask(7));

        var left = LeftForRack.Of(order);

        Assert.NotEmpty(left);
        var rules = order.Ask.Rules;
        Assert.All(
            left,
            p =>
                Assert.True(
                    p.Board.Length >= rules.ShortestOffcut
                        && p.Board.SmallestWidth >= rules.NarrowestOffcut
                )
        );
        Int128 Area(Length a, Length b) => (Int128)a.Ticks * b.Ticks;
        var boards = order.Plan.Boards.Aggregate(
            Int128.Zero,
            (sum, b) => sum + Area(b.Board.Length, b.Board.SmallestWidth)
        );
        var blanks = (
            from b in order.Plan.Boards
            from section in b.Layout.Sections
            from strip in section.Strips
            from blank in strip.Blanks
            select Area(blank.To - blank.From, strip.Far - strip.Near)
        ).Aggregate(Int128.Zero, (sum, a) => sum + a);
        var kept = left.Aggregate(
            Int128.Zero,
            (sum, p) => sum + p.Count * Area(p.Board.Length, p.Board.SmallestWidth)
        );
        Assert.InRange(blanks + kept, boards / 2, boards);
    }

    [Fact]
    public void Boards_that_only_came_with_a_pack_are_left_whole_and_the_rack_s_are_taken()
    {
        var ask = SampleOrders.Ask(1);
        var packed = Make(
            ask with
            {
                Sellers =
                [
                    ask.Sellers[1] with
                    {
                        Stock = [SampleOrders.Board("1x8", 8, 2360) with { PackSize = 4 }],
                    },
                ],
            }
        );
        Assert.Contains(
            LeftForRack.Of(packed),
            p =>
                p.Board.Name == "1x8"
                && p.Board.Length == Length.FromInches(96)
                && p.Count == packed.Lines[0].Bought - packed.Lines[0].Needed
        );
        Assert.Empty(LeftForRack.Taken(packed));

        var rack = new[] { SampleOrders.Offcut("Rack 1", 96, count: 3) };
        var fromRack = Make(SampleOrders.Ask() with { Rack = rack });
        Assert.Equal(fromRack.Plan.Boards.Count, LeftForRack.Taken(fromRack)[rack[0].Id]);
    }

    private static ClassOrder Make(OrderAsk ask) =>
        ClassOrders.Make(ask, TestContext.Current.CancellationToken);
}
