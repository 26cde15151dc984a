using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Data.Access;
using ShopClass.Data.Orders;
using ShopClass.Data.Tests.Access;
using ShopClass.Data.Tests.CourseFiles;
using Xunit;

namespace ShopClass.Data.Tests.Orders;

public sealed class MaterialsStoreTests(Shop shop) : IClassFixture<Shop>, IAsyncDisposable
{
    private readonly ThrowAwayStore _store = shop.Copy();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private SellerStore Sellers => _store.Services.GetRequiredService<SellerStore>();

    private RackStore Rack => _store.Services.GetRequiredService<RackStore>();

    [Theory]
    [InlineData("other instructor")]
    [InlineData("self")]
    [InlineData("classmate")]
    [InlineData("outsider")]
    [InlineData("impostor")]
    public async Task Only_the_course_s_instructor_sees_or_changes_sellers_and_rack(string who)
    {
        var viewer = shop.As(who);
        var seller = await AddSellerAsync();
        var piece = Shop.Value(
            await Rack.AddAsync(shop.Owner, shop.Course.Id, Piece("Rack 1"), Cancel)
        );

        Assert.Empty(await Sellers.ListAsync(viewer, shop.Course.Id, Cancel));
        Assert.Null(await Sellers.FindAsync(viewer, seller.Id, Cancel));
        Assert.Empty(await Rack.ListAsync(viewer, shop.Course.Id, Cancel));
        OutcomeKind[] kinds =
        [
            (await Sellers.AddAsync(viewer, shop.Course.Id, "X", "USD", Cancel)).Kind,
            (await Sellers.SaveAsync(viewer, seller.Id, "X", true, seller.Version, Cancel)).Kind,
            (
                await Sellers.SaveStockAsync(viewer, seller.Id, [Line(900)], seller.Version, Cancel)
            ).Kind,
            (await Sellers.RemoveAsync(viewer, seller.Id, Cancel)).Kind,
            (await Rack.AddAsync(viewer, shop.Course.Id, Piece("Rack 1"), Cancel)).Kind,
            (await Rack.SaveAsync(viewer, piece.Id, Piece("Rack 9"), piece.Version, Cancel)).Kind,
            (await Rack.RemoveAsync(viewer, piece.Id, Cancel)).Kind,
        ];
        Assert.All(kinds, k => Assert.Equal(OutcomeKind.NotFound, k));

        Assert.Equal(
            seller.Version,
            (await Sellers.ListAsync(shop.Owner, shop.Course.Id, Cancel)).Single().Version
        );
        Assert.Equal(
            "Rack 1",
            (await Rack.ListAsync(shop.Owner, shop.Course.Id, Cancel)).Single().Piece.Place
        );
    }

    [Fact]
    public async Task A_list_comes_back_as_it_was_saved_with_a_key_for_each_line()
    {
        var seller = await AddSellerAsync();
        var saved = Shop.Value(
            await Sellers.SaveStockAsync(
                shop.Owner,
                seller.Id,
                [Line(900), Line(1100) with { Length = Length.FromInches(120) }],
                seller.Version,
                Cancel
            )
        );
        var read = (await Sellers.FindAsync(shop.Owner, seller.Id, Cancel))!;
        Assert.Equal(saved.Stock, read.Stock);
        Assert.Equal(2, read.Stock.Select(s => s.Id).Distinct().Count());
        Assert.Equal(new Money(900, "USD"), read.Stock[0].BoardPrice);
    }

