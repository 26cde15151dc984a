using ShopClass.Core.Measure;

namespace ShopClass.Core.Courses;

/// <summary>The settings about what is long enough to hold. The instructor's judgement, never a rule of safety.</summary>
internal static class Holding
{
    private const string Group = "Holding";

    public static IReadOnlyList<LengthRule> All { get; } =
    [
        new(
            "sawBenchLimit",
            "Saw bench limit",
            Group,
            "Shorter stock than this is not held under the knee on a saw bench.",
            RuleBasis.Proposal,
            Length.FromInches(6),
            Length.FromInches(72),
            rules => rules.SawBenchLimit,
            (rules, value) => rules with { SawBenchLimit = value }
        )
        {
            Source =
                "Our proposal: 24 in (600 mm). The instructor's judgement and local rules come first.",
        },
        new(
            "benchHookLimit",
            "Bench hook limit",
            Group,
            "The kept side of a cut at the bench hook is at least this long.",
            RuleBasis.Proposal,
            Length.FromInches(1),
            Length.FromInches(24),
            rules => rules.BenchHookLimit,
            (rules, value) => rules with { BenchHookLimit = value }
        )
        {
            Source =
                "Our proposal: 6 in (150 mm). The instructor's judgement and local rules come first.",
        },
    ];
}
