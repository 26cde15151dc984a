using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>One piece of wood on its way to being a part, sized as the part lies: its length is the part's length.</summary>
internal sealed class Workpiece(BlankKey key, Part part, Board board)
{
    private readonly HashSet<PartDimension> closed = [];

    public BlankKey Key { get; } = key;

    public Part Part { get; } = part;

    public Board Board { get; } = board;

    /// <summary>The blanks still joined in it, in order; none for a piece by itself.</summary>
    public IReadOnlyList<BlankKey> Joined { get; init; } = [];

    /// <summary>What is written on it.</summary>
    public string Name => Joined.Count == 0 ? Key.ToString() : string.Join('+', Joined);

    /// <summary>The same, one by one.</summary>
    public IReadOnlyList<string> Names =>
        Joined.Count == 0 ? [Name] : [.. Joined.Select(k => k.ToString())];

    /// <summary>What it is called in a sentence.</summary>
    public string Called => Joined.Count == 0 ? Name : $"the strip for {Words.Short(Names)}";

    public Length Thickness { get; set; }

    public Length Width { get; set; }

    public Length Length { get; set; }

    /// <summary>Whether one of its edges is straight and square to a true face.</summary>
    public bool HasStraightEdge { get; set; }

    /// <summary>Whether its faces are as they came from the saw.</summary>
    public bool IsRough { get; set; }

    /// <summary>Whether it is still as hollow as its board: cupped or twisted by more than is left alone.</summary>
    public bool IsHollow { get; set; }

    /// <summary>The last step that worked on it.</summary>
    public string? Last { get; set; }

    public PieceLeft AsItIs => new(Name, Thickness, Width, Length, PieceUse.Work);

    /// <summary>The dimensions still over, with what stays on them.</summary>
    public IEnumerable<OpenDimension> StillOpen =>
        Part.Open.Where(o => !closed.Contains(o.Dimension));

    /// <summary>This dimension of it, where it is open and waits.</summary>
    public IEnumerable<OpenNow> OpenOf(PartDimension dimension) =>
        StillOpen
            .Where(o => o.Dimension == dimension)
            .Select(o => new OpenNow(Name, dimension, OpenState.Open, o.Extra, o.Until));

    public Length SizeOf(PartDimension dimension) =>
        dimension switch
        {
            PartDimension.Thickness => Thickness,
            PartDimension.Width => Width,
            _ => Length,
        };

    /// <summary>Brings an open dimension down by what stayed on it, and tells how much that is.</summary>
    public Length Close(PartDimension dimension)
    {
        var extra = Part.ExtraFor(dimension);
        closed.Add(dimension);
        if (dimension is PartDimension.Thickness)
            Thickness -= extra;
        else if (dimension is PartDimension.Width)
            Width -= extra;
        else
            Length -= extra;
        return extra;
    }
}
