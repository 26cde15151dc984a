using ShopClass.Print.Sheets;

namespace ShopClass.Web.Features.Printing;

/// <summary>A sheet that can be printed for a class.</summary>
public enum SheetKind
{
    /// <summary>The parts list with drawing and notes.</summary>
    ProjectSheet,

    /// <summary>Who has which board, plan and kit.</summary>
    ClassOverview,

    /// <summary>What to buy.</summary>
    MaterialsOrder,

    /// <summary>To fill in when the wood comes.</summary>
    Receiving,

    /// <summary>How to make the kits up.</summary>
    Preparation,

    /// <summary>What each kit costs.</summary>
    Costs,

    /// <summary>A student's plan, cuts and parts.</summary>
    KitSheets,

    /// <summary>A student's tape positions in full size.</summary>
    StorySticks,

    /// <summary>A label for each kit.</summary>
    Labels,
}

/// <summary>What is to be printed.</summary>
public sealed class PrintChoice
{
    public SortedSet<SheetKind> Sheets { get; } = [SheetKind.ClassOverview, SheetKind.KitSheets];

    public HashSet<Guid> Students { get; } = [];

    public Paper Paper { get; set; }

    /// <summary>Labels already taken from the first sheet.</summary>
    public int Skip { get; set; }

    public void Toggle(SheetKind kind)
    {
        if (!Sheets.Remove(kind))
            Sheets.Add(kind);
    }

    public void Toggle(Guid student)
    {
        if (!Students.Remove(student))
            Students.Add(student);
    }

    public static string Name(SheetKind kind) =>
        kind switch
        {
            SheetKind.ProjectSheet => "Project sheet, the hand-out",
            SheetKind.ClassOverview => "Class overview",
            SheetKind.MaterialsOrder => "Materials order, by seller",
            SheetKind.Receiving => "Receiving sheet",
            SheetKind.Preparation => "Preparation list for the kits",
            SheetKind.Costs => "Cost sheet (for you alone)",
            SheetKind.KitSheets => "Kit sheets, one for each student",
            SheetKind.StorySticks => "Story sticks, full size",
            SheetKind.Labels => "Kit labels",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a sheet."),
        };

    /// <summary>Whether the sheet needs an order that is kept.</summary>
    public static bool NeedsOrder(SheetKind kind) =>
        kind
            is SheetKind.MaterialsOrder
                or SheetKind.Receiving
                or SheetKind.Preparation
                or SheetKind.Costs;
}
