using ShopClass.Core.Measure;

namespace ShopClass.Core.Lumber;

/// <summary>Which species a typed name means.</summary>
public static class SpeciesNames
{
    private const int MostNamed = 4;

    /// <summary>
    /// The species of a key, a common name, a botanical name, or a piece of one that only one species has; otherwise a
    /// sentence that names what it could be.
    /// </summary>
    public static Reading<Species> Read(string? typed)
    {
        var text = (typed ?? "").Trim();
        if (text.Length == 0)
            return Reading<Species>.Refused(
                "The wood is missing. Write a name such as “eastern white pine”."
            );
        if (Named(text) is { } exact)
            return Reading<Species>.Of(exact);
        var found = Holding(text);
        return found switch
        {
            [var only] => Reading<Species>.Of(only),
            [] => Reading<Species>.Refused(
                $"No wood in the list is called “{Shortened(text)}”. Choose one from the list."
            ),
            _ => Reading<Species>.Refused(
                $"Several woods are called that: {Listed(found)}. Choose one."
            ),
        };
    }

    private static Species? Named(string text) =>
        SpeciesTable.All.FirstOrDefault(s =>
            s.Id.Equals(text, StringComparison.OrdinalIgnoreCase)
            || s.CommonName.Equals(text, StringComparison.OrdinalIgnoreCase)
            || s.ScientificName.Equals(text, StringComparison.OrdinalIgnoreCase)
        );

    private static List<Species> Holding(string text) =>
        [
            .. SpeciesTable.All.Where(s =>
                s.CommonName.Contains(text, StringComparison.OrdinalIgnoreCase)
                || s.ScientificName.Contains(text, StringComparison.OrdinalIgnoreCase)
            ),
        ];

    private static string Listed(List<Species> found) =>
        string.Join(", ", found.Take(MostNamed).Select(s => s.CommonName))
        + (found.Count > MostNamed ? " and others" : "");

    private static string Shortened(string text) => text.Length <= 40 ? text : text[..40] + "…";
}
