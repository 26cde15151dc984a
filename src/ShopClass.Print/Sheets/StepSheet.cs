using System.Globalization;
using ShopClass.Core.Drawings;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Print.Lettering;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Sheets;

/// <summary>How the steps stand on paper.</summary>
public enum StepLayout
{
    /// <summary>A card for each step, with its picture, to cut apart.</summary>
    Cards,

    /// <summary>One list from the first step to the last, without pictures.</summary>
    Page,
}

/// <summary>How big the letters are.</summary>
public enum PrintSize
{
    /// <summary>Readable at arm's length.</summary>
    Usual,

    /// <summary>At least 14 points, as large print is usually set (common practice).</summary>
    Large,
}

/// <summary>What a step sheet says besides the steps.</summary>
/// <param name="CourseName">The course.</param>
/// <param name="StudentShown">The student's alias or name.</param>
/// <param name="Plan">The checked plan.</param>
/// <param name="Work">Its steps, for the student's hand.</param>
/// <param name="PlanNumber">The plan's version.</param>
/// <param name="MadeUtc">When the plan was made.</param>
/// <param name="PrintedOn">The date printed on the sheet.</param>
/// <param name="IsOutOfDate">Whether project, boards or rules have changed since; the sheet then says so.</param>
public sealed record StepSheetContent(
    string CourseName,
    string StudentShown,
    CheckedPlan Plan,
    WorkSequence Work,
    int PlanNumber,
    DateTime MadeUtc,
    DateOnly PrintedOn,
    bool IsOutOfDate
)
{
    /// <summary>What the minutes rest on, in a sentence; empty for the table's own.</summary>
    public string Basis { get; init; } = "";
}

/// <summary>The steps of one student on paper, to tick off at the bench.</summary>
public static class StepSheet
{
    private const double LargePrint = 14;

    /// <summary>The sheet as a PDF.</summary>
    public static byte[] Make(
        StepSheetContent content,
        Paper paper,
        PrintSize size = PrintSize.Usual,
        StepLayout layout = StepLayout.Cards
    ) => Of(content, paper, size, layout).ToPdf();

    /// <summary>The sheet, to be printed alone or in a set.</summary>
    public static Manuscript Of(
        StepSheetContent content,
        Paper paper,
        PrintSize size = PrintSize.Usual,
        StepLayout layout = StepLayout.Cards
    )
    {
        var project = content.Plan.Request.Project.Name;
        var frame = new PageFrame(
            paper,
            $"{project}: steps for {content.StudentShown}",
            $"{project}, steps for {content.StudentShown}",
            $"{content.CourseName}, plan {content.PlanNumber} of {Made(content)}, printed {Date(content.PrintedOn)}",
            size is PrintSize.Large ? LargePrint : Sheet.TextSize
        );
        // A sheet is written twice, once to count its pages: its pictures are drawn once and then let go.
        IReadOnlyList<Card>? drawn = null;
        return new(
            frame,
            sheet =>
            {
                var cards = drawn ?? Cards(sheet, content, size, layout);
                drawn = drawn is null ? cards : null;
                Write(sheet, content, cards, size, layout);
            }
        );
    }

    private static void Write(
        Sheet sheet,
        StepSheetContent content,
        IReadOnlyList<Card> cards,
        PrintSize size,
        StepLayout layout
    )
    {
        var plan = content.Plan;
        sheet.Title(plan.Request.Project.Name, content.StudentShown);
        sheet.Paragraph(
            $"{content.Work.Steps.Count} steps, for the {(content.Work.Hand is Hand.Left ? "left" : "right")} hand. {content.CourseName}. Plan {content.PlanNumber}, made {Made(content)}, printed {Date(content.PrintedOn)}. Tick each step when it is done.{(content.Basis.Length > 0 ? $" {content.Basis}" : "")}"
        );
        if (content.IsOutOfDate)
            sheet.Warning(
                "Out of date: the project, a board or the course's settings have changed since this plan was made. Ask for a new one before sawing."
            );
        if (!plan.Rehearsal.Passed)
            sheet.Warning("Do not saw: the rehearsal did not agree with this plan.");
        if (!plan.Plan.IsComplete)
            sheet.Warning(
                $"These boards do not yield everything. Missing: {string.Join(", ", plan.Plan.Missing)}."
            );
        sheet.Heading("Before you begin", keepWith: 100);
        sheet.List(Cautions.For(plan));
        sheet.Heading(layout is StepLayout.Cards ? "The steps, a card each" : "The steps");
        sheet.Cards(cards, Columns(size, layout), withCutLines: layout is StepLayout.Cards);
    }

    private static int Columns(PrintSize size, StepLayout layout) =>
        layout is StepLayout.Cards && size is PrintSize.Usual ? 2 : 1;

    private static IReadOnlyList<Card> Cards(
        Sheet sheet,
        StepSheetContent content,
        PrintSize size,
        StepLayout layout
    )
    {
        var withPictures = layout is StepLayout.Cards;
        // Large letters leave no room for two cards side by side, so each stands in two columns itself.
        var inTwoColumns = withPictures && size is PrintSize.Large;
        var frame = new DrawingFrame(
            sheet.PictureWidth(Columns(size, layout), inTwoColumns),
            size is PrintSize.Large ? 11 : 7.5
        );
        return
        [
            .. content.Work.Steps.Select(s =>
                CardOf(content, s, withPictures ? frame : null, inTwoColumns)
            ),
        ];
    }

    private static Card CardOf(
        StepSheetContent content,
        Step step,
        DrawingFrame? frame,
        bool inTwoColumns
    )
    {
        var unit = content.Plan.Request.Rules.Unit;
        return new(
            $"{step.Number}. {step.Title}",
            frame is null ? null : StepDrawing.Of(content.Plan, content.Work, step.Number, frame),
            [.. StepLines.Of(step, unit)],
            frame is null
                ? ""
                : $"{content.StudentShown}, {content.Plan.Request.Project.Name}, plan {content.PlanNumber} of {Made(content)}: {step.Number} of {content.Work.Steps.Count}"
        )
        {
            IsInTwoColumns = inTwoColumns,
        };
    }

    private static string Made(StepSheetContent content) =>
        Date(DateOnly.FromDateTime(content.MadeUtc));

    private static string Date(DateOnly date) =>
        date.ToString("d MMM yyyy", CultureInfo.InvariantCulture);
}
