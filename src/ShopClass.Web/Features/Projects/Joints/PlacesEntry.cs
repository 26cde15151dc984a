using ShopClass.Core.Measure;

namespace ShopClass.Web.Features.Projects.Joints;

/// <summary>Several lengths in one field, between semicolons: "2; 10 1/4".</summary>
public sealed class PlacesEntry
{
    private string? typed;

    public IReadOnlyList<Length> Lengths { get; private set; } = [];

    /// <summary>The reader's sentence for the first that cannot be read.</summary>
    public string? Problem { get; private set; }

    public void Show(IReadOnlyList<Length> lengths) =>
        (Lengths, Problem, typed) = (lengths, null, null);

    /// <summary>What stands in the field: as typed, or as it is stored.</summary>
    public string Text(UnitSystem unit) =>
        typed ?? string.Join("; ", Lengths.Select(l => LengthWriter.WriteExact(l, unit)));

    public void Type(string text, UnitSystem unit)
    {
        typed = text;
        var readings = Split(text).Select(t => LengthReader.Read(t, unit)).ToList();
        Problem = readings.Select(r => r.Problem).FirstOrDefault(p => p is not null);
        Lengths = [.. readings.Where(r => r.IsRead).Select(r => r.Value)];
    }

    // A comma alone may be a decimal comma; with a space behind it, it parts two lengths.
    private static string[] Split(string text) =>
        text.Split(
            [";", ", ", "\n"],
            StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries
        );
}
