using System.Collections.Frozen;
using ShopClass.Core.Courses;

namespace ShopClass.Core.Lumber;

/// <summary>How a species goes under a hand saw, judged by its published figures.</summary>
public enum Going
{
    /// <summary>Not denser than the course's ceiling.</summary>
    Fit,

    /// <summary>Denser than the course's ceiling for beginners.</summary>
    Hard,

    /// <summary>No specific gravity at 12 % is published in the tables used here.</summary>
    Unknown,
}

/// <summary>A species' fitness for sawing by hand.</summary>
/// <param name="Species">The species, with its figures and their sources.</param>
/// <param name="Going">Against the course's ceiling.</param>
/// <param name="HasStrongRings">
/// Whether soft earlywood and hard latewood alternate so strongly that saw and plane jump (common practice, from memory).
/// </param>
public sealed record SpeciesFit(Species Species, Going Going, bool HasStrongRings)
{
    // The southern pines and Douglas-fir: common practice, from memory.
    private static readonly FrozenSet<string> StrongRings = FrozenSet.Create(
        StringComparer.Ordinal,
        "loblolly-pine",
        "longleaf-pine",
        "shortleaf-pine",
        "slash-pine",
        "douglas-fir-coast",
        "douglas-fir-interior-north",
        "douglas-fir-interior-west",
        "douglas-fir-interior-south"
    );

    /// <summary>
    /// Every species, lightest first: by specific gravity at 12 %, then by side hardness, then by name. A figure nobody
    /// published comes last.
    /// </summary>
    public static IReadOnlyList<SpeciesFit> Rank(CourseRules rules) =>
        [
            .. SpeciesTable
                .All.OrderBy(s => s.SpecificGravity12?.Value ?? decimal.MaxValue)
                .ThenBy(s => s.SideHardnessNewtons?.Value ?? decimal.MaxValue)
                .ThenBy(s => s.CommonName, StringComparer.OrdinalIgnoreCase)
                .Select(s => new SpeciesFit(s, GoingOf(s, rules), StrongRings.Contains(s.Id))),
        ];

    private static Going GoingOf(Species species, CourseRules rules) =>
        species.SpecificGravity12 switch
        {
            null => Going.Unknown,
            { } gravity when gravity.Value * 100 > rules.HardGoingAbove => Going.Hard,
            _ => Going.Fit,
        };
}