    [Fact]
    public async Task A_list_is_refused_line_by_line_and_nothing_is_lost()
    {
        var seller = await AddSellerAsync();
        var outcome = await Sellers.SaveStockAsync(
            shop.Owner,
            seller.Id,
            [
                Line(900),
                Line(-5),
                Line(900),
                Line(900) with
                {
                    Length = Length.FromInches(120),
                    Price = new(900, "EUR"),
                },
            ],
            seller.Version,
            Cancel
        );
        Assert.Equal(OutcomeKind.Refused, outcome.Kind);
        Assert.Contains(outcome.Problems, p => p.Field == "Stock[1].Price");
        Assert.Contains(outcome.Problems, p => p.Field == "Stock[2]");
        Assert.Contains(
            outcome.Problems,
            p => p.Field == "Stock[3].Price" && p.Sentence.Contains("EUR", StringComparison.Ordinal)
        );
        Assert.Empty((await Sellers.FindAsync(shop.Owner, seller.Id, Cancel))!.Stock);
    }

    [Fact]
    public async Task Two_who_change_a_list_at_once_hear_of_each_other()
    {
        var seller = await AddSellerAsync();
        Shop.Value(
            await Sellers.SaveAsync(shop.Owner, seller.Id, "Renamed", false, seller.Version, Cancel)
        );
        var second = await Sellers.SaveStockAsync(
            shop.Owner,
            seller.Id,
            [Line(900)],
            seller.Version,
            Cancel
        );
        Assert.Equal(OutcomeKind.ChangedMeanwhile, second.Kind);
        Assert.Equal("Renamed", second.Value!.Name);
    }

    [Theory]
    [InlineData("", "USD", "Name")]
    [InlineData("A", "XXX", "Currency")]
    [InlineData("A", "usd", "Currency")]
    public async Task A_seller_needs_a_name_and_a_known_currency(
        string name,
        string currency,
        string field
    )
    {
        var outcome = await Sellers.AddAsync(shop.Owner, shop.Course.Id, name, currency, Cancel);
        Assert.Equal(field, Assert.Single(outcome.Problems).Field);
    }

    [Fact]
    public async Task The_rack_is_listed_in_the_order_one_walks_along_it()
    {
        foreach (var place in new[] { "Rack 2", "Rack 1, top", "Rack 1, low" })
            Shop.Value(await Rack.AddAsync(shop.Owner, shop.Course.Id, Piece(place), Cancel));
        var places = (await Rack.ListAsync(shop.Owner, shop.Course.Id, Cancel)).Select(r =>
            r.Piece.Place
        );
        Assert.Equal(["Rack 1, low", "Rack 1, top", "Rack 2"], places);
    }

    [Fact]
    public async Task A_course_file_carries_sellers_and_rack_there_and_back()
    {
        var seller = await AddSellerAsync();
        Shop.Value(
            await Sellers.SaveStockAsync(
                shop.Owner,
                seller.Id,
                [
                    Line(900) with
                    {
                        Nominal = new(Length.FromInches(1), Length.FromInches(8)),
                        PackSize = 2,
                        Available = 7,
                        Basis = PriceBasis.PerBoardFoot,
                        Grade = "Select",
                    },
                ],
                seller.Version,
                Cancel
            )
        );
        Shop.Value(
            await Rack.AddAsync(
                shop.Owner,
                shop.Course.Id,
                Piece("Rack 3") with
                {
                    Count = 4,
                    State = RackState.SetAside,
                },
                Cancel
            )
        );
        var file = await _store.Files.ExportCourseAsync(shop.Owner, shop.Course.Id, Cancel);
        var import = await _store.ImportAsync(shop.Owner, file!);
        Assert.Empty(import.Problems);

        var again = await _store.Files.ExportCourseAsync(
            shop.Owner,
            import.CourseId!.Value,
            Cancel
        );
        Assert.Equal(file, again);
        var stock = (await Sellers.ListAsync(shop.Owner, import.CourseId.Value, Cancel))
            .Single()
            .Stock.Single();
        Assert.Equal((2, 7, "Select"), (stock.PackSize, stock.Available, stock.Grade));
    }

