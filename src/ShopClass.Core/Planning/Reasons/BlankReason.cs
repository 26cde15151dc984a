using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning.Reasons;

/// <summary>What a reason for a blank's place rests on.</summary>
public enum ReasonKind
{
    /// <summary>Of several boards, no other has the thickness and the size for it.</summary>
    OnlyBoard,

    /// <summary>No piece left over from an earlier board is big enough for it.</summary>
    NothingLeftElsewhere,

    /// <summary>It covers a bad place that shows on one face only, and may.</summary>
    HiddenFace,

    /// <summary>No other clear run of its board is long enough at its width.</summary>
    OnlyClearRun,

    /// <summary>It lies in one section with a strip it is glued to.</summary>
    GlueMate,

    /// <summary>One crosscut frees it together with a neighbour of the same length.</summary>
    OneCrosscut,

    /// <summary>It begins and ends at the same lines as a blank beside it.</summary>
    GangMarked,

    /// <summary>It begins farther on than it need, where a blank beside it begins or ends.</summary>
    OneLine,

    /// <summary>It lies beside a longer blank and takes no more length of board.</summary>
    WithinLength,

    /// <summary>Shorter blanks lie beside it, within the length it takes.</summary>
    RoomBeside,

    /// <summary>One rip serves it and a blank in line with it.</summary>
    OneRip,

    /// <summary>It takes the whole width of the board; nothing is ripped.</summary>
    WholeWidth,

    /// <summary>It begins where a bad place ends.</summary>
    PastABadPlace,

    /// <summary>It is packed towards the start, so what is left at the far end stays in one piece.</summary>
    OffcutInOnePiece,

    /// <summary>It is the first on the board.</summary>
    FirstOnTheBoard,

    /// <summary>It lies a kerf or more past its neighbours, on clear wood.</summary>
    NextInTurn,

    /// <summary>It keeps more width than it needs.</summary>
    SurplusWidth,

    /// <summary>It keeps more length than it needs.</summary>
    SurplusLength,
}

/// <summary>Why a blank lies where it lies: one sentence, and the facts of the plan it states.</summary>
/// <param name="Blank">Which blank.</param>
/// <param name="Kind">What the reason rests on.</param>
/// <param name="Sentence">The reason, for people.</param>
public sealed record BlankReason(BlankKey Blank, ReasonKind Kind, string Sentence)
{
    /// <summary>The other blanks it names.</summary>
    public IReadOnlyList<BlankKey> With { get; init; } = [];

    /// <summary>The cut it names.</summary>
    public int? Cut { get; init; }

    /// <summary>The board it names besides the blank's own.</summary>
    public string? OtherBoard { get; init; }

    /// <summary>Where along the board the run it names begins.</summary>
    public Length? From { get; init; }

    /// <summary>Where along the board the run it names ends.</summary>
    public Length? To { get; init; }

    /// <summary>The amount it names: a surplus, the length of an offcut.</summary>
    public Length? Amount { get; init; }
}
