using ShopClass.Core.Lessons;
using ShopClass.Core.Measure;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Sheets;

/// <summary>What the sheets of one student's open steps say.</summary>
/// <param name="CourseName">The course.</param>
/// <param name="ProjectName">What they build.</param>
/// <param name="StudentShown">The student's alias or name.</param>
/// <param name="PlanNumber">The version of their plan.</param>
/// <param name="Unit">The course's unit.</param>
/// <param name="PrintedOn">The date printed on the sheet.</param>
public sealed record OpenStepContent(
    string CourseName,
    string ProjectName,
    string StudentShown,
    int PlanNumber,
    UnitSystem Unit,
    DateOnly PrintedOn
)
{
    /// <summary>What the minutes rest on, in a sentence; empty for the table's own.</summary>
    public string Basis { get; init; } = "";

    internal string Line =>
        $"{CourseName}, {ProjectName}, plan {PlanNumber}, printed {LessonSheetContent.Date(PrintedOn)}.";

    internal PageFrame Frame(string what, Paper paper) =>
        new(
            paper,
            $"{ProjectName}: {what} of {StudentShown}",
            $"{ProjectName}, {what} of {StudentShown}",
            $"{CourseName}, plan {PlanNumber}, printed {LessonSheetContent.Date(PrintedOn)}"
        );
}

/// <summary>What a student who was away catches up with: exactly the missed steps, and how.</summary>
public static class CatchUpSheet
{
    private static readonly Column[] Columns =
    [
        new("", 0.35),
        new("Step", 0.65, IsStrong: true),
        new("What", 3.4, IsStrong: true),
        new("About", 0.8),
        new("Where", 1.3),
        new("How", 3),
        new("Helper", 1.1),
    ];

    /// <summary>The sheet as a PDF.</summary>
    public static byte[] Make(
        OpenStepContent content,
        string lesson,
        IReadOnlyList<MissedStep> missed,
        Paper paper
    ) =>
        new Manuscript(
            content.Frame("catching up", paper),
            sheet => Write(sheet, content, lesson, missed)
        ).ToPdf();

    private static void Write(
        Sheet sheet,
        OpenStepContent content,
        string lesson,
        IReadOnlyList<MissedStep> missed
    )
    {
        sheet.Title("Catching up", content.StudentShown);
        sheet.Paragraph($"{content.Line} Up to and with: {lesson}.");
        if (missed.Count == 0)
        {
            sheet.Paragraph("Nothing was missed: everything planned until then is done.");
            return;
        }

        var minutes = (missed.Sum(m => (long)m.Step.Time.Busy) + 59) / 60;
        sheet.Paragraph(
            $"{missed.Count} steps, about {minutes} minutes of work. {content.Basis}".TrimEnd()
        );
        sheet.Table(
            Columns,
            [
                .. missed.Select(m => new Row([
                    Row.TickBox,
                    $"{m.Step.Number}",
                    m.Step.Title,
                    $"{TurnMaker.MinutesOf(m.Step.Time.Busy)} min",
                    StepTerms.Of(m.Step.Station),
                    m.How,
                    m.CanBePreCut ? "may saw it beforehand" : "",
                ])),
            ]
        );
        sheet.Heading("Before anybody saws", keepWith: 100);
        sheet.List(UsualCautions.Sentences);
    }
}

/// <summary>What is left to do when a course ends before the piece is done.</summary>
public static class TakeHomeSheet
{
    /// <summary>The sheet as a PDF.</summary>
    public static byte[] Make(OpenStepContent content, IReadOnlyList<Step> open, Paper paper) =>
        new Manuscript(
            content.Frame("to finish at home", paper),
            sheet => Write(sheet, content, open)
        ).ToPdf();

    private static void Write(Sheet sheet, OpenStepContent content, IReadOnlyList<Step> open)
    {
        sheet.Title("To finish at home", content.StudentShown);
        sheet.Paragraph(content.Line);
        if (open.Count == 0)
        {
            sheet.Paragraph("Everything is done.");
            return;
        }

        sheet.Warning(
            "There is no instructor at home. Do nothing you have not been shown and done in class; ask for an open shop hour or qualified help instead."
        );
        var minutes = (open.Sum(s => (long)s.Time.Busy) + 59) / 60;
        sheet.Paragraph(
            $"{open.Count} steps are left, about {minutes} minutes of work, in this order. {content.Basis}".TrimEnd()
        );
        string[] tools = [.. open.SelectMany(s => s.Tools).Distinct(StringComparer.Ordinal)];
        if (tools.Length > 0)
        {
            sheet.Heading("Have at hand");
            sheet.Paragraph(string.Join("; ", tools) + ".");
        }

        sheet.Heading("Before you saw", keepWith: 100);
        sheet.List(UsualCautions.Sentences);
        sheet.Heading("The steps that are left");
        sheet.Cards(
            [
                .. open.Select(s => new Card(
                    $"{s.Number}. {s.Title}",
                    null,
                    [.. StepLines.Of(s, content.Unit)],
                    ""
                )),
            ],
            1,
            withCutLines: false
        );
    }
}
