using ShopClass.Core.Tools;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Sheets;

/// <summary>What each lesson needs in tools against what the shop has, for whoever sets them out; then how sharp the saws are.</summary>
public static class ToolSheet
{
    private static readonly Column[] Columns =
    [
        new("", 0.3),
        new("Tool", 3, IsStrong: true),
        new("At once", 0.8),
        new("The shop has", 1.1),
        new("Too few", 0.8),
    ];

    /// <summary>The sheet as a PDF.</summary>
    public static byte[] Make(
        LessonSheetContent content,
        ToolChest chest,
        IReadOnlyList<SawState> saws,
        Paper paper
    ) => Of(content, chest, saws, paper).ToPdf();

    /// <summary>The sheet, to be printed alone or in a set.</summary>
    public static Manuscript Of(
        LessonSheetContent content,
        ToolChest chest,
        IReadOnlyList<SawState> saws,
        Paper paper
    ) =>
        new(
            content.Frame($"{content.ProjectName}: tools for the lessons", paper),
            sheet => Write(sheet, content, chest, saws)
        );

    private static void Write(
        Sheet sheet,
        LessonSheetContent content,
        ToolChest chest,
        IReadOnlyList<SawState> saws
    )
    {
        sheet.Title("Tools for the lessons", content.ProjectName);
        sheet.Paragraph(content.Line);
        content.WriteWarning(sheet);
        foreach (var sentence in LessonTools.ShortForKits(chest, content.Request.Students.Count))
            sheet.Warning(sentence);
        for (var lesson = 0; lesson < content.Request.Lessons.Count; lesson++)
        {
            var tools = LessonTools.For(content.Request, content.Plan, lesson, chest);
            sheet.Heading(content.LessonLine(lesson));
            if (tools.Count == 0)
                sheet.Paragraph("No tool is used.");
            else
                sheet.Table(Columns, [.. tools.Select(RowOf)]);
        }

        if (saws.Count > 0)
            sheet.Heading("Sharpening");
        sheet.TickList(saws.Select(s => $"{s.Tool.Name}: {s.Sentence}"));
        sheet.Paragraph(
            "Damaged or dull tools stay out of the class. What is in every kit's tool sets is not counted again."
        );
    }

    private static Row RowOf(LessonTool tool) =>
        new(
            [
                Row.TickBox,
                tool.Need.Words,
                $"{tool.Need.Count}",
                $"{tool.Have}",
                tool.Wanting == 0 ? "none" : $"{tool.Wanting}",
            ],
            Warning: tool.Sentence
        );
}
