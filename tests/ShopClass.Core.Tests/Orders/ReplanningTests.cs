using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Core.Planning.Classes;
using Xunit;

namespace ShopClass.Core.Tests.Orders;

/// <summary>Kits laid out again on what came. The judge is the rehearsal of a class's boards, which shares nothing with the planner.</summary>
public class ReplanningTests
{
    [Theory]
    [InlineData(OrderWay.Cheapest)]
    [InlineData(OrderWay.WholeBoards)]
    public void Narrow_boards_send_kits_to_others_and_what_is_short_is_bought(OrderWay way)
    {
        var order = Make(SampleOrders.Ask(5) with { Way = way });
        var line = order.Lines[0];
        Arrived[] came = [Came(line, line.Bought, Length.FromInches(5)), .. Others(order)];

        var again = Replanning.Of(order, 1, came, TestContext.Current.CancellationToken);

        Assert.True(again.IsComplete);
        Assert.Empty(ClassRehearsal.Replay(again.Request, again.Plan).Findings);
        // The base is 6 in wide, so no board that measures 5 in yields one.
        Assert.All(
            again.Plan.Boards.Where(b => b.Board.SmallestWidth < Length.FromInches(6)),
            b => Assert.DoesNotContain(b.Blanks, k => k.Key.Part == "A")
        );
        Assert.NotEmpty(again.ToBuy);
        var changes = again.Replaces!.Changes;
        Assert.Equal(1, again.Replaces.Order);
        // A kit with a board of its own gets another of the same kind, so nothing moves there.
        Assert.Equal(
            way is OrderWay.Cheapest,
            changes.Any(c => c.StartsWith("Student ", StringComparison.Ordinal))
        );
        Assert.All(
            again.ToBuy,
            l =>
                Assert.Contains(
                    changes,
                    c => c.StartsWith($"Buy {l.Bought} × {l.Stock.Name}", StringComparison.Ordinal)
                )
        );
        Assert.Equal(again.Total.MinorUnits, KitCosts.Of(again, []).Sum(c => c.Total.MinorUnits));
        Assert.True(again.Bound <= again.Total.MinorUnits);
    }

    [Fact]
    public void What_came_as_listed_changes_nothing_and_buys_nothing()
    {
        var order = Make(SampleOrders.Ask());
        Arrived[] came = [.. order.Lines.Select(l => Came(l, l.Bought, l.Stock.Width))];
        Assert.True(Receiving.StillFits(order, came));
        Assert.True(
            Receiving.StillFits(
                order,
                [came[0] with { Width = Length.FromInches(12) }, .. came[1..]]
            )
        );
        Assert.False(Receiving.StillFits(order, [came[0] with { IsRefused = true }, .. came[1..]]));
        Assert.False(
            Receiving.StillFits(
                order,
                [came[0] with { Thickness = Length.FromInches(1) }, .. came[1..]]
            )
        );

        var again = Replanning.Of(order, 1, came, TestContext.Current.CancellationToken);
        Assert.Empty(again.ToBuy);
        Assert.Equal(order.Total, again.Total);
        Assert.Empty(ClassRehearsal.Replay(again.Request, again.Plan).Findings);
    }

    [Fact]
    public void What_was_bought_in_addition_is_received_in_its_turn()
    {
        var order = Make(SampleOrders.Ask(5));
        var first = Replanning.Of(order, 1, [], TestContext.Current.CancellationToken);
        Assert.True(first.IsComplete);
        Assert.DoesNotContain(first.Lines, l => l.IsHere);

        var half = first.Lines[0];
        Arrived[] some = [Came(half, 1, half.Stock.Width)];
        var second = Replanning.Of(first, 2, some, TestContext.Current.CancellationToken);
        Assert.Equal(1, second.Lines.Where(l => l.IsHere).Sum(l => l.Bought));

        Arrived[] rest = [.. second.ToBuy.Select(l => Came(l, l.Bought, l.Stock.Width))];
        Assert.True(Receiving.StillFits(second, rest));
        var third = Replanning.Of(second, 3, rest, TestContext.Current.CancellationToken);
        Assert.Empty(third.ToBuy);
        Assert.True(third.IsComplete);
        Assert.Equal(second.Lines.Sum(l => l.Bought), third.Lines.Sum(l => l.Bought));
        Assert.Empty(ClassRehearsal.Replay(third.Request, third.Plan).Findings);
    }

    [Fact]
    public void When_no_seller_has_more_it_says_who_is_short_of_what()
    {
        var ask = SampleOrders.Ask();
        var made = Make(ask);
        var only = made.Lines[0].Bought;
        var order = Make(
            ask with
            {
                Sellers =
                [
                    ask.Sellers[0] with
                    {
                        Stock = [SampleOrders.Board("1x8", 8, 2540) with { Available = 3 }],
                    },
                ],
            }
        );
        Assert.True(order.IsComplete && only > 0);
        var line = Assert.Single(order.Lines);
        Arrived[] came = [Came(line, line.Bought, Length.FromInches(5))];
        var again = Replanning.Of(
            order with
            {
                Request = order.Request with
                {
                    Stock = [order.Request.Stock[0] with { Available = line.Bought }],
                },
            },
            1,
            came,
            TestContext.Current.CancellationToken
        );
        Assert.False(again.IsComplete);
        Assert.Contains(
            again.Replaces!.Changes,
            c => c.StartsWith("Still short: Student 1 goes without A", StringComparison.Ordinal)
        );
    }

