using ShopClass.Core.Measure;

namespace ShopClass.Core.Progress;

/// <summary>What somebody says about a step.</summary>
public enum StepActionKind
{
    /// <summary>The student has done it.</summary>
    Tick,

    /// <summary>The student takes the tick back.</summary>
    Untick,

    /// <summary>A size was measured: <see cref="StepAction.Text"/> names the piece.</summary>
    Measured,

    /// <summary>A note.</summary>
    Note,

    /// <summary>The student asks for the step to be looked at.</summary>
    PleaseCheck,

    /// <summary>The student needs help.</summary>
    NeedHelp,

    /// <summary>The student no longer does.</summary>
    HelpOver,

    /// <summary>A piece is spoiled: <see cref="StepAction.Text"/> names it.</summary>
    Spoiled,

    /// <summary>The instructor has looked at it and it is good. Ticks the step too.</summary>
    CheckedOff,

    /// <summary>The instructor has looked at it and it is not good yet: <see cref="StepAction.Text"/> says what is wrong.</summary>
    SentBack,

    /// <summary>The instructor has helped.</summary>
    Helped,

    /// <summary>The instructor has found a way on from a spoiled piece: <see cref="StepAction.Text"/> names it.</summary>
    Settled,
}

/// <summary>
/// One thing said about one step. Nothing is ever changed or taken out: the state of the work follows from all of them, in
/// the order they were stored.
/// </summary>
/// <param name="Id">Made by whoever says it, so that the same one, sent twice, counts once.</param>
/// <param name="StepId">The step.</param>
/// <param name="Kind">What is said.</param>
/// <param name="Text">A note, a piece or a fault, by kind; otherwise empty.</param>
/// <param name="Size">The measured size; null unless the kind is <see cref="StepActionKind.Measured"/>.</param>
public sealed record StepAction(
    Guid Id,
    string StepId,
    StepActionKind Kind,
    string Text = "",
    Length? Size = null
)
{
    /// <summary>
    /// Whole minutes the step took, as whoever ticks it says; null where they do not, and unless the kind is
    /// <see cref="StepActionKind.Tick"/>.
    /// </summary>
    public int? Minutes { get; init; }
}
