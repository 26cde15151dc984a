using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Steps;

/// <summary>
/// One thing a student does, from the board to the finished piece. Steps are written by the sequence engine from a checked
/// plan, the project's joints and the student's hand; the rehearsal of steps judges them.
/// </summary>
public sealed record Step
{
    /// <summary>
    /// Names the step for as long as its plan version lives: ticks, notes and measured sizes hang on it. Made from what is
    /// done to what ("rip:1:A2"), never from its place, so that it is the same for the same plan, always.
    /// </summary>
    public required string Id { get; init; }

    /// <summary>Its place in the order, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>What is done.</summary>
    public required StepKind Kind { get; init; }

    /// <summary>The skill it uses, for lessons and demonstrations.</summary>
    public required Skill Skill { get; init; }

    /// <summary>Where in the shop it is done.</summary>
    public required Station Station { get; init; }

    /// <summary>What to do, in one line: "Rip A1 from B1".</summary>
    public required string Title { get; init; }

    /// <summary>The pieces worked on, as written on the wood: <c>A2</c>, <c>A2.1</c>, or a board's name.</summary>
    public required IReadOnlyList<string> Pieces { get; init; }

    /// <summary>The saw cut of the breakdown this step makes; null for all other steps.</summary>
    public Cut? Cut { get; init; }

    /// <summary>How good a saw cut must be; null where nothing is sawn.</summary>
    public CutClass? Class { get; init; }

    /// <summary>The saw; null where nothing is sawn.</summary>
    public SawChoice? Saw { get; init; }

    /// <summary>What holds the work; null where nothing is held.</summary>
    public Support? Support { get; init; }

    /// <summary>The line worked to; null where there is none.</summary>
    public LineKind? Line { get; init; }

    /// <summary>Which face or edge the square or gauge sits on, or the end measured from; empty where nothing is marked.</summary>
    public string MarkedFrom { get; init; } = "";

    /// <summary>What is marked or set, one line each: places to measure, settings of a gauge. Empty where nothing is.</summary>
    public IReadOnlyList<string> Marks { get; init; } = [];

    /// <summary>The setting of a gauge that is set or struck with; null where none is.</summary>
    public Length? Gauge { get; init; }

    /// <summary>Further settings of gauges run along the reference edge, for where a joint begins and ends across; nearest first.</summary>
    public IReadOnlyList<Length> GaugesAcross { get; init; } = [];

    /// <summary>On which side of the sawyer the waste falls; null where nothing is sawn off.</summary>
    public Side? WasteSide { get; init; }

    /// <summary>
    /// What to hold and where, in a sentence or two. Empty where nothing is held. The words left and right mean nothing but
    /// sides here, so that the sentence can be mirrored.
    /// </summary>
    public string Hold { get; init; } = "";

    /// <summary>How to do it: how to start, go on and end, in one to three sentences. The instructor may replace it per course.</summary>
    public string Technique { get; init; } = "";

    /// <summary>Why it comes here, in a sentence.</summary>
    public required string Reason { get; init; }

    /// <summary>What must be true first, in words.</summary>
    public IReadOnlyList<string> Needs { get; init; } = [];

    /// <summary>Numbers of earlier steps that must be done first. Steps that neither comes before the other may change places.</summary>
    public IReadOnlyList<int> After { get; init; } = [];

    /// <summary>The pieces it leaves, with their sizes.</summary>
    public IReadOnlyList<PieceLeft> Leaves { get; init; } = [];

    /// <summary>Tools to set out.</summary>
    public IReadOnlyList<string> Tools { get; init; } = [];

    /// <summary>What to beware of at this step; empty when the usual cautions are enough.</summary>
    public string Caution { get; init; } = "";

    /// <summary>About how long it takes.</summary>
    public required StepTime Time { get; init; }

    /// <summary>
    /// Whether the instructor does it before class, because the course does not teach it. It takes none of the student's
    /// time.
    /// </summary>
    public bool IsPrepared { get; init; }

    /// <summary>Dimensions of its pieces that are open before it, and how they stand when it is done.</summary>
    public IReadOnlyList<OpenNow> Open { get; init; } = [];
}

/// <summary>Left or right, as the sawyer stands.</summary>
public enum Side
{
    /// <summary>Left.</summary>
    Left,

    /// <summary>Right.</summary>
    Right,
}

/// <summary>How far an open dimension has come.</summary>
public enum OpenState
{
    /// <summary>Still oversize; it waits for its event.</summary>
    Open,

    /// <summary>Marked from the place or the part it must fit, not from a rule.</summary>
    TakenFromMate,

    /// <summary>Cut to that mark.</summary>
    Cut,

    /// <summary>Tried in its place, and it fits.</summary>
    Fitted,
}

/// <summary>An open dimension of a piece, as it stands after a step.</summary>
/// <param name="Piece">The piece, as written on the wood.</param>
/// <param name="Dimension">Which of its sizes.</param>
/// <param name="State">How it stands.</param>
/// <param name="Extra">How much it is over its finished size while it waits.</param>
/// <param name="Until">The event it waits for, in words.</param>
public sealed record OpenNow(
    string Piece,
    PartDimension Dimension,
    OpenState State,
    Length Extra,
    string Until
);

/// <summary>A piece after a step.</summary>
/// <param name="Name">As written on the wood, or "rest of board 1", "offcut".</param>
/// <param name="Thickness">Its thickness.</param>
/// <param name="Width">Its width, across the grain.</param>
/// <param name="Length">Its length, along the grain.</param>
/// <param name="Use">What becomes of it.</param>
public sealed record PieceLeft(
    string Name,
    Length Thickness,
    Length Width,
    Length Length,
    PieceUse Use
);

/// <summary>What becomes of a piece.</summary>
public enum PieceUse
{
    /// <summary>It goes on to be one or more parts.</summary>
    Work,

    /// <summary>Worth keeping.</summary>
    Offcut,

    /// <summary>Too small to keep.</summary>
    Waste,
}

/// <summary>A saw, as it is set out.</summary>
/// <param name="Kind">Which saw.</param>
/// <param name="Points">Teeth, in points to the inch.</param>
/// <param name="Kerf">Its kerf.</param>
public sealed record SawChoice(SawKind Kind, int Points, Length Kerf);

/// <summary>About how long a step takes, and how that is known. Whole seconds; nothing here is a clock.</summary>
/// <param name="SetUp">Seconds to set up, mark and check.</param>
/// <param name="Work">Seconds of work itself: area by rate, species and student.</param>
/// <param name="Waiting">Seconds it must be left alone afterwards (glue in clamps). The student is free meanwhile.</param>
/// <param name="Basis">Where the figures come from, in words.</param>
public sealed record StepTime(int SetUp, int Work, int Waiting, string Basis)
{
    /// <summary>Seconds the student is busy.</summary>
    public int Busy => SetUp + Work;
}

/// <summary>The steps of one student, in order.</summary>
/// <param name="Steps">The steps; numbers run from 1 without a gap.</param>
public sealed record WorkSequence(IReadOnlyList<Step> Steps)
{
    /// <summary>The hand they are written for.</summary>
    public Hand Hand { get; init; }
}
