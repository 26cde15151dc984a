using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Sawing;

/// <summary>What a cut does.</summary>
public enum CutKind
{
    /// <summary>Takes a bad or untrue end off.</summary>
    EndTrim,

    /// <summary>Across the grain.</summary>
    Crosscut,

    /// <summary>Along the grain.</summary>
    Rip,
}

/// <summary>How good a cut must be (common practice in teaching hand sawing).</summary>
public enum CutClass
{
    /// <summary>Rough, beside a pencil line.</summary>
    Third,

    /// <summary>To a knife line, cleaned up afterwards.</summary>
    Second,

    /// <summary>Joint or visible surface, to a chiselled knife line.</summary>
    First,
}

/// <summary>The saw to take.</summary>
public enum SawKind
{
    /// <summary>Hand crosscut saw, 8 to 10 points.</summary>
    HandCrosscut,

    /// <summary>Hand rip saw, about 5 points.</summary>
    HandRip,

    /// <summary>Back saw (tenon or carcase).</summary>
    BackSaw,
}

/// <summary>What holds the work.</summary>
public enum Support
{
    /// <summary>Saw bench, under the knee.</summary>
    SawBench,

    /// <summary>Bench hook.</summary>
    BenchHook,

    /// <summary>Vise.</summary>
    Vise,

    /// <summary>On the bench, against a stop or under clamps. No cut of the breakdown is held so.</summary>
    Bench,
}

/// <summary>The line that is sawn to.</summary>
public enum LineKind
{
    /// <summary>Pencil line.</summary>
    Pencil,

    /// <summary>Knife line.</summary>
    Knife,

    /// <summary>Line of a marking gauge.</summary>
    Gauge,
}

/// <summary>One cut through one piece, edge to edge.</summary>
public sealed record Cut
{
    /// <summary>Its place in the order, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>The board the piece comes from.</summary>
    public required string BoardId { get; init; }

    /// <summary>What it does.</summary>
    public required CutKind Kind { get; init; }

    /// <summary>How good it must be.</summary>
    public required CutClass Class { get; init; }

    /// <summary>The saw to take.</summary>
    public required SawKind Saw { get; init; }

    /// <summary>What holds the work.</summary>
    public required Support Support { get; init; }

    /// <summary>The line to saw to.</summary>
    public required LineKind Line { get; init; }

    /// <summary>The piece that is cut, in the board's own coordinates.</summary>
    public required BoardRect Piece { get; init; }

    /// <summary>
    /// Where the line is: along the board from its start for a crosscut, across it from the near edge for a rip. The
    /// kerf lies on the waste side of it.
    /// </summary>
    public required Length Position { get; init; }

    /// <summary>The wood the saw turns to dust; spans the piece from edge to edge. Less than a full kerf only where the piece ends.</summary>
    public required BoardRect Kerf { get; init; }

    /// <summary>How far the saw travels: the piece's width for a crosscut, its length for a rip.</summary>
    public required Length SawnLength { get; init; }

    /// <summary>What the cut leaves, in words: "A1 and the rest of the board".</summary>
    public required string Leaves { get; init; }

    /// <summary>How to hold and saw it, in a sentence or two.</summary>
    public required string Hold { get; init; }

    /// <summary>Why it comes here, in a sentence.</summary>
    public required string Reason { get; init; }

    /// <summary>Set when a hold limit bends the usual way: "shorter than 24 in: rip from both ends".</summary>
    public string? HoldNote { get; init; }
}

/// <summary>The cuts of a plan, in the order they are made.</summary>
/// <param name="Cuts">The cuts; numbers run from 1 without a gap.</param>
public sealed record SawingSequence(IReadOnlyList<Cut> Cuts);
