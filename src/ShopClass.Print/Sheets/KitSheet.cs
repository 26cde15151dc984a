using System.Globalization;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Alternatives;
using ShopClass.Core.Planning.Wishes;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Sheets;

/// <summary>A paper format.</summary>
public enum Paper
{
    /// <summary>210 x 297 mm.</summary>
    A4,

    /// <summary>8 1/2 x 11 in.</summary>
    Letter,
}

/// <summary>What a kit sheet says besides the plan.</summary>
/// <param name="CourseName">The course.</param>
/// <param name="StudentShown">The student's alias or name.</param>
/// <param name="IsLeftHanded">Whether holds are mirrored.</param>
/// <param name="Plan">The checked plan.</param>
/// <param name="PlanNumber">Its version.</param>
/// <param name="MadeUtc">When the plan was made.</param>
/// <param name="PrintedOn">The date printed on the sheet.</param>
/// <param name="IsOutOfDate">Whether project, boards or rules have changed since; the sheet then says so.</param>
public sealed record KitSheetContent(
    string CourseName,
    string StudentShown,
    bool IsLeftHanded,
    CheckedPlan Plan,
    int PlanNumber,
    DateTime MadeUtc,
    DateOnly PrintedOn,
    bool IsOutOfDate
);

/// <summary>The sheet that goes with a student's board: drawing, tape positions, cuts, parts, tools, cautions.</summary>
public static class KitSheet
{
    /// <summary>The sheet as a PDF.</summary>
    public static byte[] Make(KitSheetContent content, Paper paper) => Of(content, paper).ToPdf();

    /// <summary>The sheet, to be printed alone or in a set.</summary>
    public static Manuscript Of(KitSheetContent content, Paper paper)
    {
        var project = content.Plan.Request.Project.Name;
        var made = Date(DateOnly.FromDateTime(content.MadeUtc));
        var frame = new PageFrame(
            paper,
            $"{project}: kit sheet for {content.StudentShown}",
            $"{project}, kit sheet for {content.StudentShown}",
            $"{content.CourseName}, plan {content.PlanNumber} of {made}, printed {Date(content.PrintedOn)}"
        );
        return new(frame, sheet => Write(sheet, content, made));
    }

    private static void Write(Sheet sheet, KitSheetContent content, string made)
    {
        var plan = content.Plan;
        sheet.Title(plan.Request.Project.Name, content.StudentShown);
        sheet.Paragraph(
            $"Kit sheet. {content.CourseName}. Plan {content.PlanNumber}, made {made}, printed {Date(content.PrintedOn)}."
        );
        WriteWarnings(sheet, content);
        if (Sizing.Sentence(plan) is { } sizing)
            sheet.Paragraph(sizing);
        KitBoards.Write(sheet, plan);
        KitCuts.Write(sheet, plan, content.IsLeftHanded);
        KitParts.Write(sheet, plan);
        WriteSpare(sheet, plan);
        sheet.Heading("Tools to set out");
        sheet.TickList(ToolList.For(plan));
        sheet.Heading("Before you saw", keepWith: 120);
        sheet.List(Cautions.For(plan));
        sheet.Heading("How good the plan is");
        sheet.Paragraph(PlanQuality.Sentence(plan.Plan));
    }

    private static void WriteSpare(Sheet sheet, CheckedPlan plan)
    {
        if (Spares.Of(plan) is not { } spare)
            return;
        sheet.Heading("Spare");
        sheet.Paragraph(Spares.Sentence(spare, plan.Request));
    }

    private static void WriteWarnings(Sheet sheet, KitSheetContent content)
    {
        var plan = content.Plan;
        if (content.IsOutOfDate)
            sheet.Warning(
                "Out of date: the project, a board or the course's settings have changed since this plan was made. Ask for a new one before sawing."
            );
        if (!plan.Rehearsal.Passed)
            sheet.Warning("Do not saw: the rehearsal did not agree with this plan.");
        if (!plan.Plan.IsComplete)
            sheet.Warning(
                $"These boards do not yield everything. Missing: {string.Join(", ", plan.Plan.Missing)}.{string.Concat(plan.Verdict.Proofs.Select(p => $" {p}"))}"
            );
    }

    private static string Date(DateOnly date) =>
        date.ToString("d MMM yyyy", CultureInfo.InvariantCulture);
}
