using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Sheets;

/// <summary>The cuts of a kit, in the order they are made.</summary>
internal static class KitCuts
{
    private static readonly Column[] Columns =
    [
        new("No.", 0.5, IsStrong: true),
        new("", 0.35),
        new("Cut", 1.3, IsStrong: true),
        new("Line at", 2.4, IsStrong: true),
        new("Class", 0.9),
        new("Saw", 1.6),
        new("Held", 1.25),
        new("Line", 0.9),
    ];

    public static void Write(Sheet sheet, CheckedPlan plan, bool isLeftHanded)
    {
        sheet.Heading("Cuts, in order");
        if (isLeftHanded)
            sheet.Paragraph(
                "Left-handed: hold and stand as in a mirror. The left hand saws, the right hand and knee hold, and the "
                    + "waste falls to the left."
            );
        var boards = plan.Request.Boards.ToDictionary(
            b => b.Id,
            b => b.Name,
            StringComparer.Ordinal
        );
        var several = plan.Plan.Boards.Count > 1;
        Row[] rows =
        [
            .. plan.Sequence.Cuts.Select(c =>
                RowOf(c, several ? $"{boards[c.BoardId]}. " : "", plan)
            ),
        ];
        sheet.Table(Columns, rows);
    }

    private static Row RowOf(Cut cut, string board, CheckedPlan plan) =>
        new(
            [
                $"{cut.Number}",
                Row.TickBox,
                CutTerms.Of(cut.Kind),
                LineAt(cut, plan.Request.Rules.Precision),
                CutTerms.Of(cut.Class),
                CutTerms.Of(cut.Saw),
                CutTerms.Of(cut.Support),
                CutTerms.Of(cut.Line),
            ],
            $"{board}Leaves {cut.Leaves}. {cut.Hold}",
            cut.HoldNote is { } note ? Sentence(note) : null
        );

    private static string LineAt(Cut cut, Precision precision) =>
        LengthWriter.WriteWithUnit(cut.Position, precision)
        + (cut.Kind is CutKind.Rip ? " from near edge" : " from start");

    private static string Sentence(string words) =>
        $"{char.ToUpperInvariant(words[0])}{words[1..].TrimEnd('.')}.";
}
