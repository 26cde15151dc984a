using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Data.Access;
using ShopClass.Data.Orders;
using ShopClass.Data.Tests.Access;
using Xunit;

namespace ShopClass.Data.Tests.Orders;

public sealed class OrderStoreTests(Shop shop) : IClassFixture<Shop>, IAsyncDisposable
{
    private static OrderChoices Choices => OrderSamples.Choices;

    private readonly ThrowAwayStore _store = shop.Copy();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private OrderStore Orders => _store.Services.GetRequiredService<OrderStore>();

    private KitStore Kits => _store.Services.GetRequiredService<KitStore>();

    [Fact]
    public async Task A_kit_is_ordered_for_whoever_has_no_board()
    {
        var ask = (await Orders.AskAsync(shop.Owner, shop.Project.Id, Choices, Cancel))!;
        Assert.Equal(["Bo"], ask.People.Select(p => p.Shown));
    }

    [Fact]
    public async Task Spares_are_asked_for_parts_there_are_and_practice_pieces_as_chosen()
    {
        PracticePiece practice = new(
            4,
            Length.FromInches(0, 3, 4),
            Length.FromInches(2),
            Length.FromInches(10)
        );
        var ask = (
            await Orders.AskAsync(
                shop.Owner,
                shop.Project.Id,
                Choices with
                {
                    SpareParts = new SortedDictionary<string, int> { ["A"] = 2, ["Q"] = 3 },
                    Practice = practice,
                },
                Cancel
            )
        )!;
        Assert.Equal([("A", 2)], ask.SpareParts.Select(s => (s.Key, s.Value)));
        Assert.Equal(practice, ask.Practice);

        var kept = Shop.Value(
            await Orders.SaveAsync(
                shop.Owner,
                shop.Project.Id,
                ClassOrders.Make(ask, Cancel),
                Cancel
            )
        );
        var read = (await Orders.FindAsync(shop.Owner, kept.Id, Cancel))!.Order.Ask;
        Assert.Equal((2, practice), (read.SpareParts["A"], read.Practice));
    }

    [Fact]
    public async Task An_order_comes_back_as_it_was_kept_and_the_next_gets_the_next_number()
    {
        var order = await MakeAsync();
        var first = Shop.Value(await Orders.SaveAsync(shop.Owner, shop.Project.Id, order, Cancel));
        var second = Shop.Value(await Orders.SaveAsync(shop.Owner, shop.Project.Id, order, Cancel));
        Assert.Equal((1, 2), (first.Number, second.Number));

        var read = (await Orders.FindAsync(shop.Owner, first.Id, Cancel))!.Order;
        Assert.Equal(order.Total, read.Total);
        Assert.Equal(order.Bound, read.Bound);
        Assert.Empty(OrderChanges.Between(order, read));
        Assert.Equal(
            order.BlanksOf(1).Select(b => OrderWords.Source(order, b.Board)),
            read.BlanksOf(1).Select(b => OrderWords.Source(read, b.Board))
        );
    }

    [Fact]
    public async Task What_came_is_written_down_and_a_second_writer_hears_of_it()
    {
        var kept = Shop.Value(
            await Orders.SaveAsync(shop.Owner, shop.Project.Id, await MakeAsync(), Cancel)
        );
        var line = kept.Order.Lines[0];
        Arrived came = new(
            line.SellerId,
            line.Stock.Id,
            1,
            line.Stock.Thickness,
            line.Stock.Width,
            line.Stock.Length
        );
        var saved = Shop.Value(
            await Orders.SaveArrivedAsync(shop.Owner, kept.Id, [came], kept.Version, Cancel)
        );
        Assert.Equal(came, Assert.Single(saved.Arrived));
        var late = await Orders.SaveArrivedAsync(shop.Owner, kept.Id, [], kept.Version, Cancel);
        Assert.Equal(OutcomeKind.ChangedMeanwhile, late.Kind);
    }

