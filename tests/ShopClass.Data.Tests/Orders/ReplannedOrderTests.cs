using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Data.Access;
using ShopClass.Data.Orders;
using ShopClass.Data.Tests.Access;
using Xunit;

namespace ShopClass.Data.Tests.Orders;

public sealed class ReplannedOrderTests(Shop shop) : IClassFixture<Shop>, IAsyncDisposable
{
    private readonly ThrowAwayStore _store = shop.Copy();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private OrderStore Orders => _store.Services.GetRequiredService<OrderStore>();

    [Fact]
    public async Task Kits_laid_out_again_are_kept_as_the_next_number_with_what_became_different()
    {
        var stored = await ReceiveAsync();
        var again = Replanning.Of(stored.Order, stored.Number, stored.Arrived, Cancel);
        var kept = Shop.Value(
            await Orders.KeepAgainAsync(shop.Owner, stored.Id, again, stored.Version, Cancel)
        );
        Assert.Equal(2, kept.Number);

        await using var restarted = _store.Restarted();
        var read = (
            await restarted
                .GetRequiredService<OrderStore>()
                .NewestAsync(shop.Owner, shop.Project.Id, Cancel)
        )!;
        Assert.Equal(kept.Id, read.Id);
        Assert.Equal(1, read.Order.Replaces!.Order);
        Assert.NotEmpty(read.Order.Replaces.Changes);
        Assert.Equal(again.Replaces!.Changes, read.Order.Replaces.Changes);
        Assert.Equal(
            again.Lines.Select(l => (l.Stock.Width, l.Bought, l.IsHere)),
            read.Order.Lines.Select(l => (l.Stock.Width, l.Bought, l.IsHere))
        );
        Assert.Contains(read.Order.Lines, l => l.IsHere);
        var before = (await Orders.FindAsync(shop.Owner, stored.Id, Cancel))!;
        Assert.Null(before.Order.Replaces);
        Assert.Single(before.Arrived);
    }

    [Fact]
    public async Task A_replan_of_what_is_not_so_any_more_is_refused()
    {
        var stored = await ReceiveAsync();
        var again = Replanning.Of(stored.Order, stored.Number, stored.Arrived, Cancel);
        var struck = Shop.Value(
            await Orders.SaveArrivedAsync(shop.Owner, stored.Id, [], stored.Version, Cancel)
        );
        var late = await Orders.KeepAgainAsync(
            shop.Owner,
            stored.Id,
            again,
            stored.Version,
            Cancel
        );
        Assert.Equal(OutcomeKind.ChangedMeanwhile, late.Kind);

        Shop.Value(await Orders.SaveAsync(shop.Owner, shop.Project.Id, stored.Order, Cancel));
        var old = await Orders.KeepAgainAsync(shop.Owner, stored.Id, again, struck.Version, Cancel);
        Assert.Contains(
            "Order 2 was kept since",
            Assert.Single(old.Problems).Sentence,
            StringComparison.Ordinal
        );
        Assert.Equal(2, (await Orders.NewestAsync(shop.Owner, shop.Project.Id, Cancel))!.Number);
    }

    [Theory]
    [InlineData(0, 5, 144, "how many came")]
    [InlineData(1, -5, 144, "more than zero")]
    [InlineData(1, 286, 144, "check the number and its unit")]
    [InlineData(1, 5, 12 * 144, "check the number and its unit")]
    [InlineData(1, 5, 8, "write ft behind the number")]
    public async Task What_came_cannot_measure_anything(
        int count,
        long width,
        long length,
        string part
    )
    {
        var stored = await ReceiveAsync();
        var wrong = stored.Arrived[0] with
        {
            Count = count,
            Width = Length.FromInches(width),
            Length = Length.FromInches(length),
        };
        var saved = await Orders.SaveArrivedAsync(
            shop.Owner,
            stored.Id,
            [wrong],
            stored.Version,
            Cancel
        );
        Assert.Contains(part, Assert.Single(saved.Problems).Sentence, StringComparison.Ordinal);
        var read = (await Orders.FindAsync(shop.Owner, stored.Id, Cancel))!;
        Assert.Equal(stored.Arrived, read.Arrived);
    }

    [Theory]
    [InlineData("other instructor")]
    [InlineData("self")]
    [InlineData("classmate")]
    [InlineData("outsider")]
    public async Task Nobody_else_keeps_kits_laid_out_again(string who)
    {
        var stored = await ReceiveAsync();
        var again = Replanning.Of(stored.Order, stored.Number, stored.Arrived, Cancel);
        var kept = await Orders.KeepAgainAsync(
            shop.As(who),
            stored.Id,
            again,
            stored.Version,
            Cancel
        );
        Assert.Equal(OutcomeKind.NotFound, kept.Kind);
        Assert.Equal(1, (await Orders.NewestAsync(shop.Owner, shop.Project.Id, Cancel))!.Number);
    }

    [Fact]
    public async Task What_came_counts_as_here_until_the_kits_leavings_are_on_the_rack()
    {
        var stored = await ReceiveAsync();
        OrderChoices choices = new(OrderWay.Cheapest, 0, false, null, 30, "USD");
        async Task<int> HereAsync(OrderChoices c) =>
            (await Orders.AskAsync(shop.Owner, shop.Project.Id, c, Cancel))!.Here.Sum(l =>
                l.Bought
            );
        Assert.Equal(1, await HereAsync(choices));
        Assert.Equal(0, await HereAsync(choices with { Currency = "EUR" }));

        // It stays here when the next order is made with it, and after a restart.
        var ask = (await Orders.AskAsync(shop.Owner, shop.Project.Id, choices, Cancel))!;
        Assert.Equal(Length.FromInches(5, 1, 2), ask.Here.Single().Stock.Width);
        var next = Shop.Value(
            await Orders.SaveAsync(
                shop.Owner,
                shop.Project.Id,
                ClassOrders.Make(ask, Cancel),
                Cancel
            )
        );
        Assert.Single(next.Order.Lines, l => l.IsHere);
        await using (var restarted = _store.Restarted())
        {
            var again = await restarted
                .GetRequiredService<OrderStore>()
                .AskAsync(shop.Owner, shop.Project.Id, choices, Cancel);
            Assert.Equal(1, again!.Here.Sum(l => l.Bought));
        }

        Shop.Value(
            await _store
                .Services.GetRequiredService<RackStore>()
                .ReturnAsync(
                    shop.Owner,
                    shop.Course.Id,
                    new(
                        next.Id,
                        LeftForRack.Of(next.Order),
                        "rack 1",
                        LeftForRack.Taken(next.Order)
                    ),
                    Cancel
                )
        );
        Assert.Equal(0, await HereAsync(choices));
        Assert.True(stored.Number < next.Number);
    }

    public async ValueTask DisposeAsync() => await _store.DisposeAsync();

    /// <summary>An order of which one board came, half as wide as listed.</summary>
    private async Task<StoredOrder> ReceiveAsync()
    {
        var order = await OrderSamples.MakeAsync(shop, _store);
        var kept = Shop.Value(await Orders.SaveAsync(shop.Owner, shop.Project.Id, order, Cancel));
        var line = order.Lines[0];
        Arrived came = new(
            line.SellerId,
            line.Stock.Id,
            1,
            line.Stock.Thickness,
            Length.FromInches(5, 1, 2),
            line.Stock.Length
        );
        return Shop.Value(
            await Orders.SaveArrivedAsync(shop.Owner, kept.Id, [came], kept.Version, Cancel)
        );
    }
}
