using ShopClass.Core.Measure;
using ShopClass.Core.Orders;

namespace ShopClass.Web.Features.Orders;

/// <summary>One line of a price list as it is being typed. It is read as a pasted line is, by the same reader.</summary>
public sealed class StockDraft
{
    private string _key = "";

    public string Size { get; set; } = "";

    public string Thickness { get; set; } = "";

    public string Width { get; set; } = "";

    public string Length { get; set; } = "";

    public string Wood { get; set; } = "";

    public string Surfacing { get; set; } = "S4S";

    public string Grade { get; set; } = "";

    public string Price { get; set; } = "";

    public string Per { get; set; } = "each";

    public string Pack { get; set; } = "1";

    public string Available { get; set; } = "";

    /// <summary>Why it could not be read, sentence by sentence.</summary>
    public IReadOnlyList<string> Problems { get; private set; } = [];

    /// <summary>Whether it changes a line that is there.</summary>
    public bool IsChange => _key.Length > 0;

    /// <summary>The next line mostly has the same wood, grade and length as the last.</summary>
    public static StockDraft After(StockDraft last) =>
        new()
        {
            Length = last.Length,
            Wood = last.Wood,
            Surfacing = last.Surfacing,
            Grade = last.Grade,
            Per = last.Per,
            Pack = last.Pack,
        };

    public static StockDraft Of(PricedStock stock, UnitSystem unit)
    {
        var cells = PriceList.Cells(stock, unit);
        return new()
        {
            _key = stock.Id,
            Size = cells[0],
            Thickness = cells[1],
            Width = cells[2],
            Length = cells[3],
            Wood = cells[4],
            Surfacing = cells[5],
            Grade = cells[6],
            Price = cells[7],
            Per = cells[8],
            Pack = cells[9],
            Available = cells[10],
        };
    }

    /// <summary>The line, or null with <see cref="Problems"/> saying why.</summary>
    public PricedStock? Read(string currency, UnitSystem unit)
    {
        var read = StockRows.Read(
            [
                new(1, PriceList.Heads),
                new(
                    2,
                    [
                        Size,
                        Thickness,
                        Width,
                        Length,
                        Wood,
                        Surfacing,
                        Grade,
                        Price,
                        Per,
                        Pack,
                        Available,
                    ]
                ),
            ],
            currency,
            unit
        );
        Problems = [.. read.Problems.Select(p => p.Sentence)];
        return read.Stock.Count == 0 ? null : read.Stock[0].Stock with { Id = _key };
    }

    /// <summary>The list with this line in it: in its old place, or at the end.</summary>
    public IReadOnlyList<PricedStock> In(IReadOnlyList<PricedStock> list, PricedStock line) =>
        IsChange ? [.. list.Select(s => s.Id == _key ? line : s)] : [.. list, line];
}
