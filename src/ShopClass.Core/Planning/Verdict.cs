using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning;

/// <summary>What the boards at hand are good for.</summary>
public enum VerdictKind
{
    /// <summary>They yield the whole project as they are.</summary>
    Fits,

    /// <summary>They yield it by a route that adds work: a glue-up, planing.</summary>
    FitsByRoute,

    /// <summary>They do not yield it.</summary>
    TooSmall,

    /// <summary>There is nothing to judge: no boards, or no parts.</summary>
    NothingToJudge,
}

/// <summary>By how much a board would have to be bigger, in one direction, for everything to fit.</summary>
/// <param name="BoardId">Which board.</param>
/// <param name="Direction">Length, width or thickness.</param>
/// <param name="Amount">How much more, rounded up to the course's precision.</param>
public sealed record Shortfall(string BoardId, PartDimension Direction, Length Amount);

/// <summary>The answer at logging a board.</summary>
/// <param name="Kind">The short answer.</param>
/// <param name="Sentence">The answer as a sentence for the instructor and the student, lengths at the course's precision.</param>
/// <param name="Routes">The extra work that makes it fit, one sentence each: "Glue up A from 2 strips".</param>
/// <param name="Shortfalls">Every single direction in which more wood would do, smallest first; empty unless too small.</param>
/// <param name="Cautions">What to know although it fits: species hard going for beginners, dust that sensitises, surfaces to plane.</param>
public sealed record Verdict(
    VerdictKind Kind,
    string Sentence,
    IReadOnlyList<string> Routes,
    IReadOnlyList<Shortfall> Shortfalls,
    IReadOnlyList<string> Cautions
)
{
    /// <summary>Where a short proof exists that the boards cannot do, that proof in words; empty unless too small.</summary>
    public IReadOnlyList<string> Proofs { get; init; } = [];

    /// <summary>Whether it is proven that the boards cannot do: by one of <see cref="Proofs"/>, or because every layout was looked through.</summary>
    public bool IsProven { get; init; }
}
