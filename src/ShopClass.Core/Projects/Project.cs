using ShopClass.Core.Measure;

namespace ShopClass.Core.Projects;

/// <summary>The thing a course makes: a parts list with its craft rules.</summary>
public sealed record Project
{
    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary>Notes for the instructor and the class.</summary>
    public string Notes { get; init; } = "";

    /// <summary>The parts, in the order of the parts list. Letters are unique.</summary>
    public IReadOnlyList<Part> Parts { get; init; } = [];

    /// <summary>The joints between parts.</summary>
    public IReadOnlyList<Joint> Joints { get; init; } = [];

    /// <summary>Sizes that must agree.</summary>
    public IReadOnlyList<SizeCheck> SizeChecks { get; init; } = [];
}

/// <summary>A row of the parts list.</summary>
public sealed record Part
{
    /// <summary>The letter (one or two) that marks it on drawings and on the wood.</summary>
    public required string Letter { get; init; }

    /// <summary>What it is: "side", "shelf".</summary>
    public required string Name { get; init; }

    /// <summary>Size when done. Grain runs along its length unless <see cref="Grain"/> says otherwise.</summary>
    public required FinishedSize Finished { get; init; }

    /// <summary>How many, at least one.</summary>
    public required int Quantity { get; init; }

    /// <summary>Which way the grain must run.</summary>
    public GrainDirection Grain { get; init; } = GrainDirection.AlongLength;

    /// <summary>Whether a face of it shows in the finished piece.</summary>
    public bool ShowFace { get; init; }

    /// <summary>Whether it may be glued up from narrower strips.</summary>
    public bool GlueUpAllowed { get; init; }

    /// <summary>Whether a defect that shows on one face only may lie on its hidden face.</summary>
    public bool AcceptsHiddenDefect { get; init; }

    /// <summary>Which face becomes the reference face.</summary>
    public ReferenceFace ReferenceFace { get; init; } = ReferenceFace.Truest;

    /// <summary>What joints it gets, in words.</summary>
    public string JointNotes { get; init; } = "";

    /// <summary>Dimensions that stay oversize until an event. At most one for each dimension.</summary>
    public IReadOnlyList<OpenDimension> Open { get; init; } = [];

    /// <summary>How much this dimension must stay over its finished size; zero when it is not open.</summary>
    public Length ExtraFor(PartDimension dimension) =>
        Open.FirstOrDefault(o => o.Dimension == dimension)?.Extra ?? Length.Zero;
}

/// <summary>A size when done. Not a <see cref="RoughSize"/>: confusing the two ruins wood.</summary>
/// <param name="Thickness">Finished thickness.</param>
/// <param name="Width">Finished width, across the grain.</param>
/// <param name="Length">Finished length, along the grain.</param>
public readonly record struct FinishedSize(Length Thickness, Length Width, Length Length);

/// <summary>The least size a blank may be sawn to: finished size, open extra and allowances.</summary>
/// <param name="Thickness">Least thickness of the stock.</param>
/// <param name="Width">Least width, across the grain.</param>
/// <param name="Length">Least length, along the grain.</param>
public readonly record struct RoughSize(Length Thickness, Length Width, Length Length);

/// <summary>Which way a part's grain runs.</summary>
public enum GrainDirection
{
    /// <summary>Along its length, as usual, even where it is wider than long.</summary>
    AlongLength,

    /// <summary>Either way.</summary>
    Any,
}

/// <summary>The face all of a part's squaring and gauging starts from.</summary>
public enum ReferenceFace
{
    /// <summary>Whichever is truest; the student chooses (common practice).</summary>
    Truest,

    /// <summary>The face that will look inward, where the joints meet.</summary>
    Inside,

    /// <summary>The face that will show.</summary>
    Outside,
}

/// <summary>One of a part's three sizes.</summary>
public enum PartDimension
{
    /// <summary>Thickness.</summary>
    Thickness,

    /// <summary>Width.</summary>
    Width,

    /// <summary>Length.</summary>
    Length,
}

/// <summary>A dimension left oversize until something has happened.</summary>
/// <param name="Dimension">Which.</param>
/// <param name="Extra">How much over the finished size it stays.</param>
/// <param name="Until">The event, in words: "the ends dry-fit".</param>
public sealed record OpenDimension(PartDimension Dimension, Length Extra, string Until)
{
    /// <summary>
    /// Letter of the part it is taken from once that one is cut and in place; null where it is taken from the whole piece.
    /// </summary>
    public string? TakenFrom { get; init; }

    /// <summary>
    /// The event, where it was chosen among the project's own; null where there are only words, which are read as well as may
    /// be.
    /// </summary>
    public OpenEvent? Event { get; init; }

    /// <summary>The dimension when a part has got another letter.</summary>
    public OpenDimension Follow(string from, string to)
    {
        var followed = Event?.Follow(from, to);
        return this with
        {
            TakenFrom = TakenFrom == from ? to : TakenFrom,
            Event = followed,
            Until = Event is not null && Until == Event.Words ? followed!.Words : Until,
        };
    }
}
