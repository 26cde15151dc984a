using ShopClass.Core.Measure;

namespace ShopClass.Core.Courses;

/// <summary>The settings about what leftover is worth keeping.</summary>
internal static class Offcuts
{
    private const string Group = "Offcuts";

    public static IReadOnlyList<LengthRule> All { get; } =
    [
        new(
            "shortestOffcut",
            "Shortest offcut",
            Group,
            "A leftover shorter than this counts as waste.",
            RuleBasis.Proposal,
            Length.Zero,
            Length.FromInches(120),
            rules => rules.ShortestOffcut,
            (rules, value) => rules with { ShortestOffcut = value }
        )
        {
            Source = "Our proposal: 8 in (200 mm), long enough to be held and used again.",
        },
        new(
            "narrowestOffcut",
            "Narrowest offcut",
            Group,
            "A leftover narrower than this counts as waste.",
            RuleBasis.Proposal,
            Length.Zero,
            Length.FromInches(24),
            rules => rules.NarrowestOffcut,
            (rules, value) => rules with { NarrowestOffcut = value }
        )
        {
            Source = "Our proposal: 1 1/2 in (38 mm).",
        },
    ];
}
