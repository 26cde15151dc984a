using ShopClass.Core.Lumber;

namespace ShopClass.Web.Features.Boards;

/// <summary>What stands in the field for the wood: the text as typed, and which species it names.</summary>
public sealed class SpeciesEntry
{
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
        var read = SpeciesNames.Read(Text);
        Species = read.Value;
        Problem = read.Problem;
        Text = Species?.CommonName ?? Text;
    }
}
