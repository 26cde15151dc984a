using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Orders;

/// <summary>An order, its kits and its costs as CSV files.</summary>
public static class OrderCsv
{
    /// <summary>A row for each line of the order that is still to be bought.</summary>
    public static string Order(ClassOrder order)
    {
        var unit = order.Ask.Rules.Unit;
        var csv = new CsvText(
            "seller",
            "ask for",
            "thickness",
            "width",
            "length",
            "species",
            "surfacing",
            "grade",
            "boards",
            "board feet",
            "each",
            "cost",
            "currency"
        );
        foreach (var line in order.ToBuy)
        {
            var stock = line.Stock;
            csv.Add(
                CsvText.Words(line.Seller),
                CsvText.Words(stock.Name),
                CsvText.Words(LengthWriter.WriteExactWithUnit(stock.Thickness, unit)),
                CsvText.Words(LengthWriter.WriteExactWithUnit(stock.Width, unit)),
                CsvText.Words(LengthWriter.WriteExactWithUnit(stock.Length, unit)),
                CsvText.Words(SpeciesTable.Find(stock.SpeciesId)?.CommonName),
                CsvText.Words(stock.Surfacing.ToString()),
                CsvText.Words(stock.Grade),
                CsvText.Number(line.Bought),
                CsvText.Hundredths(stock.BoardFeetHundredths * line.Bought),
                CsvText.Amount(stock.BoardPrice),
                CsvText.Amount(line.Cost),
                CsvText.Words(order.Ask.Currency)
            );
        }

        return csv.ToString();
    }

    /// <summary>A row for each kit and board it takes blanks from.</summary>
    public static string Kits(ClassOrder order)
    {
        var csv = new CsvText("kit", "for", "board", "blanks");
        foreach (var kit in Enumerable.Range(1, order.Ask.AllKits))
        foreach (var (board, blanks) in order.BlanksOf(kit))
        {
            csv.Add(
                CsvText.Number(kit),
                CsvText.Words(order.KitName(kit)),
                CsvText.Words(OrderWords.Source(order, board)),
                CsvText.Words(OrderWords.Blanks(blanks))
            );
        }

        return csv.ToString();
    }

    /// <summary>A row for each student's kit.</summary>
    public static string Costs(ClassOrder order, IReadOnlyList<Supply> supplies)
    {
        var csv = new CsvText("kit", "for", "wood", "shared", "supplies", "together", "currency");
        foreach (var cost in KitCosts.Of(order, supplies))
        {
            csv.Add(
                CsvText.Number(cost.Kit),
                CsvText.Words(cost.Name),
                CsvText.Amount(cost.Wood),
                CsvText.Amount(cost.Shared),
                CsvText.Amount(cost.Supplies),
                CsvText.Amount(cost.Total),
                CsvText.Words(order.Ask.Currency)
            );
        }

        return csv.ToString();
    }
}
