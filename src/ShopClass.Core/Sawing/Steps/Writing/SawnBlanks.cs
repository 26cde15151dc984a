using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>What a board's wood is like once it is sawn: rough or planed, flat or hollow, with an edge kept from the mill.</summary>
internal sealed class SawnBlanks(Job job, Board board)
{
    /// <summary>A blank with the wood around it, as the saw leaves it.</summary>
    public Workpiece Blank(BlankKey key, Part part, BoardRect wood, bool isTurned, string? last) =>
        new(key, part, board)
        {
            Thickness = board.Thickness,
            Width = isTurned ? wood.Along : wood.Across,
            Length = isTurned ? wood.Across : wood.Along,
            IsRough = !board.HasPlanedFaces,
            IsHollow = IsHollow(part, wood, isTurned),
            HasStraightEdge = !isTurned && KeepsMillEdge(wood),
            Last = last,
        };

    /// <summary>Only what will be the part has to be flat: wood beyond its blank comes off when it is brought to width.</summary>
    private bool IsHollow(Part part, BoardRect wood, bool isTurned)
    {
        var blank = BlankNeeds.OnePiece(part, job.Rules, Surfacing.S4S);
        var (across, along) = isTurned ? (blank.Length, blank.Width) : (blank.Width, blank.Length);
        return !Warp.IsFlat(board, Length.Min(wood.Across, across), Length.Min(wood.Along, along));
    }

    /// <summary>Whether a strip that stays joined leaves its parts their thickness when it is planed flat whole.</summary>
    public bool LeavesThickness(BoardRect strip, IEnumerable<Part> parts)
    {
        var lost = Warp.LostIn(board, strip.Across, strip.Along);
        return lost < Warp.TakenAsFlat
            || parts.All(p =>
                WorkRules.BeforeItsEvent(p, PartDimension.Thickness) + lost <= board.Thickness
            );
    }

    /// <summary>Whether one of its edges is a straight one that came with the board.</summary>
    public bool KeepsMillEdge(BoardRect wood) =>
        board.Surfacing switch
        {
            Surfacing.S4S => wood.Near == Length.Zero
                || (wood.Far == board.SmallestWidth && board.WidthAtStart == board.WidthAtEnd),
            // A board surfaced on three sides is marked out from its straight edge.
            Surfacing.S3S => wood.Near == Length.Zero,
            _ => false,
        };
}