    // Of two boards one came too narrow for the base: only kits on that one are laid out again.
    [Theory]
    [InlineData(OrderWay.Cheapest)]
    [InlineData(OrderWay.WholeBoards)]
    public void Kits_that_still_fit_stay_as_they_are(OrderWay way)
    {
        var order = Make(SampleOrders.Ask(8) with { Way = way });
        var line = order.Lines.MaxBy(l => l.Bought)!;
        Assert.True(line.Bought > 1);
        Arrived[] came =
        [
            Came(line, line.Bought - 1, line.Stock.Width),
            Came(line, 1, Length.FromInches(5)),
            .. order.Lines.Where(l => l != line).Select(l => Came(l, l.Bought, l.Stock.Width)),
        ];

        var again = Replanning.Of(order, 1, came, TestContext.Current.CancellationToken);

        Assert.True(again.IsComplete);
        Assert.Empty(ClassRehearsal.Replay(again.Request, again.Plan).Findings);
        // Cuts and blanks of every board that keeps its layout, whichever number it has.
        var (was, now) = (Layouts(order), Layouts(again));
        Assert.True(was.Count - was.Except(now).Count() >= was.Count - 1);
        var changes = again.Replaces!.Changes;
        Assert.Matches("^[0-9]+ of 9 kits stay as they are|^Every kit stays", changes[0]);
        Assert.True(changes.Count(c => c.Contains(" before, ", StringComparison.Ordinal)) < 5);
        Assert.Equal(again.Total.MinorUnits, KitCosts.Of(again, []).Sum(c => c.Total.MinorUnits));
        Assert.True(again.Bound <= again.Total.MinorUnits);
    }

    [Fact]
    public void Boards_that_measure_a_little_less_keep_kits_that_leave_wood_over()
    {
        var order = Make(SampleOrders.Ask(3));
        var left = order.Plan.Boards.Select(b =>
            b.Board.Length - b.Layout.Sections[^1].To - b.Board.TrimEnd
        );
        var spared = left.Min();
        Assert.True(spared > Length.FromInches(0, 1, 4));
        Arrived[] came =
        [
            .. order.Lines.Select(l =>
                Came(l, l.Bought, l.Stock.Width) with
                {
                    Length = l.Stock.Length - Length.FromInches(0, 1, 8),
                }
            ),
        ];
        Assert.False(Receiving.StillFits(order, came));
        var again = Replanning.Of(order, 1, came, TestContext.Current.CancellationToken);
        Assert.Empty(again.ToBuy);
        Assert.Equal(Layouts(order), Layouts(again));
    }

    [Fact]
    public void An_order_made_after_wood_came_uses_it_first()
    {
        var ask = SampleOrders.Ask(5);
        var order = Make(ask);
        Arrived[] came = [.. order.Lines.Select(l => Came(l, l.Bought, l.Stock.Width))];
        var here = WoodHere.Of(order, came);
        Assert.Equal(order.Lines.Sum(l => l.Bought), here.Sum(l => l.Bought));

        // The same class again: nothing more is bought, and it costs what it did.
        var same = Make(ask with { Here = here });
        Assert.Empty(same.ToBuy);
        Assert.Equal(order.Total, same.Total);
        Assert.True(same.IsComplete && same.Bound <= same.Total.MinorUnits);
        Assert.Empty(ClassRehearsal.Replay(same.Request, same.Plan).Findings);
        Assert.Equal(same.Total.MinorUnits, KitCosts.Of(same, []).Sum(c => c.Total.MinorUnits));

        // A bigger class: less is bought than without it, and what is here is not bought again.
        var more = Make(SampleOrders.Ask(7) with { Here = here });
        var without = Make(SampleOrders.Ask(7));
        Assert.True(more.IsComplete);
        Assert.InRange(more.ToBuy.Sum(l => l.Bought), 1, without.ToBuy.Sum(l => l.Bought) - 1);
        Assert.Contains(
            OrderChanges.Between(order, more),
            c => c.Contains("here now", StringComparison.Ordinal)
        );
        // Nobody took it: all of it goes on the rack again.
        var none = Make(ask with { Here = here, People = [], SpareKits = 0 });
        Assert.Equal(
            here.Sum(l => l.Bought),
            LeftForRack
                .Of(none)
                .Where(p => p.Board.Length >= Length.FromInches(72))
                .Sum(p => p.Count)
        );
    }

    private static List<string> Layouts(ClassOrder order) =>
        [
            .. order
                .Plan.Boards.Select(b =>
                    string.Join(
                        '|',
                        b.Layout.Sections.Select(s =>
                            $"{s.From.Ticks}-{s.To.Ticks}:"
                            + string.Join(
                                ';',
                                s.Strips.Select(t =>
                                    $"{t.Near.Ticks}-{t.Far.Ticks} {string.Join(' ', t.Blanks.Select(k => $"{k.Key}@{k.From.Ticks}"))}"
                                )
                            )
                        )
                    )
                )
                .Order(StringComparer.Ordinal),
        ];

    private static IEnumerable<Arrived> Others(ClassOrder order) =>
        order.Lines.Skip(1).Select(l => Came(l, l.Bought, l.Stock.Width));

    private static Arrived Came(OrderLine line, int count, Length width) =>
        new(line.SellerId, line.Stock.Id, count, line.Stock.Thickness, width, line.Stock.Length);

    private static ClassOrder Make(OrderAsk ask) =>
        ClassOrders.Make(ask, TestContext.Current.CancellationToken);
}
