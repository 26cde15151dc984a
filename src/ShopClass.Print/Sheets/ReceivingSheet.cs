using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Sheets;

/// <summary>To fill in where the wood is handed over: what was ordered, what came, what it measures.</summary>
public static class ReceivingSheet
{
    private static readonly Column[] Columns =
    [
        new("", 0.3),
        new("Ordered", 2.2, IsStrong: true),
        new("Measures, at least", 1.8),
        new("Boards", 0.7, IsStrong: true),
        new("Came", 0.8),
        new("Thickness", 1),
        new("Width", 1),
        new("Length", 1),
        new("Back", 0.7),
    ];

    /// <summary>The sheet as a PDF.</summary>
    public static byte[] Make(OrderSheetContent content, Paper paper) => Of(content, paper).ToPdf();

    /// <summary>The sheet, to be printed alone or in a set.</summary>
    public static Manuscript Of(OrderSheetContent content, Paper paper) =>
        new(content.Frame("receiving sheet", paper), sheet => Write(sheet, content));

    private static void Write(Sheet sheet, OrderSheetContent content)
    {
        var precision = content.Order.Ask.Rules.Precision;
        sheet.Title("Receiving sheet", content.Project);
        sheet.Paragraph(content.Line);
        sheet.Paragraph(
            "Measure one board of each bundle and every board that looks different. Write the smallest thickness and width found. Then enter it with the order: the kits are laid out again on what really came."
        );
        foreach (var seller in content.Order.ToBuy.GroupBy(l => l.Seller))
        {
            sheet.Heading(seller.Key);
            sheet.Table(
                Columns,
                [
                    .. seller.Select(l => new Row(
                        [
                            Row.TickBox,
                            OrderWords.Board(l.Stock, precision),
                            LengthWriter.WriteSize(
                                l.Stock.Thickness,
                                l.Stock.Width,
                                l.Stock.Length,
                                precision
                            ),
                            $"{l.Bought}",
                            "",
                            "",
                            "",
                            "",
                            "",
                        ],
                        Below: " "
                    )),
                ]
            );
        }

        sheet.Heading("Look for");
        sheet.TickList([
            "hidden splits at the ends",
            "twist, cup and bow: sight along both edges",
            "loose knots, pith, pitch pockets where parts will lie",
            "paint, treatment or unknown wood: refuse it",
        ]);
    }
}
