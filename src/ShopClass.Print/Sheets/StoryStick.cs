using ShopClass.Core.Drawings;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Sheets;

/// <summary>A plan's tape positions in full size, to cut out, paste on a strip of wood and mark from.</summary>
public static class StoryStick
{
    private const double PointsPerInch = 72;
    private const double StripHeight = 54;

    /// <summary>The stick as a PDF, in strips that are cut out and laid end to end.</summary>
    public static byte[] Make(KitSheetContent content, Paper paper) => Of(content, paper).ToPdf();

    /// <summary>The sheet, to be printed alone or in a set.</summary>
    public static Manuscript Of(KitSheetContent content, Paper paper)
    {
        var project = content.Plan.Request.Project.Name;
        var frame = new PageFrame(
            paper,
            $"{project}: story stick for {content.StudentShown}",
            $"{project}, story stick for {content.StudentShown}",
            $"{content.CourseName}, plan {content.PlanNumber}, printed {OrderSheetContent.Date(content.PrintedOn)}. Print at 100 %, never “fit to page”."
        );
        return new(frame, sheet => Write(sheet, content));
    }

    private static void Write(Sheet sheet, KitSheetContent content)
    {
        var plan = content.Plan;
        var precision = plan.Request.Rules.Precision;
        var isInch = precision.Unit() is UnitSystem.Inch;
        sheet.Title("Story stick", content.StudentShown);
        sheet.Paragraph(
            $"Full size. First lay a rule on the line below: if it is not {(isInch ? "4 in" : "100 mm")} long, do not use this sheet; print it again at 100 %."
        );
        sheet.Figure(CheckLine(isInch));
        foreach (var layout in plan.Plan.Boards)
        {
            var board = plan.Request.Boards.First(b => b.Id == layout.BoardId);
            var marks = PlanDrawing.TapeMarks(plan, board.Id);
            if (marks.Count == 0)
                continue;
            sheet.Heading(board.Name, keepWith: StripHeight);
            var piece = isInch ? Length.FromInches(6) : Length.FromMillimetres(160);
            for (var from = Length.Zero; from <= marks[^1].At; from += piece)
                sheet.Figure(Strip(marks, from, piece, precision));
        }

        sheet.Paragraph(
            "Cut the strips along their long edges and lay each one's end mark on the next one's beginning, from the board's start."
        );
    }

    private static Drawing CheckLine(bool isInch)
    {
        var width = isInch ? 4 * PointsPerInch : 100 / 25.4 * PointsPerInch;
        var words = isInch ? "4 in" : "100 mm";
        return new(
            width,
            30,
            "Check line",
            $"A line {words} long to check the printer's scale.",
            [
                new Line(0, 12, width, 12, Ink.PencilLine),
                new Line(0, 4, 0, 20, Ink.KnifeLine),
                new Line(width, 4, width, 20, Ink.KnifeLine),
                new Label(width / 2, 23, words, 9, Anchor.Middle, Ink.Lettering),
            ]
        );
    }

    private static Drawing Strip(
        IReadOnlyList<TapeMark> marks,
        Length from,
        Length piece,
        Precision precision
    )
    {
        var width = Points(piece);
        var shapes = new List<Shape>
        {
            new Line(0, 0, width, 0, Ink.PencilLine),
            new Line(0, StripHeight - 8, width, StripHeight - 8, Ink.PencilLine),
            new Line(0, 0, 0, StripHeight - 8, Ink.Finished),
            new Line(width, 0, width, StripHeight - 8, Ink.Finished),
            new Label(
                3,
                StripHeight - 13,
                LengthWriter.WriteWithUnit(from, precision),
                7,
                Anchor.Start,
                Ink.Quiet
            ),
        };
        var here = marks.Where(m => m.At >= from && m.At < from + piece).ToList();
        foreach (var mark in here)
        {
            var x = Points(mark.At - from);
            shapes.Add(new Line(x, 0, x, 26, Ink.KnifeLine));
            var atEnd = x > width - 90;
            var words = $"{LengthWriter.Write(mark.At, precision)} {mark.Meaning}";
            shapes.Add(
                new Label(
                    atEnd ? x - 3 : x + 3,
                    9 + 9 * (here.IndexOf(mark) % 3),
                    words,
                    7,
                    atEnd ? Anchor.End : Anchor.Start,
                    Ink.Lettering
                )
            );
        }

        var said =
            here.Count == 0
                ? "no mark"
                : string.Join(
                    ", ",
                    here.Select(m => $"{LengthWriter.WriteWithUnit(m.At, precision)} {m.Meaning}")
                );
        return new(
            width,
            StripHeight,
            "Strip of the story stick",
            $"From {LengthWriter.WriteWithUnit(from, precision)}: {said}.",
            shapes
        );
    }

    private static double Points(Length length) =>
        (double)length.Ticks / Length.TicksPerInch * PointsPerInch;
}
