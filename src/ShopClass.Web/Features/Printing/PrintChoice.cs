using ShopClass.Print.Sheets;

namespace ShopClass.Web.Features.Printing;

/// <summary>A sheet that can be printed for a class.</summary>
public enum SheetKind
{
    /// <summary>The parts list with drawing and notes.</summary>
    ProjectSheet,

    /// <summary>The smallest boards that will do, for the seller's aisle.</summary>
    StockGuide,

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

    /// <summary>What each lesson needs in tools, and which saws want sharpening.</summary>
    LessonTools,

    /// <summary>What to prepare, show and watch for, one for each lesson.</summary>
    LessonSheets,

    /// <summary>Who does what, to hang on the wall, one for each lesson.</summary>
    WallSheets,

    /// <summary>A student's plan, cuts and parts.</summary>
    KitSheets,

    /// <summary>A student's steps with their pictures, on cards.</summary>
    StepCards,

    /// <summary>A student's steps, lesson by lesson, to tick.</summary>
    LessonChecklists,

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
            SheetKind.StockGuide => "Stock guide, for the seller's aisle",
            SheetKind.ClassOverview => "Class overview",
            SheetKind.MaterialsOrder => "Materials order, by seller",
            SheetKind.Receiving => "Receiving sheet",
            SheetKind.Preparation => "Preparation list for the kits",
            SheetKind.Costs => "Cost sheet (for you alone)",
            SheetKind.LessonTools => "Tools for the lessons",
            SheetKind.LessonSheets => "Lesson sheets, one for each lesson",
            SheetKind.WallSheets => "Wall sheets, one for each lesson",
            SheetKind.KitSheets => "Kit sheets, one for each student",
            SheetKind.StepCards => "Step cards, for each student",
            SheetKind.LessonChecklists => "Lesson checklists, one for each student",
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

    /// <summary>Whether the sheet needs lessons that are planned.</summary>
    public static bool NeedsLessons(SheetKind kind) =>
        kind
            is SheetKind.LessonTools
                or SheetKind.LessonSheets
                or SheetKind.WallSheets
                or SheetKind.LessonChecklists;

    /// <summary>Whether there is one for each chosen student.</summary>
    public static bool IsForEachStudent(SheetKind kind) =>
        kind
            is SheetKind.KitSheets
                or SheetKind.StepCards
                or SheetKind.LessonChecklists
                or SheetKind.StorySticks;
}
