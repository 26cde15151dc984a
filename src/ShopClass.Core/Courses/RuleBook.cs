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
    /// <summary>The default in this unit.</summary>
    public Length DefaultFor(UnitSystem unit) => Get(CourseRules.DefaultsFor(unit));
}

/// <summary>The course's settings as a list, for the settings page, course files and checks.</summary>
public static class RuleBook
{
    /// <summary>All length settings, in the order of the settings page.</summary>
    public static IReadOnlyList<LengthRule> Lengths => throw new NotImplementedException();

    /// <summary>What is wrong with these rules, as key and sentence; empty when nothing is.</summary>
    public static IReadOnlyList<(string Key, string Sentence)> ProblemsIn(CourseRules rules) =>
        throw new NotImplementedException();
}
