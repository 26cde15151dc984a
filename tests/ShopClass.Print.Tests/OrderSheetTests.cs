using PdfSharp.Pdf.IO;
using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Core.Tests.Orders;
using ShopClass.Print.Pages;
using ShopClass.Print.Sheets;
using Xunit;

namespace ShopClass.Print.Tests;

public class OrderSheetTests
{
    private static readonly OrderSheetContent Content = new(
        "Evening class",
        ClassOrders.Make(
            SampleOrders.Ask(12) with
            {
                Rack = [SampleOrders.Offcut("Rack 1, low", 40)],
            }
        ),
        2,
        new(2026, 11, 3, 18, 0, 0, DateTimeKind.Utc),
        new(2026, 11, 25)
    );

    private static readonly Supply[] Supplies =
    [
        new("wood screw", SupplyKind.Hardware, "4", new(12, "USD")),
    ];

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void The_order_names_each_seller_with_counts_and_total(Paper paper)
    {
        var sheet = new PrintedSheet(MaterialsOrder.Make(Content, paper));
        foreach (var seller in Content.Order.Lines.Select(l => l.Seller).Distinct())
            Assert.Contains(seller, sheet.Text, StringComparison.Ordinal);
        Assert.Contains(
            "of the cheapest possible",
            sheet.Text.Replace(
                "The cheapest possible",
                "of the cheapest possible",
                StringComparison.Ordinal
            ),
            StringComparison.Ordinal
        );
        Assert.Contains("Rule of thumb", sheet.Text, StringComparison.Ordinal);
        Assert.Contains(
            $"Page 1 of {sheet.Pages.Count}",
            sheet.TextOf(0),
            StringComparison.Ordinal
        );
        NothingIsClipped(sheet);
    }

    [Fact]
    public void The_preparation_list_names_every_kit_once_and_walks_the_rack_first()
    {
        var sheet = new PrintedSheet(
            PreparationList.Make(
                Content,
                Supplies,
                [new("Marking set", [new("square", 1), new("pencil", 2)])],
                Paper.A4
            )
        );
        Assert.Contains("Student 12", sheet.Text, StringComparison.Ordinal);
        Assert.Contains("wood screw: 4", sheet.Text, StringComparison.Ordinal);
        Assert.Contains("Marking set: square, 2 × pencil", sheet.Text, StringComparison.Ordinal);
        var rack = sheet.Text.IndexOf("Rack 1, low", StringComparison.Ordinal);
        var bought = sheet.Text.IndexOf(" from ", StringComparison.Ordinal);
        Assert.True(rack >= 0 && rack < bought);
        NothingIsClipped(sheet);
    }

    [Fact]
    public void The_cost_sheet_s_sum_is_the_order_s_total_with_its_supplies()
    {
        var sheet = new PrintedSheet(CostSheet.Make(Content, Supplies, Paper.Letter));
        var total = Content.Order.Total + new Money(12 * 12, "USD");
        Assert.Contains(MoneyText.Write(total), sheet.Text, StringComparison.Ordinal);
        Assert.Contains("Private to the instructor", sheet.Text, StringComparison.Ordinal);
        NothingIsClipped(sheet);
    }

    [Fact]
    public void The_receiving_sheet_leaves_room_for_what_came()
    {
        var sheet = new PrintedSheet(ReceivingSheet.Make(Content, Paper.A4));
        Assert.Contains("hidden splits", sheet.Text, StringComparison.Ordinal);
        NothingIsClipped(sheet);
    }

    [Fact]
    public void The_hand_out_lists_every_part()
    {
        var sheet = new PrintedSheet(
            ProjectSheet.Make(
                new(
                    "Evening class",
                    Content.Order.Ask.Project,
                    CourseRules.DefaultsFor(UnitSystem.Inch),
                    Content.PrintedOn
                ),
                Paper.A4
            )
        );
        foreach (var part in Content.Order.Ask.Project.Parts)
            Assert.Contains(part.Name, sheet.Text, StringComparison.Ordinal);
        NothingIsClipped(sheet);
    }

    // 72 points are one inch: PDF reference. The check line's words stand under its middle, 2 in from the margin.
    [Fact]
    public void The_story_stick_is_full_size()
    {
        var content = new KitSheetContent(
            "Evening class",
            "Mira",
            false,
            SamplePlans.Shelf(),
            3,
            Content.MadeUtc,
            Content.PrintedOn,
            false
        );
        var sheet = new PrintedSheet(StoryStick.Make(content, Paper.A4));
        var lines = sheet
            .Pages[0]
            .Paths.Select(p => p.GetBoundingRectangle())
            .Where(r => r is not null)
            .Select(r => r!.Value)
            .ToList();
        Assert.Contains(lines, r => Math.Abs(r.Width - 288) < 1.5);
        Assert.Contains("never “fit to page”", sheet.Text, StringComparison.Ordinal);
        NothingIsClipped(sheet);
    }

