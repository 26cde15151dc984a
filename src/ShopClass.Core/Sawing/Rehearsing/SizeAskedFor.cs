using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Rehearsing;

/// <summary>
/// The least size a blank may have, worked out afresh from the part, the course and the board: the planner's figures are
/// judged by these, so none of them is used here.
/// </summary>
internal static class SizeAskedFor
{
    /// <summary>Along the grain: finished, what stays open, and the allowance for a rough end.</summary>
    public static Length AlongTheGrain(Part part, CourseRules rules) =>
        part.Finished.Length + part.ExtraFor(PartDimension.Length) + rules.LengthAllowance;

    /// <summary>
    /// Across the grain, for a part in one piece. Both edges as they came straight from the mill need no allowance: there
    /// is no sawn edge to clean up.
    /// </summary>
    public static Length AcrossTheGrain(Part part, CourseRules rules, bool betweenMillEdges)
    {
        var bare = part.Finished.Width + part.ExtraFor(PartDimension.Width);
        return betweenMillEdges ? bare : bare + rules.WidthAllowance;
    }

    /// <summary>
    /// Across the grain, for one strip of a glue-up. Every joint between two strips costs an allowance on both its edges,
    /// and the strips share the whole evenly; a broken tick counts as a whole one.
    /// </summary>
    public static Length AcrossOneStrip(Part part, CourseRules rules, int strips)
    {
        var joints = strips - 1;
        var whole =
            AcrossTheGrain(part, rules, betweenMillEdges: false)
            + rules.EdgeJointAllowance * 2 * joints;
        return Length.FromTicks((whole.Ticks + strips - 1) / strips);
    }

    /// <summary>The stock's thickness: finished, what stays open, and both faces planed where they came rough.</summary>
    public static Length Thick(Part part, CourseRules rules, Board board) =>
        BeforePlaning(part) + (board.HasPlanedFaces ? Length.Zero : rules.PlaningPerFace * 2);

    /// <summary>
    /// The thickness this very board must have: as for its surfacing, or where it is not flat, what is left of the part's
    /// blank once both faces are.
    /// </summary>
    public static Length ThickOn(Board board, Part part, CourseRules rules) =>
        Length.Max(Thick(part, rules, board), BeforePlaning(part) + HollowOf(board, part, rules));

    /// <summary>How hollow the part's blank is on this board; the worse way round where it may lie either way.</summary>
    public static Length HollowOf(Board board, Part part, CourseRules rules)
    {
        var across = AcrossTheGrain(part, rules, betweenMillEdges: false);
        var along = AlongTheGrain(part, rules);
        var straight = Hollows.In(board, across, along);
        return part.Grain is GrainDirection.Any
            ? Length.Max(straight, Hollows.In(board, along, across))
            : straight;
    }

    /// <summary>Finished thickness and what stays open of it.</summary>
    public static Length BeforePlaning(Part part) =>
        part.Finished.Thickness + part.ExtraFor(PartDimension.Thickness);
}
