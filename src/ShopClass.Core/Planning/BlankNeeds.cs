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
/// leeway, or, where planing is taught, by as much as the course asks to plane away. A cupped or twisted board must leave the
/// part's thickness when its blank is planed flat, whatever face it came with.</para>
/// </remarks>
public static class BlankNeeds
{
    /// <summary>The least size of a blank of this part in one piece, with sawn edges, on stock surfaced like this.</summary>
    public static RoughSize OnePiece(Part part, CourseRules rules, Surfacing surfacing) =>
        new(
            LeastThickness(part, rules, surfacing),
            WidthBetweenStraightEdges(part) + rules.WidthAllowance,
            part.Finished.Length + part.ExtraFor(PartDimension.Length) + rules.LengthAllowance
        );

    /// <summary>The least width of a blank that keeps both straight edges of a planed board.</summary>
    public static Length WidthBetweenStraightEdges(Part part) =>
        part.Finished.Width + part.ExtraFor(PartDimension.Width);

    /// <summary>The least size of one strip of a glue-up of <paramref name="strips"/> strips.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than two strips.</exception>
    public static RoughSize GlueUpStrip(
        Part part,
        CourseRules rules,
        Surfacing surfacing,
        int strips
    )
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(strips, 2);
        var whole = OnePiece(part, rules, surfacing);
        var together = whole.Width + rules.EdgeJointAllowance * (2 * (strips - 1));
        return whole with { Width = Length.FromTicks((together.Ticks + strips - 1) / strips) };
    }

    /// <summary>Whether this board is thick enough for the part and not too thick for what the course teaches; otherwise a sentence.</summary>
    public static string? ThicknessProblem(Part part, CourseRules rules, Board board)
    {
        var least = LeastThickness(part, rules, board);
        var hollow = LostToFlattening(part, rules, board);
        string Write(Length length) => WriteExact(length, rules);
        if (!board.HasPlanedFaces && !rules.PlaningTaught)
            return $"{board.Name} is rough and this course teaches no planing.";
        if (hollow > Length.Zero && !rules.PlaningTaught)
            return $"{board.Name} is not flat: {Write(hollow)} would have to be planed off {part.Letter}, and this course teaches no planing.";
        if (board.Thickness < least)
            return hollow > Length.Zero
                ? $"{board.Name} is {Write(board.Thickness)} thick and not flat; {part.Letter} needs {Write(least)}, {Write(hollow)} of it to plane it flat."
                : $"{board.Name} is {Write(board.Thickness)} thick; {part.Letter} needs {Write(least)}.";
        var over = board.Thickness - LeastThickness(part, rules, Surfacing.S4S);
        var most = MostOver(rules, board);
        return over <= most
            ? null
            : $"{board.Name} is {Write(over)} thicker than {part.Letter}; at most {Write(most)} may go.";
    }

    /// <summary>Thicknesses differ by less than a course's precision, so they are written exactly.</summary>
    internal static string WriteExact(Length length, CourseRules rules) =>
        LengthWriter.WriteExactWithUnit(length, rules.Unit);

    /// <summary>The least thickness this board must have for the part: as for its surfacing, or what planing it flat takes.</summary>
    internal static Length LeastThickness(Part part, CourseRules rules, Board board) =>
        Length.Max(
            LeastThickness(part, rules, board.Surfacing),
            LeastThickness(part, rules, Surfacing.S4S) + LostToFlattening(part, rules, board)
        );

    /// <summary>
    /// What planing the part's blank flat takes of its thickness; zero on a flat board. Only the blank's own size counts:
    /// what lies outside it comes off anyway.
    /// </summary>
    internal static Length LostToFlattening(Part part, CourseRules rules, Board board)
    {
        if (board.Cup <= Length.Zero && board.Twist <= Length.Zero)
            return Length.Zero;
        var blank = OnePiece(part, rules, Surfacing.S4S);
        var lost = Warp.LostIn(board, blank.Width, blank.Length);
        if (part.Grain is GrainDirection.Any)
            lost = Length.Max(lost, Warp.LostIn(board, blank.Length, blank.Width));
        return lost < Warp.TakenAsFlat ? Length.Zero : lost;
    }

    private static Length LeastThickness(Part part, CourseRules rules, Surfacing surfacing)
    {
        var planed = part.Finished.Thickness + part.ExtraFor(PartDimension.Thickness);
        return surfacing is Surfacing.Rough ? planed + rules.PlaningPerFace * 2 : planed;
    }

    /// <summary>How much thicker than the part a board may be. Rough stock must at least be allowed its own planing.</summary>
    private static Length MostOver(CourseRules rules, Board board) =>
        (rules.PlaningTaught, board.HasPlanedFaces) switch
        {
            (false, _) => rules.ThicknessLeeway,
            (true, true) => Length.Max(rules.ThicknessLeeway, rules.MostPlanedAway),
            (true, false) => Length.Max(rules.PlaningPerFace * 2, rules.MostPlanedAway),
        };
}
