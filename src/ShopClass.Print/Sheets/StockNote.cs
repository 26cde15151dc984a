using System.Globalization;
using ShopClass.Core.Drawings;
using ShopClass.Core.Lumber;
using ShopClass.Core.Planning.Guide;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Sheets;

/// <summary>What a note for the seller says.</summary>
/// <param name="CourseName">The course.</param>
/// <param name="Guide">The stock guide.</param>
/// <param name="PrintedOn">The date printed on the note.</param>
public sealed record StockNoteContent(string CourseName, StockGuide Guide, DateOnly PrintedOn);

/// <summary>The note to take to the seller: sizes by the seller's names, what to measure there, species, cautions.</summary>
public static class StockNote
{
    // A note is one page: rows and picture give way until it is. The screen lists them all.
    private static readonly Room[] Rooms =
    [
        new(8, 130),
        new(6, 130),
        new(5, 90),
        new(6, 0),
        new(4, 0),
        new(4, 0, 24),
        new(3, 0, 12),
    ];

    private static readonly Column[] Columns =
    [
        new("Ask for", 1.5, IsStrong: true),
        new("Width × length, at least", 1.5),
        new("What it takes", 3.6),
    ];

    /// <summary>The note as a PDF.</summary>
    public static byte[] Make(StockNoteContent content, Paper paper) => Of(content, paper).ToPdf();

    /// <summary>The sheet, to be printed alone or in a set.</summary>
    public static Manuscript Of(StockNoteContent content, Paper paper)
    {
        var project = content.Guide.Project.Name;
        var frame = new PageFrame(
            paper,
            $"{project}: stock guide",
            $"{project}, stock guide",
            $"{content.CourseName}, stock guide, printed {Date(content.PrintedOn)}"
        );
        return Rooms
                .Select(room => new Manuscript(frame, sheet => Write(sheet, content, room)))
                .FirstOrDefault(m => Printer.PagesOf(m) == 1)
            ?? new(frame, sheet => Write(sheet, content, Rooms[^1]));
    }

    private static void Write(Sheet sheet, StockNoteContent content, Room room)
    {
        var guide = content.Guide;
        sheet.Title(guide.Project.Name, "Stock guide");
        sheet.Paragraph(
            $"Any one row yields all the parts of its heading. {GuideWords.Counted(guide.Rules)} {GuideWords.Caution}"
        );
        foreach (var group in guide.Groups)
            WriteGroup(sheet, guide, group, room);
        if (guide.Groups.Count == 0)
            sheet.Paragraph("The project has no parts yet.");
        sheet.List(GuideWords.Skills(guide));
        sheet.Heading("Measure at the seller's");
        sheet.TickList(GuideWords.MeasureThere);
        WriteSpecies(sheet, guide, room);
    }

    private static void WriteGroup(Sheet sheet, StockGuide guide, StockGroup group, Room room)
    {
        sheet.Heading(GuideWords.Name(group, guide.Rules));
        sheet.Paragraph(GuideWords.Thickness(group, guide.Rules));
        var rows = group.Options.Take(Math.Max(1, room.Rows / guide.Groups.Count)).ToList();
        if (rows.Count == 0)
            return;
        if (Picture(sheet, guide, group, rows, room.Picture) is { } picture)
            sheet.Figure(picture);
        sheet.Table(
            Columns,
            [
                .. rows.Select(o => new Row(
                    [
                        GuideWords.Ask(o, guide.Rules.Unit),
                        GuideWords.AtLeast(o, guide.Rules.Precision),
                        GuideWords.Work(o),
                    ],
                    Warning: GuideWords.Prepared(o, group, guide.Rules)
                )),
            ]
        );
        if (rows.Count < group.Options.Count)
            sheet.Paragraph($"{group.Options.Count - rows.Count} more on the screen.");
    }

    // As many of the rows as the room holds; none, where not even two boards can be compared.
    private static Drawing? Picture(
        Sheet sheet,
        StockGuide guide,
        StockGroup group,
        List<StockOption> rows,
        double room
    )
    {
        for (var shown = rows.Count; shown > 1; shown--)
        {
            var drawing = StockDrawing.Of(
                group,
                [.. rows.Take(shown)],
                guide.Rules,
                new(sheet.Width, 8)
            );
            if (drawing.Height * guide.Groups.Count <= room)
                return drawing;
        }

        return null;
    }

    private static void WriteSpecies(Sheet sheet, StockGuide guide, Room room)
    {
        var fit = guide.Species.Where(s => s.Going is Going.Fit).ToList();
        var more = fit.Count > room.Species ? "; more on the screen" : "";
        sheet.Heading("Species for the hand saw");
        sheet.Paragraph(SpeciesWords.RankedBy(guide.Rules));
        sheet.Paragraph($"Suits: {SpeciesWords.Line(fit.Take(room.Species))}{more}.");
        sheet.Paragraph(
            $"[S]: dust known to sensitise. [R]: hard and soft rings in turn, the saw jumps. {SpeciesWords.CautionBasis}"
        );
        sheet.Paragraph(GuideWords.SizesFrom(guide.Rules.Unit), Lettering.Face.Italic);
    }

    private static string Date(DateOnly date) =>
        date.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>Rows for all groups together, points of height for their pictures, and how many species.</summary>
    private sealed record Room(int Rows, double Picture, int Species = int.MaxValue);
}
