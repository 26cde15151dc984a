using ShopClass.Core.Measure;
using ShopClass.Core.Orders;

namespace ShopClass.Data.Orders;

/// <summary>What the instructor chooses before an order is worked out.</summary>
/// <param name="Way">What to favour.</param>
/// <param name="SpareKits">Whole kits to have in hand.</param>
/// <param name="UseRack">Whether the rack is used first.</param>
/// <param name="SpeciesId">The one species to take; null for the cheapest.</param>
/// <param name="WastePercent">Waste the rule of thumb reckons with.</param>
/// <param name="Currency">The currency to buy in; sellers in another are left out.</param>
public sealed record OrderChoices(
    OrderWay Way,
    int SpareKits,
    bool UseRack,
    string? SpeciesId,
    int WastePercent,
    string Currency
)
{
    /// <summary>Most spare kits.</summary>
    public const int MostSpareKits = 50;

    /// <summary>Most spares of one part.</summary>
    public const int MostSpareParts = 100;

    /// <summary>Single parts to have in hand: how many of each letter.</summary>
    public IReadOnlyDictionary<string, int> SpareParts { get; init; } =
        new SortedDictionary<string, int>(StringComparer.Ordinal);

    /// <summary>Wood to practise on in every kit; null for none.</summary>
    public PracticePiece? Practice { get; init; }
}

/// <summary>A stored order.</summary>
public sealed record StoredOrder(
    Guid Id,
    Guid CourseId,
    Guid ProjectId,
    int Number,
    DateTime MadeUtc,
    ClassOrder Order,
    IReadOnlyList<Arrived> Arrived,
    Guid Version
);

/// <summary>How far a kit is.</summary>
public enum KitState
{
    /// <summary>To be prepared.</summary>
    ToPrepare,

    /// <summary>Ready on the shelf.</summary>
    Ready,

    /// <summary>With its student.</summary>
    HandedOver,
}

/// <summary>How far one student's kit is.</summary>
public sealed record KitMark(Guid StudentId, KitState State);

/// <summary>A project's supplies and kit states; an empty version where nothing was said yet.</summary>
public sealed record KitsView(
    Guid ProjectId,
    IReadOnlyList<Supply> Supplies,
    IReadOnlyList<KitMark> Marks,
    Guid Version
)
{
    /// <summary>How far a student's kit is.</summary>
    public KitState StateOf(Guid studentId) =>
        Marks.FirstOrDefault(m => m.StudentId == studentId)?.State ?? KitState.ToPrepare;
}

/// <summary>Which label sheet a course uses, and how far its printer is off.</summary>
/// <param name="SheetId">The label sheet.</param>
/// <param name="Right">How far everything is moved to the right; negative moves left.</param>
/// <param name="Down">How far everything is moved down; negative moves up.</param>
public sealed record LabelSetting(string SheetId, Length Right, Length Down)
{
    /// <summary>The label sheets there are; what they measure is the print room's business.</summary>
    public static IReadOnlyList<string> SheetIds { get; } =
    ["a4-3x8", "a4-2x7", "a4-2x4", "letter-3x10", "letter-2x5", "letter-2x3"];

    /// <summary>The furthest a printer is corrected: 20 mm.</summary>
    public static Length Furthest { get; } = Length.FromMillimetres(20);
}

/// <summary>How a course prints.</summary>
public sealed record PrintDeskView(
    Guid CourseId,
    string Address,
    LabelSetting Labels,
    Guid Version
);
