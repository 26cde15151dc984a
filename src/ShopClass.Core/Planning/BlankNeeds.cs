using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning;

/// <summary>
/// The sizes a part's blank must have on a given board. Shared by planner and people's tables; the rehearsal works the
/// same rule out for itself.
/// </summary>
/// <remarks>
/// <para>Length: finished + open extra + the course's length allowance.</para>
/// <para>Width: finished + open extra + the width allowance, except that a blank taking the full width of a board with
/// two straight edges (S4S) needs no width allowance. A glue-up of n strips: each strip is at least
/// (finished + open extra + width allowance + 2 (n - 1) x edge joint allowance) / n, rounded up to a tick.</para>
/// <para>Thickness: finished + open extra; rough stock adds planing on both faces. Planed stock may be thicker by the
/// leeway, or, where planing is taught, by as much as the course asks to plane away.</para>
/// </remarks>
public static class BlankNeeds
{
    /// <summary>The least size of a blank of this part in one piece, with sawn edges, on stock surfaced like this.</summary>
    public static RoughSize OnePiece(Part part, CourseRules rules, Surfacing surfacing) =>
        throw new NotImplementedException();

    /// <summary>The least width of a blank that keeps both straight edges of a planed board.</summary>
    public static Length WidthBetweenStraightEdges(Part part) =>
        throw new NotImplementedException();

    /// <summary>The least size of one strip of a glue-up of <paramref name="strips"/> strips.</summary>
    public static RoughSize GlueUpStrip(
        Part part,
        CourseRules rules,
        Surfacing surfacing,
        int strips
    ) => throw new NotImplementedException();

    /// <summary>Whether this board is thick enough for the part and not too thick for what the course teaches; otherwise a sentence.</summary>
    public static string? ThicknessProblem(Part part, CourseRules rules, Board board) =>
        throw new NotImplementedException();
}
