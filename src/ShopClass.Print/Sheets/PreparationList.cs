using ShopClass.Core.Orders;
using ShopClass.Core.Planning.Classes;
using ShopClass.Core.Tools;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Sheets;

/// <summary>How to make the kits up, in the order one walks along the rack once; then what else goes into each.</summary>
public static class PreparationList
{
    private static readonly Column[] BoardColumns =
    [
        new("", 0.3),
        new("Board", 0.6, IsStrong: true),
        new("What it is", 2.6),
        new("Goes to", 4.4),
    ];

    private static readonly Column[] KitColumns =
    [
        new("", 0.3),
        new("Kit", 0.5, IsStrong: true),
        new("For", 1.6, IsStrong: true),
        new("Blanks from boards", 4.6),
    ];

    /// <summary>The list as a PDF.</summary>
    public static byte[] Make(
        OrderSheetContent content,
        IReadOnlyList<Supply> supplies,
        IReadOnlyList<ToolSet> toolSets,
        Paper paper
    ) => Of(content, supplies, toolSets, paper).ToPdf();

    /// <summary>The sheet, to be printed alone or in a set.</summary>
    public static Manuscript Of(
        OrderSheetContent content,
        IReadOnlyList<Supply> supplies,
        IReadOnlyList<ToolSet> toolSets,
        Paper paper
    ) =>
        new(
            content.Frame("preparation list", paper),
            sheet => Write(sheet, content, supplies, toolSets)
        );

    private static void Write(
        Sheet sheet,
        OrderSheetContent content,
        IReadOnlyList<Supply> supplies,
        IReadOnlyList<ToolSet> toolSets
    )
    {
        var order = content.Order;
        var boards = InRackOrder(order);
        sheet.Title("Preparation list", content.Project);
        sheet.Paragraph(content.Line);
        sheet.Heading("Boards, place by place");
        sheet.Table(BoardColumns, [.. boards.Select((b, i) => RowOf(order, b, i + 1))]);
        sheet.Heading("Kits");
        sheet.Table(
            KitColumns,
            [
                .. Enumerable
                    .Range(1, order.Ask.AllKits)
                    .Select(kit => new Row([
                        Row.TickBox,
                        $"{kit}",
                        order.KitName(kit),
                        string.Join(
                            "; ",
                            order
                                .BlanksOf(kit)
                                .Select(b =>
                                    $"{OrderWords.Blanks(b.Blanks)} from board {NumberOf(boards, b.Board)}"
                                )
                        ),
                    ])),
            ]
        );
        sheet.Heading("Into every kit");
        if (supplies.Count == 0)
            sheet.Paragraph("No supplies are listed for this project.");
        sheet.TickList(
            supplies.Select(s => s.Amount.Length > 0 ? $"{s.Name}: {s.Amount}" : s.Name)
        );
        if (toolSets.Count > 0)
            sheet.Heading("Tools into every kit");
        sheet.TickList(toolSets.Select(t => $"{t.Name}: {t.Words}"));
    }

    // Pieces on the rack by place, then what was bought, seller by seller.
    private static List<ClassBoard> InRackOrder(ClassOrder order) =>
        [
            .. order
                .Plan.Boards.Select((board, index) => (board, index))
                .OrderBy(b => b.board.StockSizeId is null ? 0 : 1)
                .ThenBy(b => order.RackOf(b.board)?.Place ?? "", StringComparer.OrdinalIgnoreCase)
                .ThenBy(b => b.board.StockSizeId ?? "", StringComparer.Ordinal)
                .ThenBy(b => b.index)
                .Select(b => b.board),
        ];

    private static int NumberOf(List<ClassBoard> boards, ClassBoard board) =>
        boards.FindIndex(b => ReferenceEquals(b, board)) + 1;

    private static Row RowOf(ClassOrder order, ClassBoard board, int number) =>
        new([
            Row.TickBox,
            $"{number}",
            OrderWords.Source(order, board),
            string.Join(
                "; ",
                board
                    .Blanks.GroupBy(b => order.KitOn(board, b))
                    .OrderBy(g => g.Key)
                    .Select(g =>
                        $"{(g.Key == 0 ? "spare parts" : $"{g.Key} {order.KitName(g.Key)}")}: {OrderWords.Blanks(g)}"
                    )
            ),
        ]);
}
