using ShopClass.Core.Lumber;

namespace ShopClass.Web.Features.Boards;

/// <summary>What stands in the field for the wood: the text as typed, and which species it names.</summary>
public sealed class SpeciesEntry
{
    private const int MostNamed = 4;

    public string Text { get; private set; } = "";

    public Species? Species { get; private set; }

    /// <summary>Why the text names no species, as a sentence.</summary>
    public string? Problem { get; private set; }

    public void Show(string? speciesId)
    {
        Species = speciesId is null ? null : SpeciesTable.Find(speciesId);
        Text = Species?.CommonName ?? "";
        Problem = null;
    }

    /// <summary>Takes a name, a botanical name, or a piece of one that only one species has.</summary>
    public void Type(string? text)
    {
        Text = (text ?? "").Trim();
        Species = null;
        Problem = null;
        if (Text.Length == 0)
            return;
        var found = Named(Text) is { } exact ? [exact] : Holding(Text);
        if (found is [var only])
            (Species, Text) = (only, only.CommonName);
        else
            Problem =
                found.Count == 0
                    ? $"No wood in the list is called “{Shortened(Text)}”. Choose one from the list."
                    : $"Several woods are called that: {Listed(found)}. Choose one.";
    }

    private static Species? Named(string text) =>
        SpeciesTable.All.FirstOrDefault(s =>
            s.CommonName.Equals(text, StringComparison.OrdinalIgnoreCase)
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
