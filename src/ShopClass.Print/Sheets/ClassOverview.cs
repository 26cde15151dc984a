using System.Globalization;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Sheets;

/// <summary>One student's line in the overview.</summary>
/// <param name="Kit">The kit's number.</param>
/// <param name="Name">Alias or name.</param>
/// <param name="Hand">"left-handed", or nothing.</param>
/// <param name="Boards">Boards logged.</param>
/// <param name="Plan">The plan in a few words.</param>
/// <param name="State">How far the kit is.</param>
public sealed record OverviewLine(
    int Kit,
    string Name,
    string Hand,
    int Boards,
    string Plan,
    string State
);

/// <summary>The class on a page: who has which board, plan and kit.</summary>
public static class ClassOverview
{
    private static readonly Column[] Columns =
    [
        new("", 0.3),
        new("Kit", 0.5, IsStrong: true),
        new("Student", 1.8, IsStrong: true),
        new("Boards", 0.7),
        new("Plan", 3.6),
        new("Kit is", 1.2),
        new("Notes", 1.6),
    ];

    /// <summary>The overview as a PDF.</summary>
    public static byte[] Make(
        string courseName,
        string projectName,
        IReadOnlyList<OverviewLine> lines,
        DateOnly printedOn,
        Paper paper
    ) => Of(courseName, projectName, lines, printedOn, paper).ToPdf();

    /// <summary>The sheet, to be printed alone or in a set.</summary>
    public static Manuscript Of(
        string courseName,
        string projectName,
        IReadOnlyList<OverviewLine> lines,
        DateOnly printedOn,
        Paper paper
    )
    {
        var printed = printedOn.ToString("d MMM yyyy", CultureInfo.InvariantCulture);
        var frame = new PageFrame(
            paper,
            $"{projectName}: class overview",
            $"{projectName}, class overview",
            $"{courseName}, class overview, printed {printed}"
        );
        return new(
            frame,
            sheet =>
            {
                sheet.Title(projectName, "Class overview");
                sheet.Paragraph($"{courseName}. {lines.Count} students. Printed {printed}.");
                sheet.Table(
                    Columns,
                    [
                        .. lines.Select(l => new Row([
                            Row.TickBox,
                            $"{l.Kit}",
                            l.Hand.Length > 0 ? $"{l.Name} ({l.Hand})" : l.Name,
                            $"{l.Boards}",
                            l.Plan,
                            l.State,
                            "",
                        ])),
                    ]
                );
            }
        );
    }
}
