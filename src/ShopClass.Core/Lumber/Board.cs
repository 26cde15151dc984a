using ShopClass.Core.Measure;

namespace ShopClass.Core.Lumber;

/// <summary>How a board was surfaced by the mill (trade abbreviations, as in PS 20 and the NHLA rules).</summary>
public enum Surfacing
{
    /// <summary>As sawn: no true face, no straight edge.</summary>
    Rough,

    /// <summary>Surfaced two sides: both faces planed, edges rough.</summary>
    S2S,

    /// <summary>Surfaced three sides: both faces and one edge.</summary>
    S3S,

    /// <summary>Surfaced four sides: faces and edges.</summary>
    S4S,
}

/// <summary>One measured board, as it lies on the bench.</summary>
/// <remarks>
/// Places on a board are measured along it from its <em>start</em> (the end it is marked from) and across it from its
/// <em>near edge</em> (the edge it is marked from). Sizes are actual, never nominal.
/// </remarks>
public sealed record Board
{
    /// <summary>A key that stays the same while the board exists; plans refer to it.</summary>
    public required string Id { get; init; }

    /// <summary>What people call it: "Board 1", "the cherry".</summary>
    public required string Name { get; init; }

    /// <summary>The species, as a key of <see cref="SpeciesTable"/>.</summary>
    public required string SpeciesId { get; init; }

    /// <summary>How it was surfaced.</summary>
    public required Surfacing Surfacing { get; init; }

    /// <summary>Actual thickness at the thinnest place measured.</summary>
    public required Length Thickness { get; init; }

    /// <summary>Actual width at the start.</summary>
    public required Length WidthAtStart { get; init; }

    /// <summary>Actual width in the middle.</summary>
    public required Length WidthAtMiddle { get; init; }

    /// <summary>Actual width at the far end.</summary>
    public required Length WidthAtEnd { get; init; }

    /// <summary>Actual length.</summary>
    public required Length Length { get; init; }

    /// <summary>Wood to saw off the start before anything is marked (end checks, dirt, out of square); zero leaves the end as it is.</summary>
    public Length TrimStart { get; init; }

    /// <summary>Wood to saw off the far end; zero leaves the end as it is.</summary>
    public Length TrimEnd { get; init; }

    /// <summary>How deep a hollow runs across the board at its worst place, under a straightedge; zero for a flat board.</summary>
    public Length Cup { get; init; }

    /// <summary>How far one corner stands off a flat bench while the other three lie on it; zero for a flat board.</summary>
    public Length Twist { get; init; }

    /// <summary>Places no part may cover, or only with a hidden face.</summary>
    public IReadOnlyList<Defect> Defects { get; init; } = [];

    /// <summary>What it cost, where known; owned boards have none.</summary>
    public Money? Price { get; init; }

    /// <summary>The smallest of the three widths: all a plan may count on.</summary>
    public Length SmallestWidth => Length.Min(WidthAtStart, Length.Min(WidthAtMiddle, WidthAtEnd));

    /// <summary>Whether both edges came straight from the mill.</summary>
    public bool HasStraightEdges => Surfacing is Surfacing.S4S;

    /// <summary>Whether both faces came planed.</summary>
    public bool HasPlanedFaces => Surfacing is not Surfacing.Rough;

    /// <summary>Whether it is true as it came: planed faces, straight edges, and flat.</summary>
    public bool IsTrue =>
        HasPlanedFaces && HasStraightEdges && Warp.IsFlat(this, SmallestWidth, Length);
}

/// <summary>What is wrong at a place. All are words of the grading rules and the shop.</summary>
public enum DefectKind
{
    /// <summary>A knot.</summary>
    Knot,

    /// <summary>A split through the board.</summary>
    Split,

    /// <summary>A drying check, not through.</summary>
    Check,

    /// <summary>Bark or missing wood along an edge.</summary>
    Wane,

    /// <summary>A hole, from an insect or a fastener.</summary>
    Hole,

    /// <summary>Pith, the tree's centre.</summary>
    Pith,

    /// <summary>A pocket of pitch.</summary>
    PitchPocket,

    /// <summary>Stain.</summary>
    Stain,

    /// <summary>Anything else to keep clear of.</summary>
    Other,
}

/// <summary>Which faces a defect shows on.</summary>
public enum DefectReach
{
    /// <summary>Right through: no part may have it.</summary>
    Through,

    /// <summary>Only on the face the board is marked on.</summary>
    MarkedFace,

    /// <summary>Only on the other face.</summary>
    BackFace,
}

/// <summary>A bad place on a board: the rectangle that holds it.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Place">Where it is; within the board.</param>
/// <param name="Reach">Which faces it shows on.</param>
public sealed record Defect(
    DefectKind Kind,
    BoardRect Place,
    DefectReach Reach = DefectReach.Through
);

/// <summary>
/// A rectangle on a board: along it from the start, across it from the near edge. <see cref="To"/> and
/// <see cref="Far"/> are not less than <see cref="From"/> and <see cref="Near"/>.
/// </summary>
/// <param name="From">Where it begins along the board.</param>
/// <param name="To">Where it ends along the board.</param>
/// <param name="Near">Its edge nearest the board's near edge.</param>
/// <param name="Far">Its other edge.</param>
public readonly record struct BoardRect(Length From, Length To, Length Near, Length Far)
{
    /// <summary>Its size along the board.</summary>
    public Length Along => To - From;

    /// <summary>Its size across the board.</summary>
    public Length Across => Far - Near;

    /// <summary>Its area.</summary>
    public Area Area => Along * Across;

    /// <summary>Whether the two share any area; touching edges do not count.</summary>
    public bool Overlaps(BoardRect other) =>
        From < other.To && other.From < To && Near < other.Far && other.Near < Far;

    /// <summary>Whether the other lies wholly within this one.</summary>
    public bool Contains(BoardRect other) =>
        From <= other.From && other.To <= To && Near <= other.Near && other.Far <= Far;
}