    [Theory]
    [InlineData("other instructor")]
    [InlineData("self")]
    [InlineData("classmate")]
    [InlineData("outsider")]
    [InlineData("impostor")]
    public async Task Only_the_course_s_instructor_sees_or_changes_orders_kits_and_the_print_desk(
        string who
    )
    {
        var viewer = shop.As(who);
        var order = await MakeAsync();
        var kept = Shop.Value(await Orders.SaveAsync(shop.Owner, shop.Project.Id, order, Cancel));

        Assert.Null(await Orders.AskAsync(viewer, shop.Project.Id, Choices, Cancel));
        Assert.Null(await Orders.NewestAsync(viewer, shop.Project.Id, Cancel));
        Assert.Null(await Orders.FindAsync(viewer, kept.Id, Cancel));
        Assert.Null(await Kits.FindAsync(viewer, shop.Project.Id, Cancel));
        Assert.Null(await Kits.DeskAsync(viewer, shop.Course.Id, Cancel));
        var desk = (await Kits.DeskAsync(shop.Owner, shop.Course.Id, Cancel))!;
        OutcomeKind[] kinds =
        [
            (await Orders.SaveAsync(viewer, shop.Project.Id, order, Cancel)).Kind,
            (await Orders.SaveArrivedAsync(viewer, kept.Id, [], kept.Version, Cancel)).Kind,
            (await Kits.SaveSuppliesAsync(viewer, shop.Project.Id, [], Guid.Empty, Cancel)).Kind,
            (
                await Kits.MarkAsync(
                    viewer,
                    shop.Project.Id,
                    new(shop.Student.Id, KitState.Ready),
                    Cancel
                )
            ).Kind,
            (await Kits.SaveDeskAsync(viewer, desk, Cancel)).Kind,
        ];
        Assert.All(kinds, k => Assert.Equal(OutcomeKind.NotFound, k));
    }

    [Fact]
    public async Task Supplies_and_kit_states_are_kept()
    {
        Supply screws = new(" Screws ", SupplyKind.Hardware, "6", new(30, "USD"));
        var saved = Shop.Value(
            await Kits.SaveSuppliesAsync(shop.Owner, shop.Project.Id, [screws], Guid.Empty, Cancel)
        );
        Assert.Equal("Screws", saved.Supplies[0].Name);
        Shop.Value(
            await Kits.MarkAsync(
                shop.Owner,
                shop.Project.Id,
                new(shop.Student.Id, KitState.Ready),
                Cancel
            )
        );
        Shop.Value(
            await Kits.MarkAsync(
                shop.Owner,
                shop.Project.Id,
                new(shop.Student.Id, KitState.HandedOver),
                Cancel
            )
        );
        var read = (await Kits.FindAsync(shop.Owner, shop.Project.Id, Cancel))!;
        Assert.Equal(KitState.HandedOver, read.StateOf(shop.Student.Id));
        Assert.Single(read.Supplies);

        var refused = await Kits.SaveSuppliesAsync(
            shop.Owner,
            shop.Project.Id,
            [screws with { Name = "" }],
            read.Version,
            Cancel
        );
        Assert.Equal("Supplies[0].Name", Assert.Single(refused.Problems).Field);
    }

    [Theory]
    [InlineData("http://192.168.1.20:5000", true)]
    [InlineData("https://shop.example/class/", true)]
    [InlineData("", true)]
    [InlineData("192.168.1.20", false)]
    [InlineData("javascript:alert(1)", false)]
    [InlineData("http://shop.example/?x=1", false)]
    public async Task Codes_lead_only_to_a_web_address(string address, bool isRight)
    {
        var desk = (await Kits.DeskAsync(shop.Owner, shop.Course.Id, Cancel))!;
        var saved = await Kits.SaveDeskAsync(shop.Owner, desk with { Address = address }, Cancel);
        Assert.Equal(isRight, saved.IsSaved);
        if (isRight)
            Assert.False(saved.Value!.Address.EndsWith('/'));
    }

    [Fact]
    public async Task A_printer_is_not_moved_by_more_than_a_hand()
    {
        var desk = (await Kits.DeskAsync(shop.Owner, shop.Course.Id, Cancel))!;
        var far = desk with { Labels = desk.Labels with { Right = Length.FromMillimetres(-21) } };
        var saved = await Kits.SaveDeskAsync(shop.Owner, far, Cancel);
        Assert.Equal("Right", Assert.Single(saved.Problems).Field);
    }

    public async ValueTask DisposeAsync() => await _store.DisposeAsync();

    private Task<ClassOrder> MakeAsync() => OrderSamples.MakeAsync(shop, _store);
}
