using System.Text.RegularExpressions;

namespace ShopClass.Web.Features.Projects;

/// <summary>What a pasted column holds.</summary>
public enum PasteField
{
    Letter,
    Name,
    Quantity,
    Thickness,
    Width,
    Length,
    JointNotes,
}

/// <summary>Which column of a pasted list holds what, and the unit its heading names.</summary>
public sealed partial record PasteColumns(
    IReadOnlyDictionary<PasteField, int> Places,
    IReadOnlyDictionary<PasteField, string> Units,
    IReadOnlyList<string> NotRead
)
{
    private static readonly Dictionary<string, PasteField> Words = new(StringComparer.Ordinal)
    {
        ["letter"] = PasteField.Letter,
        ["mark"] = PasteField.Letter,
        ["part letter"] = PasteField.Letter,
        ["key"] = PasteField.Letter,
        ["name"] = PasteField.Name,
        ["part"] = PasteField.Name,
        ["part name"] = PasteField.Name,
        ["piece"] = PasteField.Name,
        ["item"] = PasteField.Name,
        ["description"] = PasteField.Name,
        ["qty"] = PasteField.Quantity,
        ["quantity"] = PasteField.Quantity,
        ["count"] = PasteField.Quantity,
        ["pieces"] = PasteField.Quantity,
        ["pcs"] = PasteField.Quantity,
        ["no"] = PasteField.Quantity,
        ["no off"] = PasteField.Quantity,
        ["how many"] = PasteField.Quantity,
        ["number"] = PasteField.Quantity,
        ["t"] = PasteField.Thickness,
        ["th"] = PasteField.Thickness,
        ["thick"] = PasteField.Thickness,
        ["thickness"] = PasteField.Thickness,
        ["w"] = PasteField.Width,
        ["wide"] = PasteField.Width,
        ["width"] = PasteField.Width,
        ["l"] = PasteField.Length,
        ["long"] = PasteField.Length,
        ["length"] = PasteField.Length,
        ["notes"] = PasteField.JointNotes,
        ["note"] = PasteField.JointNotes,
        ["joint"] = PasteField.JointNotes,
        ["joints"] = PasteField.JointNotes,
        ["joint notes"] = PasteField.JointNotes,
        ["joinery"] = PasteField.JointNotes,
        ["remarks"] = PasteField.JointNotes,
        ["comments"] = PasteField.JointNotes,
    };

    /// <summary>The order of columns where no heading says otherwise.</summary>
    public static PasteColumns Usual { get; } =
        new(
            Enum.GetValues<PasteField>().ToDictionary(f => f, f => (int)f),
            new Dictionary<PasteField, string>(),
            []
        );

    /// <summary>Reads a heading row; null where these cells are no headings.</summary>
    public static PasteColumns? FromHeadings(IReadOnlyList<string> cells)
    {
        if (cells.Any(cell => cell.Length > 0 && char.IsDigit(cell[0])))
            return null;

        Dictionary<PasteField, int> places = [];
        Dictionary<PasteField, string> units = [];
        List<string> notRead = [];
        foreach (var (place, cell) in cells.Index())
        {
            var (word, unit) = Heading(cell);
            if (Words.TryGetValue(word, out var field) && places.TryAdd(field, place))
                units[field] = unit;
            else if (cell.Length > 0)
                notRead.Add(cell);
        }

        // One word alone may be a part's name ("long"); a second settles it.
        return places.Count >= 2 ? new(places, units, notRead) : null;
    }

    /// <summary>The cell for a field; empty where there is none. A bare length gets the unit of its heading.</summary>
    public string Cell(PasteField field, IReadOnlyList<string> cells)
    {
        if (!Places.TryGetValue(field, out var place) || place >= cells.Count)
            return "";
        var cell = cells[place];
        var unit = Units.GetValueOrDefault(field, "");
        return unit.Length > 0 && BareNumber().IsMatch(cell) ? $"{cell} {unit}" : cell;
    }

    /// <summary>"Width (mm)" is the word "width" and the unit "mm".</summary>
    private static (string Word, string Unit) Heading(string cell)
    {
        var plain = NotLetters().Replace(cell.ToLowerInvariant(), " ").Trim();
        var words = plain.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var unit = words.Length > 1 && UnitWord().IsMatch(words[^1]) ? words[^1] : "";
        if (unit.Length > 0)
            words = words[..^1];
        if (words is ["finished", _, ..] or ["final", _, ..])
            words = words[1..];
        return (string.Join(' ', words), unit);
    }

    [GeneratedRegex("""[^\p{L}]+""")]
    private static partial Regex NotLetters();

    [GeneratedRegex("""^(mm|cm|in|inch|inches|ft|feet|m)$""")]
    private static partial Regex UnitWord();

    [GeneratedRegex("""^[0-9][0-9 .,/\-½¼¾⅛⅜⅝⅞]*$""")]
    private static partial Regex BareNumber();
}
