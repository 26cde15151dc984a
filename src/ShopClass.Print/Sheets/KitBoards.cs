using ShopClass.Core.Drawings;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Sheets;

/// <summary>The boards of a kit: each drawn with its cuts, and the tape's running positions.</summary>
internal static class KitBoards
{
    private static readonly Column[] TapeColumns =
    [
        new("Tape at", 1, IsStrong: true),
        new("", 0.35),
        new("What the line is", 2.4),
        new("Tape at", 1, IsStrong: true),
        new("", 0.35),
        new("What the line is", 2.4),
    ];

    public static void Write(Sheet sheet, CheckedPlan plan)
    {
        foreach (var layout in plan.Plan.Boards)
            WriteBoard(sheet, plan, plan.Request.Boards.First(b => b.Id == layout.BoardId));
        sheet.Paragraph(
            "On the drawing: heavy outline, a blank with width × length as sawn; dashed, the finished part; slanting "
                + "hatch, waste; dotted, an offcut to keep; black line, the kerf. The tape lies along the near edge.",
            Lettering.Face.Italic
        );
    }

    private static void WriteBoard(Sheet sheet, CheckedPlan plan, Board board)
    {
        var drawing = PlanDrawing.Of(plan, board.Id, new(sheet.Width, 9));
        sheet.Heading($"{board.Name}: {Words(board, plan)}", keepWith: drawing.Height);
        sheet.Figure(drawing);
        var marks = PlanDrawing.TapeMarks(plan, board.Id);
        if (marks.Count == 0)
            return;
        sheet.Paragraph(
            $"Running tape positions on {board.Name}: hook the tape on the start once and mark them all."
        );
        sheet.Table(TapeColumns, InTwoColumns(marks, plan));
    }

    // Read down the left half, then down the right.
    private static Row[] InTwoColumns(IReadOnlyList<TapeMark> marks, CheckedPlan plan)
    {
        var half = (marks.Count + 1) / 2;
        return
        [
            .. Enumerable
                .Range(0, half)
                .Select(i => new Row([.. Cells(marks, i, plan), .. Cells(marks, i + half, plan)])),
        ];
    }

    private static string[] Cells(IReadOnlyList<TapeMark> marks, int index, CheckedPlan plan) =>
        index < marks.Count
            ?
            [
                LengthWriter.WriteWithUnit(marks[index].At, plan.Request.Rules.Precision),
                Row.TickBox,
                marks[index].Meaning,
            ]
            : ["", "", ""];

    private static string Words(Board board, CheckedPlan plan)
    {
        var species = SpeciesTable.Find(board.SpeciesId)?.CommonName ?? board.SpeciesId;
        var size = LengthWriter.WriteSize(
            board.Thickness,
            board.SmallestWidth,
            board.Length,
            plan.Request.Rules.Precision
        );
        return $"{species}, {size}";
    }
}