    [Fact]
    public void A_set_holds_its_sheets_one_after_another_each_with_its_own_pages_and_outline()
    {
        Manuscript[] sheets =
        [
            MaterialsOrder.Of(Content, Paper.A4),
            PreparationList.Of(Content, Supplies, [], Paper.A4),
            CostSheet.Of(Content, [], Paper.A4),
        ];
        var done = new List<int>();
        var pdf = PrintSet.Make("Set", sheets, done.Add, TestContext.Current.CancellationToken);
        var set = new PrintedSheet(pdf);
        int[] pages = [.. sheets.Select(s => new PrintedSheet(s.ToPdf()).Pages.Count)];

        Assert.Equal([1, 2, 3], done);
        Assert.Equal(pages.Sum(), set.Pages.Count);
        Assert.Contains($"Page 1 of {pages[2]}", set.TextOf(pages[0] + pages[1]));
        using var read = UglyToad.PdfPig.PdfDocument.Open(pdf);
        Assert.True(read.TryGetBookmarks(out var outline));
        Assert.Equal(sheets.Select(s => s.Title), outline.GetNodes().Select(n => n.Title));
        // One tree of tags over all sheets: each is a part with headings and tables in it.
        Assert.Equal(3, Count("Part"));
        Assert.True(Count("Table") >= 3 && Count("H1") >= 3);

        int Count(string tag) =>
            System.Text.RegularExpressions.Regex.Count(
                System.Text.Encoding.Latin1.GetString(pdf),
                $@"/S\s*/{tag}\b"
            );
    }

    /// <summary>ISO 32000-1, 14.7.4.4: each page's number leads through the parent tree to the elements of what is on it.</summary>
    [Fact]
    public void From_every_page_of_a_set_a_screen_reader_finds_the_tags_of_what_is_on_it()
    {
        var sheet = MaterialsOrder.Of(Content, Paper.A4);
        var pdf = PrintSet.Make(
            "Set",
            [sheet, PreparationList.Of(Content, [], [], Paper.A4), sheet],
            cancel: TestContext.Current.CancellationToken
        );
        using var set = PdfReader.Open(new MemoryStream(pdf), PdfDocumentOpenMode.Import);
        var numbers = set
            .Internals.Catalog.Elements.GetDictionary("/StructTreeRoot")!
            .Elements.GetDictionary("/ParentTree")!
            .Elements.GetArray("/Nums")!;
        int[] keys =
        [
            .. Enumerable
                .Range(0, numbers.Elements.Count / 2)
                .Select(i => numbers.Elements.GetInteger(2 * i)),
        ];

        Assert.Equal(keys.Order().Distinct(), keys);
        Assert.Equal(
            keys,
            Enumerable
                .Range(0, set.PageCount)
                .Select(p => set.Pages[p].Elements.GetInteger("/StructParents"))
        );
        for (var page = 0; page < set.PageCount; page++)
        {
            var pieces = numbers.Elements.GetArray(2 * page + 1)!;
            Assert.NotEmpty(pieces.Elements);
            for (var piece = 0; piece < pieces.Elements.Count; piece++)
                Assert.Equal(
                    set.Pages[page].Reference,
                    pieces.Elements.GetDictionary(piece)!.Elements.GetReference("/Pg")
                );
        }
    }

    [Fact]
    public void A_preview_has_the_pages_of_the_paper_with_the_same_words()
    {
        var sheet = PreparationList.Of(Content, Supplies, [], Paper.Letter);
        var paper = new PrintedSheet(sheet.ToPdf());

        var pages = sheet.Pages();

        Assert.Equal(paper.Pages.Count, pages.Count);
        Assert.All(pages, p => Assert.Equal((612, 792), (p.Width, p.Height)));
        foreach (var (page, index) in pages.Select((p, i) => (p, i)))
        {
            var svg = System.Xml.Linq.XDocument.Parse(page.Svg);
            var words = string.Concat(
                svg.Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value + " ")
            );
            Assert.All(
                paper.Words[index],
                w => Assert.Contains(w.Text, words, StringComparison.Ordinal)
            );
        }
    }

    private static void NothingIsClipped(PrintedSheet sheet)
    {
        for (var page = 0; page < sheet.Pages.Count; page++)
        {
            Assert.All(
                sheet.Words[page],
                w =>
                    Assert.True(
                        w.BoundingBox.Left >= 39
                            && w.BoundingBox.Right <= sheet.Pages[page].Width - 38
                            && w.BoundingBox.Bottom >= 30,
                        $"“{w.Text}” runs into the margin of page {page + 1}"
                    )
            );
        }
    }
}
