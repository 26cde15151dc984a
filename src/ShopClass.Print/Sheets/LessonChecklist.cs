using ShopClass.Core.Drawings;
using ShopClass.Core.Lessons;
using ShopClass.Core.Sawing;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Sheets;

/// <summary>A student's own steps, lesson by lesson, to tick off.</summary>
public static class LessonChecklist
{
    private static readonly Column[] Columns =
    [
        new("", 0.35),
        new("Step", 0.45, IsStrong: true),
        new("What", 4.6, IsStrong: true),
        new("Begins", 0.8),
        new("About", 0.8),
        new("Where", 1.5),
    ];

    /// <summary>The checklist of one student as a PDF.</summary>
    /// <exception cref="ArgumentException">The plan has no such student.</exception>
    public static byte[] Make(LessonSheetContent content, string studentId, Paper paper) =>
        Of(content, studentId, paper).ToPdf();

    /// <summary>The sheet, to be printed alone or in a set.</summary>
    public static Manuscript Of(LessonSheetContent content, string studentId, Paper paper)
    {
        var student =
            content.Request.Students.FirstOrDefault(s => s.StudentId == studentId)
            ?? throw new ArgumentException("Not a student of this plan.", nameof(studentId));
        return new(
            content.Frame($"{content.ProjectName}: lessons of {student.Name}", paper),
            sheet => Write(sheet, content, student)
        );
    }

    private static void Write(Sheet sheet, LessonSheetContent content, StudentWork student)
    {
        sheet.Title("Lesson by lesson", student.Name);
        sheet.Paragraph(
            $"{content.Line} Board: {(student.Board.Length > 0 ? student.Board : "none yet")}."
        );
        content.WriteWarning(sheet);
        if (student.WithoutWork.Length > 0)
            sheet.Warning(student.WithoutWork);
        sheet.Paragraph(
            "Begins: by the clock where the lesson has an hour, else hours and minutes after its beginning. Times are a guide; the order of your steps is what matters. "
                + "Wait for the demonstration before you use a skill for the first time."
        );
        foreach (var lesson in Checklists.For(content.Request, content.Plan, student))
            WriteLesson(sheet, content, lesson);
        var left = Checklists.LeftOf(content.Plan, student);
        if (left.Count > 0)
        {
            sheet.Heading("Does not fit into the lessons");
            sheet.TickList(left);
        }

        sheet.Heading("Before you saw", keepWith: 120);
        sheet.List(UsualCautions.Sentences);
    }

    private static void WriteLesson(Sheet sheet, LessonSheetContent content, StudentLesson lesson)
    {
        sheet.Heading(content.LessonLine(lesson.Lesson));
        if (lesson.IsAbsent)
        {
            sheet.Paragraph("Absent. What is shown in this lesson is shown to you again.");
            return;
        }

        var shown = content
            .Plan.Lessons[lesson.Lesson]
            .Showings.Where(s => s.StudentId is null)
            .ToList();
        if (shown.Count > 0)
            sheet.Paragraph(
                $"Watch first: {string.Join(", ", shown.Select(s => SkillBook.Of(s.Skill).Name))}."
            );
        if (lesson.Lines.Count == 0)
        {
            sheet.Paragraph("Nothing of your own is planned here: finish what is open, or help.");
            return;
        }

        sheet.Table(
            Columns,
            [
                .. lesson.Lines.Select(l => new Row([
                    Row.TickBox,
                    $"{l.Number}",
                    l.Title,
                    RotationWords.At(content.Request.Lessons[lesson.Lesson], l.Start),
                    $"{Math.Max(1, l.End - l.Start)} min",
                    l.Where,
                ])),
            ]
        );
    }
}
