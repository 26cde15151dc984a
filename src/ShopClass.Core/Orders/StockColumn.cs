using System.Text.RegularExpressions;

namespace ShopClass.Core.Orders;

/// <summary>What a column of a price list holds.</summary>
public enum StockColumn
{
    /// <summary>A size as the seller names it: <c>1x10</c>.</summary>
    Size,

    /// <summary>Actual thickness, or quarters.</summary>
    Thickness,

    /// <summary>Actual width.</summary>
    Width,

    /// <summary>Length of a board.</summary>
    Length,

    /// <summary>The species.</summary>
    Species,

    /// <summary>The grade.</summary>
    Grade,

    /// <summary>How it was surfaced.</summary>
    Surfacing,

    /// <summary>The price.</summary>
    Price,

    /// <summary>What the price is for.</summary>
    Basis,

    /// <summary>Boards in a pack.</summary>
    Pack,

    /// <summary>How many the seller has.</summary>
    Available,

    /// <summary>The currency of the row.</summary>
    Currency,
}

/// <summary>A column as its head says: what it holds, and the unit a bare number in it has.</summary>
/// <param name="Column">What it holds.</param>
/// <param name="Unit">The unit named in the head, <c>ft</c>; null where none is.</param>
/// <param name="Basis">What the price is for, where the head of a price column says so.</param>
public sealed partial record StockHead(StockColumn Column, string? Unit, PriceBasis? Basis)
{
    private static readonly (StockColumn Column, string[] Words)[] Known =
    [
        (StockColumn.Size, ["size", "item", "name", "nominal", "stock"]),
        (StockColumn.Thickness, ["thickness", "thick", "t"]),
        (StockColumn.Width, ["width", "wide", "w"]),
        (StockColumn.Length, ["length", "long", "l"]),
        (StockColumn.Species, ["species", "wood", "timber"]),
        (StockColumn.Grade, ["grade", "quality"]),
        (StockColumn.Surfacing, ["surfacing", "surface", "surfaced", "finish"]),
        (StockColumn.Price, ["price", "cost"]),
        (StockColumn.Basis, ["per", "price per", "price for", "basis", "unit", "price unit"]),
        (StockColumn.Pack, ["pack", "pack size", "per pack"]),
        (StockColumn.Available, ["available", "in stock", "count", "quantity", "qty"]),
        (StockColumn.Currency, ["currency"]),
    ];

    /// <summary>The heads a list may have, in words for people.</summary>
    public static string Expected =>
        "size (or thickness and width), length, species, surfacing, grade, price, per, pack, available";

    /// <summary>Reads a column's head; null where it is none that is known.</summary>
    public static StockHead? Read(string head)
    {
        var plain = head.Trim().ToLowerInvariant().Replace('_', ' ').Replace('-', ' ');
        var unit = UnitNamed().Match(plain) is { Success: true } match
            ? match.Groups["unit"].Value
            : null;
        var words = Spaces().Replace(UnitNamed().Replace(plain, " "), " ").Trim();
        var column = Find(words);
        if (column is null && words.StartsWith("price ", StringComparison.Ordinal))
            return PriceBases.Read(words["price ".Length..]) is { } basis
                ? new(StockColumn.Price, null, basis)
                : null;
        return column is { } known
            ? new(known, unit, unit is null ? null : PriceBases.Read(unit))
            : null;
    }

    private static StockColumn? Find(string words)
    {
        foreach (var (column, names) in Known)
        {
            if (names.Contains(words, StringComparer.Ordinal))
                return column;
        }

        return null;
    }

    [GeneratedRegex(
        @"[(\[/]\s*(?<unit>\p{L}+\.?)\s*[)\]]?$|\s+(?:in|per)\s+(?<unit>mm|cm|m|ft|feet|in|inches|foot|metre)$"
    )]
    private static partial Regex UnitNamed();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}

/// <summary>Words for what a price is for, as price lists have them.</summary>
internal static class PriceBases
{
    /// <summary>The basis a word stands for, or null.</summary>
    public static PriceBasis? Read(string words)
    {
        var plain = words.Trim().TrimEnd('.').ToLowerInvariant();
        if (plain.StartsWith("per ", StringComparison.Ordinal))
            plain = plain["per ".Length..];
        return plain switch
        {
            "each" or "ea" or "piece" or "pc" or "pcs" or "board" or "item" or "a board" =>
                PriceBasis.Each,
            "ft" or "foot" or "feet" or "lf" or "lin ft" or "linear foot" or "a foot" =>
                PriceBasis.PerFoot,
            "bf" or "bd ft" or "bdft" or "board foot" or "board feet" or "fbm" or "a board foot" =>
                PriceBasis.PerBoardFoot,
            "m" or "metre" or "meter" or "lm" or "linear metre" or "a metre" => PriceBasis.PerMetre,
            _ => null,
        };
    }
}
