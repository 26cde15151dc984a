namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>Sections one after the other along a board.</summary>
/// <param name="Packed">Their blanks.</param>
/// <param name="Span">The length they take, with the kerfs after them.</param>
/// <param name="Loss">What they lose together.</param>
/// <param name="Effort">Their sawing.</param>
/// <param name="Column">The section added last.</param>
/// <param name="Before">Number of the fill without it, or -1.</param>
/// <param name="IsBeaten">Whether something better has taken its place.</param>
internal readonly record struct Fill(
    ulong Packed,
    long Span,
    long Loss,
    long Effort,
    int Column,
    int Before,
    bool IsBeaten = false
);
