using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Sheets;

/// <summary>What each kit costs. For the instructor alone.</summary>
public static class CostSheet
{
    private static readonly Column[] Columns =
    [
        new("Kit", 0.5),
        new("For", 2.4, IsStrong: true),
        new("Wood", 1),
        new("Shared", 1),
        new("Supplies", 1),
        new("Together", 1.2, IsStrong: true),
    ];

    /// <summary>The sheet as a PDF.</summary>
    public static byte[] Make(
        OrderSheetContent content,
        IReadOnlyList<Supply> supplies,
        Paper paper
    ) => Of(content, supplies, paper).ToPdf();

    /// <summary>The sheet, to be printed alone or in a set.</summary>
    public static Manuscript Of(
        OrderSheetContent content,
        IReadOnlyList<Supply> supplies,
        Paper paper
    ) =>
        new(
            content.Frame("costs", paper),
            sheet =>
            {
                var costs = KitCosts.Of(content.Order, supplies);
                var zero = Money.Zero(content.Order.Ask.Currency);
                sheet.Title("Costs", content.Project);
                sheet.Paragraph(
                    $"{content.Line} Private to the instructor. All in {zero.Currency}."
                );
                sheet.Table(
                    Columns,
                    [
                        .. costs.Select(c => new Row([
                            $"{c.Kit}",
                            c.Name,
                            MoneyText.Write(c.Wood),
                            MoneyText.Write(c.Shared),
                            MoneyText.Write(c.Supplies),
                            MoneyText.Write(c.Total),
                        ])),
                        new(["", "All kits", .. Sums(costs, zero)]),
                    ]
                );
                sheet.Paragraph(
                    "A board's price goes to its kits by the area of their blanks. Spare kits, spare parts and boards that came with a pack are shared evenly. Wood and shared together are the order's total, to the last minor unit."
                );
            }
        );

    private static string[] Sums(IReadOnlyList<KitCost> costs, Money zero)
    {
        string Sum(Func<KitCost, Money> of) =>
            MoneyText.Write(costs.Aggregate(zero, (sum, c) => sum + of(c)));
        return [Sum(c => c.Wood), Sum(c => c.Shared), Sum(c => c.Supplies), Sum(c => c.Total)];
    }
}
