using ShopClass.Core.Measure;

namespace ShopClass.Core.Courses;

/// <summary>What stands behind a default.</summary>
public enum RuleBasis
{
    /// <summary>Taught in published texts on hand work.</summary>
    Book,

    /// <summary>Common practice, no single source.</summary>
    Practice,

    /// <summary>Our proposal; no published basis found.</summary>
    Proposal,
}

/// <summary>One length among the course's settings: how to show, check and change it.</summary>
/// <param name="Key">Stable name, also used in course files.</param>
/// <param name="Name">What the field is called.</param>
/// <param name="Group">Kerfs, Allowances, Holding or Offcuts.</param>
/// <param name="Meaning">One sentence: what the figure does to a plan.</param>
/// <param name="Basis">What stands behind the default.</param>
/// <param name="Least">Smallest value accepted.</param>
/// <param name="Most">Largest value accepted.</param>
/// <param name="Get">Reads it.</param>
/// <param name="With">A copy of the rules with it changed.</param>
public sealed record LengthRule(
    string Key,
    string Name,
    string Group,
    string Meaning,
    RuleBasis Basis,
    Length Least,
    Length Most,
    Func<CourseRules, Length> Get,
    Func<CourseRules, Length, CourseRules> With
)
{
    /// <summary>One sentence on where the default comes from.</summary>
    public string Source { get; init; } = "";

    /// <summary>The default in this unit.</summary>
    public Length DefaultFor(UnitSystem unit) => Get(CourseRules.DefaultsFor(unit));
}

/// <summary>The course's settings as a list, for the settings page, course files and checks.</summary>
public static class RuleBook
{
    /// <summary>The key of the precision, which is no length but has its problem too.</summary>
    public const string PrecisionKey = "precision";

    /// <summary>The key of <see cref="CourseRules.HardGoingAbove"/>.</summary>
    public const string HardGoingKey = "hardGoingAbove";

    /// <summary>Largest value of <see cref="CourseRules.HardGoingAbove"/>: the heaviest woods of the Wood Handbook stay below 1.25.</summary>
    public const int MostHardGoing = 125;

    /// <summary>The key of <see cref="CourseRules.MostGlueUpStrips"/>.</summary>
    public const string MostGlueUpStripsKey = "mostGlueUpStrips";

    /// <summary>Fewest strips that are a glue-up.</summary>
    public const int LeastGlueUpStrips = 2;

    /// <summary>Largest value of <see cref="CourseRules.MostGlueUpStrips"/>, and the usual one (our proposal).</summary>
    public const int UsualGlueUpStrips = 6;

    /// <summary>The key of <see cref="CourseRules.ShopHumidity"/>.</summary>
    public const string ShopHumidityKey = "shopHumidity";

    /// <summary>The key of <see cref="CourseRules.RoomHumidity"/>.</summary>
    public const string RoomHumidityKey = "roomHumidity";

    /// <summary>The usual humidity of a shop, per cent (our proposal; measure your own).</summary>
    public const int UsualShopHumidity = 50;

    /// <summary>The usual humidity of a heated room in winter, per cent (our proposal; measure your own).</summary>
    public const int UsualRoomHumidity = 35;

    /// <summary>The driest air taken, per cent.</summary>
    public const int LeastHumidity = 10;

    /// <summary>The dampest air taken, per cent.</summary>
    public const int MostHumidity = 90;

    /// <summary>All length settings, in the order of the settings page.</summary>
    public static IReadOnlyList<LengthRule> Lengths { get; } =
    [.. Kerfs.All, .. Allowances.All, .. Holding.All, .. Offcuts.All];

    /// <summary>What is wrong with these rules, as key and sentence; empty when nothing is.</summary>
    public static IReadOnlyList<(string Key, string Sentence)> ProblemsIn(CourseRules rules) =>
        [
            .. PrecisionProblems(rules),
            .. Lengths.SelectMany(rule => RangeProblems(rule, rules)),
            .. TrimProblems(rules),
            .. HoldingProblems(rules),
            .. HardGoingProblems(rules),
            .. GlueUpProblems(rules),
            .. HumidityProblems(ShopHumidityKey, "shop", rules.ShopHumidity),
            .. HumidityProblems(RoomHumidityKey, "room", rules.RoomHumidity),
        ];

    private static IEnumerable<(string, string)> PrecisionProblems(CourseRules rules)
    {
        if (!Enum.IsDefined(rules.Unit) || !Enum.IsDefined(rules.Precision))
            yield return (PrecisionKey, "Choose a unit and a precision from the lists.");
        else if (rules.Precision.Unit() != rules.Unit)
            yield return (
                PrecisionKey,
                "The precision belongs to the other unit. Choose one of the course's own unit."
            );
    }

    private static IEnumerable<(string, string)> RangeProblems(LengthRule rule, CourseRules rules)
    {
        var value = rule.Get(rules);
        if (value < rule.Least || value > rule.Most)
            yield return (
                rule.Key,
                $"{rule.Name} is {Said.Exactly(value, rules.Unit)}. Choose {Said.Between(rule.Least, rule.Most, rules.Unit)}."
            );
    }

    private static IEnumerable<(string, string)> TrimProblems(CourseRules rules)
    {
        if (rules.UsualEndTrim > Length.Zero && rules.UsualEndTrim < rules.CrosscutKerf)
            yield return (
                "usualEndTrim",
                $"An end trim of {Said.Exactly(rules.UsualEndTrim, rules.Unit)} is less than one crosscut kerf, {Said.Exactly(rules.CrosscutKerf, rules.Unit)}. Choose zero or at least the kerf."
            );
    }

    private static IEnumerable<(string, string)> HoldingProblems(CourseRules rules)
    {
        if (rules.BenchHookLimit > rules.SawBenchLimit)
            yield return (
                "benchHookLimit",
                $"The bench hook limit, {Said.Exactly(rules.BenchHookLimit, rules.Unit)}, is longer than the saw bench limit, {Said.Exactly(rules.SawBenchLimit, rules.Unit)}. A bench hook holds shorter pieces than a saw bench."
            );
    }

    private static IEnumerable<(string, string)> GlueUpProblems(CourseRules rules)
    {
        if (rules.MostGlueUpStrips is < LeastGlueUpStrips or > UsualGlueUpStrips)
            yield return (
                MostGlueUpStripsKey,
                $"The most strips in a glue-up is {rules.MostGlueUpStrips}. Choose {LeastGlueUpStrips} to {UsualGlueUpStrips}."
            );
    }

    private static IEnumerable<(string, string)> HumidityProblems(
        string key,
        string where,
        int humidity
    )
    {
        if (humidity is < LeastHumidity or > MostHumidity)
            yield return (
                key,
                $"The humidity of the {where} is {humidity} %. Choose {LeastHumidity} to {MostHumidity} %."
            );
    }

    private static IEnumerable<(string, string)> HardGoingProblems(CourseRules rules)
    {
        if (rules.HardGoingAbove is < 1 or > MostHardGoing)
            yield return (
                HardGoingKey,
                $"The specific gravity is {rules.HardGoingAbove / 100m:0.00}. Choose a figure from 0.01 to 1.25; the usual one is 0.55."
            );
    }
}
