using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;

namespace ShopClass.Core.Planning.Guide;

/// <summary>The species list of a stock guide in words.</summary>
public static class SpeciesWords
{
    /// <summary>What the ranking goes by, and where the figures come from.</summary>
    public static string RankedBy(CourseRules rules) =>
        $"Lightest first, by specific gravity at 12 % moisture content, then by side hardness: Wood Handbook, FPL-GTR-190, Table 5-3a. This course's ceiling for beginners is {rules.HardGoingAbove / 100m:0.00}.";

    /// <summary>A figure as shown; a remembered one is marked.</summary>
    public static string Figure(SourcedFigure? figure, string format) =>
        figure is null
            ? "not published"
            : figure.Value.ToString(format, System.Globalization.CultureInfo.InvariantCulture)
                + (figure.Basis is Basis.Memory ? " (from memory)" : "");

    /// <summary>What to know about it before buying; empty when there is nothing.</summary>
    public static string Caution(SpeciesFit fit)
    {
        List<string> said = [];
        if (fit.Species.IsSensitiser)
            said.Add("dust known to sensitise");
        if (fit.HasStrongRings)
            said.Add("hard and soft rings in turn: the saw jumps");
        var all = string.Join("; ", said);
        return all.Length == 0 ? "" : char.ToUpperInvariant(all[0]) + all[1..] + ".";
    }

    /// <summary>Where the cautions come from.</summary>
    public const string CautionBasis =
        "Sensitising dust and the strong rings of the southern pines and Douglas-fir: common practice, from memory. Any wood dust can irritate.";

    /// <summary>Ranked species as one line, each gravity once: <c>0.35 eastern white pine, white spruce; 0.36 ...</c></summary>
    public static string Line(IEnumerable<SpeciesFit> species) =>
        string.Join(
            "; ",
            species
                .GroupBy(s => Figure(s.Species.SpecificGravity12, "0.00"), StringComparer.Ordinal)
                .Select(g =>
                    $"{g.Key} {string.Join(", ", g.Select(s => s.Species.CommonName + Mark(s)))}"
                )
        );

    private static string Mark(SpeciesFit fit) =>
        (fit.Species.IsSensitiser, fit.HasStrongRings) switch
        {
            (true, true) => " [S, R]",
            (true, false) => " [S]",
            (false, true) => " [R]",
            _ => "",
        };
}
