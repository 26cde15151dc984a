using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Orders;

/// <summary>
/// What is wrong with a line of a price list, field by field. Field names: Name, Species, Grade, Surfacing, Thickness,
/// Width, Length, Price, Basis, PackSize, Available.
/// </summary>
public static class StockChecks
{
    /// <summary>Most lines in one seller's list.</summary>
    public const int MostLines = 500;

    /// <summary>Most boards in a pack, and most a seller has.</summary>
    public const int MostBoards = 9_999;

    /// <summary>Most characters in a grade.</summary>
    public const int LongestGrade = 40;

    /// <summary>Problems as field and sentence; empty when the line is right.</summary>
    /// <param name="stock">The line.</param>
    /// <param name="unit">The unit lengths are written in.</param>
    public static IReadOnlyList<(string Field, string Sentence)> ProblemsIn(
        PricedStock stock,
        UnitSystem unit
    ) =>
        [
            .. Found("Name", TypedText.NameProblem(stock.Name)),
            .. Found(
                "Species",
                SpeciesTable.Find(stock.SpeciesId) is null
                    ? "Choose a species from the list."
                    : null
            ),
            .. Found("Grade", TypedText.NotesProblem(stock.Grade, LongestGrade)),
            .. Found(
                "Surfacing",
                Enum.IsDefined(stock.Surfacing)
                    ? null
                    : "Choose how the board was surfaced from the list."
            ),
            .. Found(
                "Thickness",
                SizeSentences.Problem("thickness", stock.Thickness, PartChecks.Thickest, unit)
            ),
            .. Found("Width", SizeSentences.Problem("width", stock.Width, PartChecks.Widest, unit)),
            .. Found("Length", LengthProblem(stock, unit)),
            .. Found("Price", PriceProblem(stock.Price)),
            .. Found(
                "Basis",
                Enum.IsDefined(stock.Basis) ? null : "Choose what the price is for from the list."
            ),
            .. Found("PackSize", CountProblem("A pack", stock.PackSize, least: 1)),
            .. Found(
                "Available",
                stock.Available is { } count ? CountProblem("The seller's stock", count, 0) : null
            ),
        ];

    /// <summary>Whether two lines offer the same boards, whatever they cost.</summary>
    public static bool IsSameStock(PricedStock a, PricedStock b) =>
        (a.SpeciesId, a.Surfacing, a.Thickness, a.Width, a.Length, a.Grade.ToUpperInvariant())
        == (b.SpeciesId, b.Surfacing, b.Thickness, b.Width, b.Length, b.Grade.ToUpperInvariant());

    // A bare "8" in an inch list is 8 in, and sellers mean 8 ft.
    private static string? LengthProblem(PricedStock stock, UnitSystem unit)
    {
        if (SizeSentences.Problem("length", stock.Length, PartChecks.Longest, unit) is { } problem)
            return problem;
        var shortest =
            unit is UnitSystem.Inch ? Length.FromInches(12) : Length.FromMillimetres(300);
        var other =
            unit is UnitSystem.Inch
                ? "feet are meant, write ft behind the number"
                : "metres are meant, write m behind the number";
        return stock.Length < shortest
            ? $"A board {Said.Exactly(stock.Length, unit)} long is shorter than sellers keep. If {other}."
            : null;
    }

    private static string? PriceProblem(Money price)
    {
        if (Currencies.Find(price.Currency) is null)
            return "The currency is none that is known here. Write its three letters, such as USD.";
        return price.MinorUnits switch
        {
            < 0 => "The price is less than zero. Write what the seller asks.",
            0 =>
                "The price is missing. Write what the seller asks; wood that costs nothing belongs on the rack.",
            _ => null,
        };
    }

    private static string? CountProblem(string what, int count, int least) =>
        count < least || count > MostBoards
            ? $"{what} is from {least} to {MostBoards:N0} boards. Here it is {count:N0}."
            : null;

    private static IEnumerable<(string, string)> Found(string field, string? sentence) =>
        sentence is null ? [] : [(field, sentence)];
}
