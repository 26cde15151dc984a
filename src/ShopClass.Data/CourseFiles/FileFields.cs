using ShopClass.Core.Courses;

namespace ShopClass.Data.CourseFiles;

/// <summary>The field names of a course file, in the order they are written.</summary>
internal static class FileFields
{
    public static readonly IReadOnlyList<string> CourseFile = ["shopclass", "kind", "course"];

    public static readonly IReadOnlyList<string> ProjectFile =
    [
        "shopclass",
        "kind",
        "unit",
        "project",
    ];

    public static readonly IReadOnlyList<string> Course =
    [
        "name",
        "unit",
        "precision",
        "rules",
        "boardsWaitForYes",
        "firstCutsUntimed",
        "techniques",
        "projects",
        "students",
        "sellers",
        "rack",
        "tools",
        "toolSets",
        "sharpenAfter",
        "labels",
        "stations",
        "demonstrations",
        "lessons",
        "learned",
    ];

    public static readonly IReadOnlyList<string> Learned = ["pace", "projects"];

    public static readonly IReadOnlyList<string> Rate = ["step", "species", "percent", "steps"];

    public static readonly IReadOnlyList<string> LearnedProject =
    [
        "project",
        "waste",
        "plans",
        "parts",
    ];

    public static readonly IReadOnlyList<string> SpoiledPart = ["part", "spoiled", "made"];

    public static readonly IReadOnlyList<string> Stations =
    [
        "sawBenches",
        "vises",
        "benchHooks",
        "sharpening",
    ];

    public static readonly IReadOnlyList<string> Demonstration = ["skill", "minutes"];

    public static readonly IReadOnlyList<string> Lesson =
    [
        "title",
        "date",
        "start",
        "minutes",
        "stations",
        "shows",
        "absent",
    ];

    public static readonly IReadOnlyList<string> Rules =
    [
        .. RuleBook.Lengths.Select(r => r.Key),
        "planingTaught",
        "edgeGluingTaught",
        RuleBook.MostGlueUpStripsKey,
        RuleBook.HardGoingKey,
        RuleBook.ShopHumidityKey,
        RuleBook.RoomHumidityKey,
    ];

    public static readonly IReadOnlyList<string> Technique = ["about", "words"];

    public static readonly IReadOnlyList<string> Project =
    [
        "name",
        "notes",
        "parts",
        "joints",
        "sizesThatAgree",
        "supplies",
    ];

    public static readonly IReadOnlyList<string> Supply = ["name", "kind", "amount", "price"];

    public static readonly IReadOnlyList<string> Tool = ["name", "kind", "count"];

    public static readonly IReadOnlyList<string> ToolSet = ["name", "tools"];

    public static readonly IReadOnlyList<string> SetTool = ["kind", "count"];

    public static readonly IReadOnlyList<string> Labels = ["sheet", "right", "down"];

    public static readonly IReadOnlyList<string> Part =
    [
        "letter",
        "name",
        "quantity",
        "thickness",
        "width",
        "length",
        "grain",
        "showFace",
        "glueUpAllowed",
        "acceptsHiddenDefect",
        "referenceFace",
        "jointNotes",
        "open",
    ];

    public static readonly IReadOnlyList<string> Open =
    [
        "dimension",
        "extra",
        "until",
        "takenFrom",
        "event",
    ];

    public static readonly IReadOnlyList<string> Event = ["kind", "part", "mate"];

    public static readonly IReadOnlyList<string> Joint =
    [
        "kind",
        "part",
        "mate",
        "depth",
        "width",
        "across",
        "fromEdge",
        "side",
        "at",
        "note",
    ];

    public static readonly IReadOnlyList<string> SizeCheck = ["part", "dimension", "equals"];

    public static readonly IReadOnlyList<string> SizeTerm =
    [
        "times",
        "part",
        "dimension",
        "size",
        "meaning",
    ];

    public static readonly IReadOnlyList<string> Student =
    [
        "name",
        "alias",
        "leftHanded",
        "boards",
    ];

    public static readonly IReadOnlyList<string> Board =
    [
        "project",
        "name",
        "species",
        "surfacing",
        "thickness",
        "widthAtStart",
        "widthAtMiddle",
        "widthAtEnd",
        "length",
        "cup",
        "twist",
        "trimStart",
        "trimEnd",
        "price",
        "defects",
    ];

    public static readonly IReadOnlyList<string> Seller = ["name", "currency", "leftOut", "stock"];

    public static readonly IReadOnlyList<string> Stock =
    [
        "name",
        "species",
        "grade",
        "surfacing",
        "nominalThickness",
        "nominalWidth",
        "thickness",
        "width",
        "length",
        "price",
        "per",
        "pack",
        "available",
    ];

    public static readonly IReadOnlyList<string> RackPiece =
    [
        .. Board.Where(f => f is not "project"),
        "place",
        "count",
        "state",
    ];

    public static readonly IReadOnlyList<string> Price = ["minorUnits", "currency"];

    public static readonly IReadOnlyList<string> Defect =
    [
        "kind",
        "from",
        "to",
        "near",
        "far",
        "shows",
    ];
}
