using ShopClass.Core.Lessons;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Sheets;

/// <summary>The state of a class on one page, for whoever takes the next lesson.</summary>
public static class ClassStateSheet
{
    private static readonly Column[] Columns =
    [
        new("Student", 1.4, IsStrong: true),
        new("Done", 0.8),
        new("Goes on with", 3.2),
        new("Where", 1.1),
        new("Against the plan", 1.9),
        new("Waits for you", 1.9),
    ];

    /// <summary>The sheet as a PDF.</summary>
    public static byte[] Make(
        string courseName,
        ClassState state,
        DateOnly printedOn,
        Paper paper
    ) =>
        new Manuscript(
            new(
                paper,
                $"{courseName}: state of the class",
                $"{courseName}, state of the class",
                $"{courseName}, printed {LessonSheetContent.Date(printedOn)}"
            ),
            sheet => Write(sheet, courseName, state, printedOn)
        ).ToPdf();

    private static void Write(Sheet sheet, string courseName, ClassState state, DateOnly printedOn)
    {
        sheet.Title("State of the class", courseName);
        sheet.Paragraph(
            $"As it stood on {LessonSheetContent.Date(printedOn)}. {(state.Lesson.Length > 0 ? $"Lesson: {state.Lesson}." : "No lesson is left.")} "
                + "Your shop's rules and the school's policy come before this sheet."
        );
        if (state.Prepare.Count > 0)
        {
            sheet.Heading("Prepare");
            sheet.TickList(state.Prepare);
        }

        if (state.Show.Count > 0)
        {
            sheet.Heading("Demonstrate");
            sheet.TickList(state.Show);
        }

        sheet.Heading("Who is where in the work");
        if (state.Basis.Length > 0)
            sheet.Paragraph(state.Basis);
        sheet.Table(
            Columns,
            [
                .. state.Students.Select(s => new Row([
                    s.Student,
                    s.Steps == 0 ? "no plan" : $"{s.Done} of {s.Steps}",
                    s.Next.Length > 0 ? s.Next
                    : s.Steps > 0 ? "All done"
                    : "",
                    s.Station,
                    s.Standing,
                    string.Join("; ", s.Open),
                ])),
            ]
        );
    }
}
