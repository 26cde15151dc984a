using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Orders;

/// <summary>A price list as text, in the columns <see cref="StockRows"/> reads.</summary>
public static class PriceList
{
    /// <summary>The heads, in the order of <see cref="Cells"/>.</summary>
    public static IReadOnlyList<string> Heads { get; } =
    [
        "size",
        "thickness",
        "width",
        "length",
        "species",
        "surfacing",
        "grade",
        "price",
        "per",
        "pack",
        "available",
    ];

    /// <summary>A line's cells as they would be typed.</summary>
    public static IReadOnlyList<string> Cells(PricedStock stock, UnitSystem unit) =>
        [
            stock.Name,
            LengthWriter.WriteExactWithUnit(stock.Thickness, unit),
            LengthWriter.WriteExactWithUnit(stock.Width, unit),
            LengthWriter.WriteExactWithUnit(stock.Length, unit),
            SpeciesTable.Find(stock.SpeciesId)?.CommonName ?? stock.SpeciesId,
            stock.Surfacing is Surfacing.Rough ? "rough" : stock.Surfacing.ToString(),
            stock.Grade,
            MoneyText.Write(stock.Price),
            Word(stock.Basis),
            $"{stock.PackSize}",
            stock.Available is { } count ? $"{count}" : "",
        ];

    /// <summary>The whole list as a CSV file, with what one board costs at the end of each line.</summary>
    public static string ToCsv(SellerList seller, UnitSystem unit)
    {
        var csv = new CsvText([.. Heads, "currency", "board feet", "one board"]);
        foreach (var stock in seller.Stock)
        {
            var cells = Cells(stock, unit);
            csv.Add([
                .. cells.Take(7).Select(CsvText.Words),
                CsvText.Amount(stock.Price),
                CsvText.Words(cells[8]),
                CsvText.Number(stock.PackSize),
                stock.Available is { } count ? CsvText.Number(count) : CsvText.Words(""),
                CsvText.Words(seller.Currency),
                CsvText.Hundredths(stock.BoardFeetHundredths),
                CsvText.Amount(stock.BoardPrice),
            ]);
        }

        return csv.ToString();
    }

    /// <summary>The word a price list has for what a price is for.</summary>
    public static string Word(PriceBasis basis) =>
        basis switch
        {
            PriceBasis.Each => "each",
            PriceBasis.PerFoot => "foot",
            PriceBasis.PerBoardFoot => "board foot",
            PriceBasis.PerMetre => "metre",
            _ => throw new ArgumentOutOfRangeException(nameof(basis), basis, "Not a price basis."),
        };
}
