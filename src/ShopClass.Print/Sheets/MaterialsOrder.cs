using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Sheets;

/// <summary>What to buy, a page for each seller: sizes by the seller's names, counts, cost.</summary>
public static class MaterialsOrder
{
    private static readonly Column[] Columns =
    [
        new("", 0.3),
        new("Ask for", 2, IsStrong: true),
        new("Measures", 1.6),
        new("Wood", 2.4),
        new("Boards", 0.8, IsStrong: true),
        new("Board ft", 0.8),
        new("Each", 0.8),
        new("Cost", 0.9),
    ];

    /// <summary>The order as a PDF.</summary>
    public static byte[] Make(OrderSheetContent content, Paper paper) => Of(content, paper).ToPdf();

    /// <summary>The sheet, to be printed alone or in a set.</summary>
    public static Manuscript Of(OrderSheetContent content, Paper paper) =>
        new(content.Frame("materials order", paper), sheet => Write(sheet, content));

    private static void Write(Sheet sheet, OrderSheetContent content)
    {
        var order = content.Order;
        var sellers = order.ToBuy.GroupBy(l => l.SellerId).ToList();
        if (sellers.Count == 0)
        {
            sheet.Title("Materials order", content.Project);
            sheet.Paragraph(content.Line);
            sheet.Paragraph(
                order.Replaces is null
                    ? "Nothing is to be bought: the rack has it all."
                    : "Nothing more is to be bought: what came and the rack have it all."
            );
        }

        for (var i = 0; i < sellers.Count; i++)
        {
            if (i > 0)
                sheet.NewPage();
            WriteSeller(sheet, content, [.. sellers[i]]);
        }

        WriteShort(sheet, order);
    }

    private static void WriteSeller(
        Sheet sheet,
        OrderSheetContent content,
        IReadOnlyList<OrderLine> lines
    )
    {
        var (order, precision) = (content.Order, content.Order.Ask.Rules.Precision);
        sheet.Title("Materials order", lines[0].Seller);
        sheet.Paragraph(content.Line);
        sheet.Table(
            Columns,
            [
                .. lines.Select(l => new Row([
                    Row.TickBox,
                    OrderWords.Board(l.Stock, precision),
                    $"{LengthWriter.Write(l.Stock.Thickness, precision)} × {LengthWriter.WriteWithUnit(l.Stock.Width, precision)}",
                    OrderWords.Kind(l.Stock),
                    $"{l.Bought}",
                    PriceWords.Hundredths(l.Stock.BoardFeetHundredths * l.Bought),
                    MoneyText.Write(l.Stock.BoardPrice),
                    MoneyText.Write(l.Cost),
                ])),
            ]
        );
        var total = lines.Aggregate(Money.Zero(order.Ask.Currency), (sum, l) => sum + l.Cost);
        sheet.Paragraph($"Together {total.Shown()}.", Lettering.Face.Strong);
        sheet.Paragraph(
            "Sizes under “measures” are what a rule must show, at least. No split ends, no rough saw marks on planed faces; look along each board for twist. Prices as listed when the order was made."
        );
    }

    private static void WriteShort(Sheet sheet, ClassOrder order)
    {
        sheet.Heading("How this order was worked out");
        sheet.Paragraph(
            $"{OrderWords.Of(order.Ask.Way)}. {order.Ask.People.Count} kits and {order.Ask.SpareKits} spare. {OrderWords.Quality(order)}"
        );
        sheet.Paragraph(OrderWords.Thumb(order));
        foreach (var (kit, missing) in order.Without)
            sheet.Warning(
                $"{kit} goes without {OrderWords.Keys(missing)}. {GoingWithout.Why(order, missing)}"
            );
    }
}
