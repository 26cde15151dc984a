using ShopClass.Core.Drawings;
using ShopClass.Core.Lessons;
using ShopClass.Core.Sawing;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Sheets;

/// <summary>One lesson for whoever teaches it: prepare, demonstrate, the rotation, watch for, check points.</summary>
public static class InstructorSheet
{
    // Rows of a rotation that a Letter page has room for.
    private const int MostOnAPage = 32;

    private static readonly Column[] Columns =
    [
        new("", 0.35),
        new("Begins", 0.6, IsStrong: true),
        new("Who", 1.5, IsStrong: true),
        new("What to look at", 4.5),
    ];

    /// <summary>The sheet of lesson <paramref name="lesson"/>, from 0, as a PDF.</summary>
    public static byte[] Make(LessonSheetContent content, int lesson, Paper paper) =>
        Of(content, lesson, paper).ToPdf();

    /// <summary>The sheet, to be printed alone or in a set.</summary>
    public static Manuscript Of(LessonSheetContent content, int lesson, Paper paper) =>
        new(
            content.Frame(
                $"{content.ProjectName}: lesson {lesson + 1}, {content.Request.Lessons[lesson].Title}",
                paper
            ),
            sheet => Write(sheet, content, lesson)
        );

    private static void Write(Sheet sheet, LessonSheetContent content, int lesson)
    {
        var asked = content.Request.Lessons[lesson];
        sheet.Title(asked.Title, $"Lesson {lesson + 1}");
        sheet.Paragraph(
            $"{LessonSheetContent.Date(asked.Date)}, {asked.Minutes} minutes. {content.Line} Here {RotationWords.Times(asked)}."
        );
        content.WriteWarning(sheet);
        sheet.Heading("Prepare");
        sheet.TickList(LessonWords.Prepare(content.Request, content.Plan, lesson));
        var showings = LessonWords.Demonstrate(content.Request, content.Plan, lesson);
        if (showings.Count > 0)
        {
            sheet.Heading("Demonstrate");
            sheet.TickList(showings);
        }

        sheet.Heading("Who is where", keepWith: 140);
        sheet.Paragraph(LessonWords.Legend);
        foreach (var some in Pages(content.Request.Students))
            sheet.Figure(
                RotationDrawing.Of(
                    content.Request,
                    content.Plan,
                    lesson,
                    new(sheet.Width, 7.5),
                    some
                )
            );
        WriteMeanwhile(sheet, content, lesson);
        WriteChecks(sheet, content, lesson);
        sheet.Heading("Before anybody saws", keepWith: 100);
        sheet.List(UsualCautions.Sentences);
    }

    // A big class stands on several pages, as many on each.
    private static IEnumerable<StudentWork[]> Pages(IReadOnlyList<StudentWork> students)
    {
        var pages = Math.Max(1, (students.Count + MostOnAPage - 1) / MostOnAPage);
        return students.Chunk(Math.Max(1, (students.Count + pages - 1) / pages));
    }

    private static void WriteMeanwhile(Sheet sheet, LessonSheetContent content, int lesson)
    {
        var lines = LessonWords.Meanwhile(content.Request, content.Plan, lesson);
        if (lines.Count == 0)
            return;
        sheet.Heading("Meanwhile, for whoever is free");
        sheet.List(lines);
    }

    private static void WriteChecks(Sheet sheet, LessonSheetContent content, int lesson)
    {
        var points = Checklists.CheckPoints(content.Request, content.Plan, lesson);
        if (points.Count == 0)
            return;
        sheet.Heading("Watch for");
        sheet.List(points.Select(p => $"{p.Skill.Name}: {p.Skill.WatchFor}"));
        sheet.Heading("Check points: the first time each student does it");
        sheet.Table(
            Columns,
            [
                .. from point in points
                from first in point.First
                orderby first.Start, first.Student
                select new Row([
                    Row.TickBox,
                    RotationWords.At(content.Request.Lessons[lesson], first.Start),
                    first.Student,
                    $"{point.Skill.Name}: {point.Skill.CheckPoint}",
                ]),
            ]
        );
    }
}
