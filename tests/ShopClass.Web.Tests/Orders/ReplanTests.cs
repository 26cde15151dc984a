using Bunit;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Core.Projects;
using ShopClass.Data.Orders;
using ShopClass.Data.Projects;
using ShopClass.Web.Features.Orders;
using ShopClass.Web.Tests.Courses;

namespace ShopClass.Web.Tests.Orders;

public sealed class ReplanTests : IAsyncLifetime
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private Office office = default!;
    private ProjectView project = default!;

    private static CancellationToken Cancel => Xunit.TestContext.Current.CancellationToken;

    private OrderStore Orders => office.Store.Services.GetRequiredService<OrderStore>();

    public async ValueTask InitializeAsync()
    {
        office = await Office.OpenAsync();
        var made = await office.Store.Projects.CreateAsync(
            office.Instructor,
            office.Course.Id,
            "Wall shelf"
        );
        project = made.Value!;
        await office.Store.Projects.AddPartsAsync(
            office.Instructor,
            project.Id,
            [Projects.Shop.Part("A", "side")]
        );
        await office.Store.Students.AddAsync(
            office.Instructor,
            office.Course.Id,
            new("Mira", "", false),
            Cancel
        );
    }

    public ValueTask DisposeAsync() => office.DisposeAsync();

    [Fact]
    public async Task Narrow_boards_are_laid_out_again_kept_and_shown_after_coming_back()
    {
        var stored = await OrderAsync();
        var page = Open();
        await ReceiveAsync(page, stored, "5");
        await Button(page, "Do the kits still fit?").ClickAsync(new());
        await page.WaitForStateAsync(() => page.Markup.Contains("Keep these kits"), Patience);
        Assert.Contains("Buy 1 × 1x8", page.Find(".arrived").TextContent, StringComparison.Ordinal);
        Assert.Equal(1, (await Orders.NewestAsync(office.Instructor, project.Id, Cancel))!.Number);

        await Button(page, "Keep these kits as order 2").ClickAsync(new());

        Assert.Equal("Order 2", page.Find("#kept").TextContent);
        var back = Open();
        Assert.Equal("Order 2", back.Find("#kept").TextContent);
        Assert.Contains("laid out again on what came of order 1", back.Markup);
        Assert.Contains("Buy 1 × 1x8", back.Find(".note").TextContent, StringComparison.Ordinal);
        Assert.Contains("1 here (0 needed)", back.Markup);
        // Only what is still to be bought can come.
        Assert.Single(back.FindAll("#came-line option"));
    }

    [Fact]
    public async Task Boards_as_listed_need_no_new_layout()
    {
        var stored = await OrderAsync();
        var page = Open();
        await ReceiveAsync(page, stored, "7 1/4");
        await Button(page, "Do the kits still fit?").ClickAsync(new());
        Assert.Contains("every kit can be cut as it was laid out", page.Markup);
        Assert.DoesNotContain("Keep these kits", page.Markup);

        // What came is wood for the next order, which therefore buys nothing; practice pieces are counted for the class.
        Assert.Contains(
            "that came with order 1",
            page.Find("form.stock-form + p").TextContent,
            StringComparison.Ordinal
        );
        await page.Find("form.stock-form").SubmitAsync();
        await page.WaitForStateAsync(
            () => page.Markup.Contains("nothing more is to be bought"),
            Patience
        );
        await page.Find("#practice-count").ChangeAsync(new() { Value = "2" });
        Assert.Matches("Each kit gets 2: [0-9]+ kits?, spare kits included, makes", page.Markup);
    }

    private IRenderedComponent<OrderPage> Open() =>
        office.Open<OrderPage>(p =>
            p.Add(x => x.CourseId, office.Course.Id).Add(x => x.ProjectId, project.Id)
        );

    private static AngleSharp.Dom.IElement Button(
        IRenderedComponent<OrderPage> page,
        string text
    ) => page.FindAll("button").Single(b => b.TextContent.Trim() == text);

    private static async Task ReceiveAsync(
        IRenderedComponent<OrderPage> page,
        StoredOrder stored,
        string width
    )
    {
        var field = page.FindAll(".arrived .length-field")
            .Single(f => f.TextContent.Contains("Measured width", StringComparison.Ordinal));
        await field.QuerySelector("input")!.ChangeAsync(new() { Value = width });
        await page.Find(".arrived form").SubmitAsync();
        Assert.Contains(
            $"What has come ({stored.Order.Lines[0].Bought} of",
            page.Markup,
            StringComparison.Ordinal
        );
    }

    private async Task<StoredOrder> OrderAsync()
    {
        var sellers = office.Store.Services.GetRequiredService<SellerStore>();
        var seller = (
            await sellers.AddAsync(
                office.Instructor,
                office.Course.Id,
                "Invented Timber",
                "USD",
                Cancel
            )
        ).Value!;
        await sellers.SaveStockAsync(
            office.Instructor,
            seller.Id,
            [
                new PricedStock
                {
                    Id = "",
                    Name = "1x8",
                    SpeciesId = "eastern-white-pine",
                    Surfacing = Surfacing.S4S,
                    Thickness = Length.FromInches(0, 3, 4),
                    Width = Length.FromInches(7, 1, 4),
                    Length = Length.FromInches(96),
                    Price = new(2540, "USD"),
                    Basis = PriceBasis.Each,
                },
            ],
            seller.Version,
            Cancel
        );
        var ask = (
            await Orders.AskAsync(
                office.Instructor,
                project.Id,
                new(OrderWay.Cheapest, 0, false, null, 30, "USD"),
                Cancel
            )
        )!;
        var saved = await Orders.SaveAsync(
            office.Instructor,
            project.Id,
            ClassOrders.Make(ask, Cancel),
            Cancel
        );
        return saved.Value!;
    }
}
