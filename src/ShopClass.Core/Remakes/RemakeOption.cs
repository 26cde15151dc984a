using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Remakes;

/// <summary>Where a spoiled part can come from, in the order they are offered: least disturbance first.</summary>
public enum RemakeWay
{
    /// <summary>From an offcut or a sound remainder, in one piece.</summary>
    Offcut,

    /// <summary>From offcuts and waste, glued up.</summary>
    GluedUp,

    /// <summary>By laying the wood that is not sawn yet out again.</summary>
    LaidOutAgain,

    /// <summary>From the shop's rack.</summary>
    Rack,

    /// <summary>In exchange for the class's finished spare.</summary>
    ClassSpare,

    /// <summary>From a new board.</summary>
    NewBoard,

    /// <summary>By making the design a little smaller, so that every joint still fits.</summary>
    SmallerDesign,
}

/// <summary>One legal way to get a spoiled part back.</summary>
public sealed record RemakeOption
{
    /// <summary>Where it comes from.</summary>
    public required RemakeWay Way { get; init; }

    /// <summary>What to do, in a sentence.</summary>
    public required string Sentence { get; init; }

    /// <summary>What it costs, where a board is bought; null where nothing is.</summary>
    public Money? Cost { get; init; }

    /// <summary>
    /// The new cuts, rehearsed, on the pieces at hand as its boards; null where nothing is sawn. Its parts are only those
    /// still to be sawn out: <see cref="Blanks"/> says which they are in the first plan.
    /// </summary>
    public CheckedPlan? Plan { get; init; }

    /// <summary>For each blank of <see cref="Plan"/>, the blank of the first plan that it is.</summary>
    public IReadOnlyList<RenamedBlank> Blanks { get; init; } = [];

    /// <summary>Finished sizes that change; empty for all ways but <see cref="RemakeWay.SmallerDesign"/>.</summary>
    public IReadOnlyList<SizeChange> Changes { get; init; } = [];
}

/// <summary>A blank of a remake, and which one it replaces.</summary>
/// <param name="Here">Its key in the remake's own plan.</param>
/// <param name="InFirstPlan">Its key in the plan that was being followed.</param>
public readonly record struct RenamedBlank(BlankKey Here, BlankKey InFirstPlan);

/// <summary>A finished size that changes.</summary>
/// <param name="Part">Letter of the part; null for a size that is no part's, such as a clear width.</param>
/// <param name="What">What it is, in words: "length of B", "clear width".</param>
/// <param name="Dimension">Which of the part's sizes; null for a size that is no part's.</param>
/// <param name="From">What it was.</param>
/// <param name="To">What it becomes.</param>
public sealed record SizeChange(
    string? Part,
    string What,
    PartDimension? Dimension,
    Length From,
    Length To
);

/// <summary>Every way found, and why the others are closed.</summary>
/// <param name="Options">The ways, in the order they are offered.</param>
/// <param name="WhyNot">One sentence for each way that is closed.</param>
public sealed record RemakeAnswer(
    IReadOnlyList<RemakeOption> Options,
    IReadOnlyList<ClosedWay> WhyNot
);

/// <summary>A way that is closed.</summary>
/// <param name="Way">Which.</param>
/// <param name="Sentence">Why.</param>
public sealed record ClosedWay(RemakeWay Way, string Sentence);
