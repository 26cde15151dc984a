using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning.Guide;

/// <summary>Which planed thickness a group of parts is cut from.</summary>
internal static class StockThickness
{
    /// <summary>
    /// The thinnest seller's thickness the parts can come from, and the thickness the board has on the bench: the same,
    /// unless the instructor brings it down first. Null when none is thick enough.
    /// </summary>
    public static (Length Bought, Length OnBench, Thicknessing How)? For(
        IReadOnlyList<Part> parts,
        CourseRules rules
    )
    {
        var least = parts.Max(p => BlankNeeds.OnePiece(p, rules, Surfacing.S4S).Thickness);
        var bought = SellerSizes
            .For(rules.Unit)
            .Where(s => s.Thickness >= least)
            .Select(s => (Length?)s.Thickness)
            .Min();
        if (bought is not { } thickness)
            return null;
        if (!Suits(parts, rules, thickness))
            return (thickness, least, Thicknessing.PreparedByInstructor);
        return IsPlaned(parts, rules, thickness)
            ? (thickness, thickness, Thicknessing.PlanedByStudents)
            : (thickness, thickness, Thicknessing.AsItComes);
    }

    private static bool Suits(IReadOnlyList<Part> parts, CourseRules rules, Length thickness) =>
        parts.All(p =>
            BlankNeeds.ThicknessProblem(p, rules, TrialBoards.Of(thickness, thickness, thickness))
                is null
        );

    private static bool IsPlaned(IReadOnlyList<Part> parts, CourseRules rules, Length thickness) =>
        parts.Any(p =>
            thickness - BlankNeeds.OnePiece(p, rules, Surfacing.S4S).Thickness
            > rules.ThicknessLeeway
        );
}
