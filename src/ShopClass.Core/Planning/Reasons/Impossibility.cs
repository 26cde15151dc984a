using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning.Reasons;

/// <summary>What a proof that boards will not do rests on.</summary>
public enum ImpossibilityKind
{
    /// <summary>No board has the thickness for a part.</summary>
    Thickness,

    /// <summary>A part is wider than every board and is not glued up.</summary>
    Width,

    /// <summary>A part is longer than every clear run wide enough for it.</summary>
    Run,

    /// <summary>Parts too wide to lie side by side need more length one after another than there is.</summary>
    EndToEnd,

    /// <summary>The blanks have more area than the boards.</summary>
    Area,
}

/// <summary>A proof that some parts cannot all come from the boards at hand, whatever the plan.</summary>
/// <param name="Kind">What it rests on.</param>
/// <param name="Parts">Letters of the parts it is about.</param>
/// <param name="Sentence">The proof in words.</param>
public sealed record Impossibility(
    ImpossibilityKind Kind,
    IReadOnlyList<string> Parts,
    string Sentence
)
{
    /// <summary>The length or width that is needed, where the proof is about one.</summary>
    public Length? Needed { get; init; }

    /// <summary>The length or width there is, where the proof is about one; always less than <see cref="Needed"/>.</summary>
    public Length? There { get; init; }
}
