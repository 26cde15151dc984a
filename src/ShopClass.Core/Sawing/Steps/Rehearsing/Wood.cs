using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Steps.Rehearsing;

/// <summary>A piece while the steps are replayed.</summary>
internal sealed record Wood
{
    public required string Name { get; init; }

    public required Length Thickness { get; init; }

    public required Length Width { get; init; }

    public required Length Length { get; init; }

    public required PieceUse Use { get; init; }

    public Station At { get; init; } = Station.BenchTop;

    public Board? Board { get; init; }

    public BoardRect? Rect { get; init; }

    /// <summary>The blank it is sawn to; null while blanks are joined in it.</summary>
    public BlankKey? Key { get; init; }

    public Part? Part { get; init; }

    /// <summary>The last step that worked on it; 0 for none.</summary>
    public int Touched { get; init; }

    public bool HasTrueFace { get; init; }

    public bool HasStraightEdge { get; init; }

    public bool IsReferenced { get; init; }

    /// <summary>Whether it comes from wood whose lines were struck from a reference edge, before a rip took that edge away.</summary>
    public bool HasTrueLines { get; init; }

    public bool IsSquared { get; init; }

    public Length SizeOf(PartDimension dimension) =>
        dimension switch
        {
            PartDimension.Thickness => Thickness,
            PartDimension.Width => Width,
            _ => Length,
        };

    public WorkPiece Shown => new(Name, Thickness, Width, Length, Use, At, Board?.Id, Rect);
}

/// <summary>A step as it went: the pieces it found under its names, and what they became.</summary>
/// <param name="Step">The step.</param>
/// <param name="Before">The pieces it works on, as they were.</param>
/// <param name="After">What they became.</param>
/// <param name="Unknown">Names it works on that no piece bears.</param>
/// <param name="IsSawn">For a cut of the breakdown: whether it could be made.</param>
internal sealed record Done(
    Step Step,
    IReadOnlyList<Wood> Before,
    IReadOnlyList<Wood> After,
    IReadOnlyList<string> Unknown,
    bool IsSawn
);
