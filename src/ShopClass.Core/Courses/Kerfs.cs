using ShopClass.Core.Measure;

namespace ShopClass.Core.Courses;

/// <summary>The settings about what the saws turn to dust.</summary>
internal static class Kerfs
{
    private const string Group = "Kerfs";

    // The thinnest dovetail saws leave about 1/40 in; a quarter inch is more than any hand saw (common practice).
    private static readonly Length Least = Length.FromInches(0, 1, 64);
    private static readonly Length Most = Length.FromInches(0, 1, 4);

    public static IReadOnlyList<LengthRule> All { get; } =
    [
        new(
            "crosscutKerf",
            "Crosscut kerf",
            Group,
            "Every crosscut turns this much of the board's length to dust.",
            RuleBasis.Practice,
            Least,
            Most,
            rules => rules.CrosscutKerf,
            (rules, value) => rules with { CrosscutKerf = value }
        )
        {
            Source =
                "Common practice for a hand crosscut saw of 8 to 10 points: 3/64 to 1/16 in (1.2 to 1.6 mm). Measure your own saws.",
        },
        new(
            "ripKerf",
            "Rip kerf",
            Group,
            "Every rip turns this much of the board's width to dust.",
            RuleBasis.Practice,
            Least,
            Most,
            rules => rules.RipKerf,
            (rules, value) => rules with { RipKerf = value }
        )
        {
            Source =
                "Common practice for a hand rip saw of about 5 points: 1/16 to 5/64 in (1.6 to 2 mm). Measure your own saws.",
        },
        new(
            "backSawKerf",
            "Back saw kerf",
            Group,
            "Cuts at the bench hook turn this much to dust.",
            RuleBasis.Practice,
            Least,
            Most,
            rules => rules.BackSawKerf,
            (rules, value) => rules with { BackSawKerf = value }
        )
        {
            Source =
                "Common practice for a tenon or carcase saw: 1/32 to 3/64 in (0.8 to 1.1 mm). Measure your own saws.",
        },
    ];
}
