using ShopClass.Core.Measure;

namespace ShopClass.Core.Projects;

/// <summary>Kinds of joint sawn by hand; the words are the trade's own.</summary>
public enum JointKind
{
    /// <summary>A trench across the grain that takes the mate's end (a housing).</summary>
    Dado,

    /// <summary>A step along an end or edge.</summary>
    Rabbet,

    /// <summary>A piece sawn out of an edge or corner.</summary>
    Notch,

    /// <summary>Half the thickness taken from each of two parts where they cross or meet.</summary>
    HalfLap,

    /// <summary>A tongue on the mate that enters a hole in the part.</summary>
    MortiseAndTenon,

    /// <summary>Tails on one part between pins on the other.</summary>
    Dovetail,

    /// <summary>A round or square peg of the mate, right through the part.</summary>
    ThroughPeg,

    /// <summary>Plain butt, nailed or screwed: nothing is cut for it.</summary>
    Nailed,
}

/// <summary>Where two parts meet, and what is cut for it.</summary>
/// <remarks>
/// <see cref="Part"/> is the part that receives: the one with the dado, the mortise, the tails' sockets. <see cref="Mate"/>
/// is the one that enters it.
/// </remarks>
public sealed record Joint
{
    /// <summary>What kind.</summary>
    public required JointKind Kind { get; init; }

    /// <summary>Letter of the part that receives.</summary>
    public required string Part { get; init; }

    /// <summary>Letter of the part that enters; null for a notch or rabbet that takes nothing of this project.</summary>
    public string? Mate { get; init; }

    /// <summary>How deep it goes into the receiving part, square to the face or edge it is cut in. Zero for a nailed joint.</summary>
    public Length Depth { get; init; }

    /// <summary>How wide the trench, notch or mortise is, along the receiving part; null takes the mate's thickness, fitted to it.</summary>
    public Length? Width { get; init; }

    /// <summary>
    /// How far it reaches across the receiving part; null is right across, or for a mortise or peg the mate's other size.
    /// </summary>
    public Length? Across { get; init; }

    /// <summary>
    /// Where it begins across the receiving part: from its reference edge to the joint's near side. Null leaves what
    /// reaches <see cref="Across"/> in the middle of the width; where nothing says how far it reaches, it goes on to the
    /// opposite edge. Notches, dovetails and butts have none.
    /// </summary>
    public Length? FromEdge { get; init; }

    /// <summary>Which of the receiving part's two faces (for a notch: edges) it is cut in.</summary>
    public JointSide Side { get; init; } = JointSide.Reference;

    /// <summary>Where it lies, from the receiving part's reference end to the joint's near side: one position for each, in order.</summary>
    public IReadOnlyList<Length> Positions { get; init; } = [];

    /// <summary>Anything else about it, in the instructor's words.</summary>
    public string Note { get; init; } = "";
}

/// <summary>Which face (for a notch: edge) of the receiving part a joint is cut in.</summary>
public enum JointSide
{
    /// <summary>The reference face or edge.</summary>
    Reference,

    /// <summary>The one opposite.</summary>
    Opposite,

    /// <summary>Both, at the same places.</summary>
    Both,
}

/// <summary>
/// Sizes that must agree, written as a sum: a shelf's length = clear width + two dado depths. It fails visibly when the parts
/// list no longer keeps it.
/// </summary>
/// <param name="Part">Letter of the part whose dimension is checked.</param>
/// <param name="Dimension">Which of its sizes.</param>
/// <param name="Terms">What it must equal, added up.</param>
public sealed record SizeCheck(string Part, PartDimension Dimension, IReadOnlyList<SizeTerm> Terms);

/// <summary>
/// One term of a sum of sizes: <see cref="Times"/> (negative takes away) a fixed size, or a dimension of a part.
/// </summary>
/// <param name="Times">How many times it counts; not zero.</param>
/// <param name="Part">Letter of the part, or null for a fixed size.</param>
/// <param name="Dimension">Which of that part's sizes; unused for a fixed size.</param>
/// <param name="Fixed">The fixed size; zero when a part is named.</param>
/// <param name="Meaning">What it is, in words: "clear width", "depth of the dado".</param>
public sealed record SizeTerm(
    int Times,
    string? Part,
    PartDimension Dimension,
    Length Fixed,
    string Meaning
);
