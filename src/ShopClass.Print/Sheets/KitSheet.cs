using ShopClass.Core.Planning;

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
    public static byte[] Make(KitSheetContent content, Paper paper) =>
        throw new NotImplementedException();
}