    [Fact]
    public async Task A_course_file_with_wrong_stock_names_the_line()
    {
        var seller = await AddSellerAsync();
        Shop.Value(
            await Sellers.SaveStockAsync(shop.Owner, seller.Id, [Line(900)], seller.Version, Cancel)
        );
        var file = await _store.Files.ExportCourseAsync(shop.Owner, shop.Course.Id, Cancel);
        foreach (
            var (right, wrong, part) in new[]
            {
                ("\"minorUnits\": 900", "\"minorUnits\": -900", "whole number"),
                ("\"currency\": \"USD\",", "\"currency\": \"QQQ\",", "currency"),
                ("\"per\": \"each\"", "\"per\": \"cord\"", "one of"),
            }
        )
        {
            var import = await _store.ImportAsync(
                shop.Owner,
                file!.Replace(right, wrong, StringComparison.Ordinal)
            );
            Assert.False(import.IsImported);
            Assert.Contains(
                import.Problems,
                p => p.Line > 1 && p.Sentence.Contains(part, StringComparison.Ordinal)
            );
        }
    }

    [Fact]
    public async Task What_is_left_goes_on_the_rack_once_and_what_was_used_comes_off()
    {
        var four = Shop.Value(
            await Rack.AddAsync(
                shop.Owner,
                shop.Course.Id,
                Piece("Rack 1") with
                {
                    Count = 4,
                },
                Cancel
            )
        );
        var gone = Shop.Value(
            await Rack.AddAsync(shop.Owner, shop.Course.Id, Piece("Rack 2"), Cancel)
        );
        RackReturn back = new(
            Guid.NewGuid(),
            [Piece("") with { Count = 2 }],
            " Rack 3 ",
            new Dictionary<string, int> { [four.Piece.Id] = 3, [gone.Piece.Id] = 1 }
        );

        var put = await Rack.ReturnAsync(shop.Owner, shop.Course.Id, back, Cancel);
        var again = await Rack.ReturnAsync(shop.Owner, shop.Course.Id, back, Cancel);

        Assert.Equal(2, Shop.Value(put));
        Assert.Contains("already", again.Problems.Single().Sentence, StringComparison.Ordinal);
        Assert.Equal(
            [("Rack 1", 1), ("Rack 3", 2)],
            (await Rack.ListAsync(shop.Owner, shop.Course.Id, Cancel)).Select(r =>
                (r.Piece.Place, r.Piece.Count)
            )
        );
        Assert.Contains(
            back.SourceId,
            await Rack.ReturnedAsync(shop.Owner, shop.Course.Id, Cancel)
        );
    }

    [Theory]
    [InlineData("other instructor")]
    [InlineData("self")]
    [InlineData("outsider")]
    public async Task Nobody_else_puts_anything_back(string who)
    {
        RackReturn back = new(Guid.NewGuid(), [Piece("")], "", new Dictionary<string, int>());
        Assert.Equal(
            OutcomeKind.NotFound,
            (await Rack.ReturnAsync(shop.As(who), shop.Course.Id, back, Cancel)).Kind
        );
        Assert.Empty(await Rack.ReturnedAsync(shop.As(who), shop.Course.Id, Cancel));
        Assert.Empty(await Rack.ListAsync(shop.Owner, shop.Course.Id, Cancel));
    }

    public async ValueTask DisposeAsync() => await _store.DisposeAsync();

    private async Task<SellerView> AddSellerAsync() =>
        Shop.Value(
            await Sellers.AddAsync(shop.Owner, shop.Course.Id, "Invented Timber", "USD", Cancel)
        );

    private static PricedStock Line(long cents) =>
        new()
        {
            Id = "",
            Name = "1x8",
            SpeciesId = "eastern-white-pine",
            Surfacing = Surfacing.S4S,
            Thickness = Length.FromInches(0, 3, 4),
            Width = Length.FromInches(7, 1, 4),
            Length = Length.FromInches(96),
            Price = new(cents, "USD"),
            Basis = PriceBasis.Each,
        };

    private static RackPiece Piece(string place) => OrderSamples.Piece(place);
}
