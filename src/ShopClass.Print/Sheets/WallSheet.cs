using ShopClass.Core.Lessons;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Sheets;

/// <summary>The sheet on the wall of the room: every student, their board, their next three steps and where they begin.</summary>
public static class WallSheet
{
    private static readonly Column[] Columns =
    [
        new("Student", 1.5, IsStrong: true),
        new("Board", 1.5),
        new("Next three steps", 4.2),
        new("Begins at", 1.2, IsStrong: true),
    ];

    /// <summary>The sheet for the beginning of lesson <paramref name="lesson"/>, from 0, as a PDF.</summary>
    public static byte[] Make(LessonSheetContent content, int lesson, Paper paper) =>
        Of(content, lesson, paper).ToPdf();

    /// <summary>The sheet, to be printed alone or in a set.</summary>
    public static Manuscript Of(LessonSheetContent content, int lesson, Paper paper) =>
        new(
            content.Frame($"{content.ProjectName}: who does what, lesson {lesson + 1}", paper),
            sheet =>
            {
                sheet.Title("Who does what", content.Request.Lessons[lesson].Title);
                sheet.Paragraph(
                    $"{content.LessonLine(lesson)}. {content.Line} "
                        + (
                            content.Ticked.Count > 0
                                ? "Next steps go by what is ticked so far; who has ticked nothing goes by the plan."
                                : "Next steps go by the plan: nothing is ticked yet."
                        )
                );
                content.WriteWarning(sheet);
                sheet.Table(
                    Columns,
                    [
                        .. Checklists
                            .Wall(content.Request, content.Plan, lesson, content.Ticked)
                            .Select(l => new Row([
                                l.Student,
                                l.Board,
                                l.Next.Count == 0
                                    ? "Nothing more is planned."
                                    : string.Join("; ", l.Next),
                                l.Station,
                            ])),
                    ]
                );
                sheet.Paragraph(
                    "Your shop's rules and your instructor come before this sheet. Wait for the demonstration before a skill is used for the first time."
                );
            }
        );
}
