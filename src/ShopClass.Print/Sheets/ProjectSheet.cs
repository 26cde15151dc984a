using System.Globalization;
using ShopClass.Core.Courses;
using ShopClass.Core.Drawings;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Sheets;

/// <summary>What the hand-out says.</summary>
/// <param name="CourseName">The course.</param>
/// <param name="Project">The project.</param>
/// <param name="Rules">The course's settings.</param>
/// <param name="PrintedOn">The date printed on it.</param>
public sealed record ProjectSheetContent(
    string CourseName,
    Project Project,
    CourseRules Rules,
    DateOnly PrintedOn
);

/// <summary>The hand-out: the parts drawn, the parts list, notes.</summary>
public static class ProjectSheet
{
    private static readonly Column[] Columns =
    [
        new("Part", 0.5, IsStrong: true),
        new("What", 1.5),
        new("How many", 0.8),
        new("Finished", 2.2, IsStrong: true),
        new("Rough, from planed stock", 2.2),
        new("Keep in mind", 3),
    ];

    /// <summary>The sheet as a PDF.</summary>
    public static byte[] Make(ProjectSheetContent content, Paper paper) =>
        Of(content, paper).ToPdf();

    /// <summary>The sheet, to be printed alone or in a set.</summary>
    public static Manuscript Of(ProjectSheetContent content, Paper paper)
    {
        var printed = content.PrintedOn.ToString("d MMM yyyy", CultureInfo.InvariantCulture);
        var frame = new PageFrame(
            paper,
            $"{content.Project.Name}: project sheet",
            $"{content.Project.Name}, project sheet",
            $"{content.CourseName}, project sheet, printed {printed}"
        );
        return new(frame, sheet => Write(sheet, content));
    }

    private static void Write(Sheet sheet, ProjectSheetContent content)
    {
        var (project, rules) = (content.Project, content.Rules);
        sheet.Title(project.Name, "Project sheet");
        if (project.Notes.Length > 0)
            sheet.Paragraph(project.Notes.ReplaceLineEndings(" "));
        if (project.Parts.Count == 0)
        {
            sheet.Paragraph("The project has no parts yet.");
            return;
        }

        sheet.Figure(PartsDrawing.Of(project, rules.Precision, new(sheet.Width, 9)));
        sheet.Heading("Parts");
        sheet.Table(Columns, [.. project.Parts.Select(p => RowOf(p, rules))]);
        sheet.Paragraph(
            "Thickness × width × length; the grain runs along the length unless it says otherwise. Rough sizes leave wood to be sawn and planed away.",
            Lettering.Face.Italic
        );
    }

    private static Row RowOf(Part part, CourseRules rules)
    {
        var rough = BlankNeeds.OnePiece(part, rules, Surfacing.S4S);
        var open = part.Open.Select(o =>
            $"{o.Dimension.ToString().ToLowerInvariant()} {LengthWriter.WriteExactWithUnit(o.Extra, rules.Unit)} over until {o.Until}"
        );
        string[] grain = part.Grain is GrainDirection.Any ? ["grain either way"] : [];
        string[] joints = part.JointNotes.Length > 0 ? [part.JointNotes.TrimEnd('.')] : [];
        return new([
            part.Letter,
            part.Name,
            $"{part.Quantity}",
            LengthWriter.WriteSize(
                part.Finished.Thickness,
                part.Finished.Width,
                part.Finished.Length,
                rules.Precision
            ),
            LengthWriter.WriteSize(rough.Thickness, rough.Width, rough.Length, rules.Precision),
            string.Join("; ", open.Concat(grain).Concat(joints)),
        ]);
    }
}
