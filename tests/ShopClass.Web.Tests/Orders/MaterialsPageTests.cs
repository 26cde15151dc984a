using AngleSharp.Dom;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Data.Orders;
using ShopClass.Web.Features.Orders;
using ShopClass.Web.Tests.Courses;

namespace ShopClass.Web.Tests.Orders;

public sealed class MaterialsPageTests : IAsyncLifetime
{
    private static CancellationToken Cancel => Xunit.TestContext.Current.CancellationToken;

    private Office office = default!;

    private SellerStore Sellers => office.Store.Services.GetRequiredService<SellerStore>();

    public async ValueTask InitializeAsync() => office = await Office.OpenAsync();

    public ValueTask DisposeAsync() => office.DisposeAsync();

    [Fact]
    public async Task A_line_is_typed_and_priced()
    {
        var (page, seller) = await OpenAsync();
        await TypeAsync(page, "#stock-size", "1x10");
        await TypeAsync(page, "#stock-length", "8 ft");
        await TypeAsync(page, "#stock-wood", "eastern white pine");
        await TypeAsync(page, "#stock-price", "4,05");
        await TypeAsync(page, "#stock-per", "board foot");
        await page.Find(".stock-form").SubmitAsync();

        var line = Assert.Single(
            (await Sellers.FindAsync(office.Instructor, seller.Id, Cancel))!.Stock
        );
        Assert.Equal(PriceBasis.PerBoardFoot, line.Basis);
        var row = page.Find(".stock-table tbody tr").TextContent;
        Assert.Contains("6.67", row, StringComparison.Ordinal);
        Assert.Contains("27.00", row, StringComparison.Ordinal);
        Assert.Contains("9 1/4", row, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_line_that_cannot_be_read_stays_as_it_was_typed()
    {
        var (page, seller) = await OpenAsync();
        await TypeAsync(page, "#stock-size", "1x7");
        await TypeAsync(page, "#stock-length", "8 ft");
        await TypeAsync(page, "#stock-wood", "eastern white pine");
        await TypeAsync(page, "#stock-price", "9");
        await page.Find(".stock-form").SubmitAsync();

        Assert.Contains(
            "PS 20",
            page.Find(".stock-form [role=alert]").TextContent,
            StringComparison.Ordinal
        );
        Assert.Equal("1x7", page.Find("#stock-size").GetAttribute("value"));
        Assert.Empty((await Sellers.FindAsync(office.Instructor, seller.Id, Cancel))!.Stock);
    }

    [Fact]
    public void A_pasted_list_keeps_the_keys_of_lines_that_only_changed_price()
    {
        const string text =
            "size;length;species;price\n1x8;8 ft;eastern white pine;25,40\n1x10;8 ft;eastern white pine;wrong\n";
        var first = StockPaste.Read(text, "EUR", UnitSystem.Inch);
        Assert.Equal(3, Assert.Single(first.Problems).Line);
        var list = StockPaste.Into([], first).Select(s => s with { Id = "kept" }).ToList();

        var again = StockPaste.Read(
            text.Replace("25,40", "26,10", StringComparison.Ordinal),
            "EUR",
            UnitSystem.Inch
        );
        var merged = Assert.Single(StockPaste.Into(list, again));
        Assert.Equal(("kept", 2610L), (merged.Id, merged.Price.MinorUnits));
    }

    [Fact]
    public async Task A_student_is_not_shown_the_materials()
    {
        var student = (
            await office.Store.Students.AddAsync(
                office.Instructor,
                office.Course.Id,
                new("Mira", "", false),
                Cancel
            )
        ).Value!;
        var page = office.Open<MaterialsPage>(
            p => p.Add(x => x.CourseId, office.Course.Id),
            new Data.Access.StudentViewer(student.Id, office.Course.Id)
        );
        Assert.DoesNotContain("Sellers", page.Markup, StringComparison.Ordinal);
    }

    private async Task<(IRenderedComponent<SellerPage> Page, SellerView Seller)> OpenAsync()
    {
        var seller = (
            await Sellers.AddAsync(
                office.Instructor,
                office.Course.Id,
                "Invented Timber",
                "USD",
                Cancel
            )
        ).Value!;
        var page = office.Open<SellerPage>(p =>
            p.Add(x => x.CourseId, office.Course.Id).Add(x => x.SellerId, seller.Id)
        );
        return (page, seller);
    }

    private static Task TypeAsync<T>(IRenderedComponent<T> page, string field, string text)
        where T : Microsoft.AspNetCore.Components.IComponent =>
        page.Find(field).ChangeAsync(new() { Value = text });
}
