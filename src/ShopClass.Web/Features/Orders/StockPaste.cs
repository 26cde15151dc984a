using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Web.Features.Projects;

namespace ShopClass.Web.Features.Orders;

/// <summary>A price list as pasted text or a file, split in lines and cells.</summary>
public static class StockPaste
{
    /// <summary>Most characters read; a list of 500 lines is far shorter.</summary>
    public const int MostCharacters = 1_000_000;

    public static StockReading Read(string text, string currency, UnitSystem unit) =>
        text.Length > MostCharacters
            ? new(
                [],
                [
                    new(
                        0,
                        $"The text has {text.Length:N0} characters. A price list has at most {MostCharacters:N0}."
                    ),
                ]
            )
            : StockRows.Read(
                [
                    .. PasteSplit
                        .Records(text.TrimStart('\uFEFF'))
                        .Select(r => new TypedRow(r.Line, r.Cells)),
                ],
                currency,
                unit
            );

    /// <summary>The list with what was read: lines for the same boards take the new price, the rest is added.</summary>
    public static IReadOnlyList<PricedStock> Into(
        IReadOnlyList<PricedStock> list,
        StockReading read
    )
    {
        var merged = list.ToList();
        foreach (var (_, line) in read.Stock)
        {
            var at = merged.FindIndex(s => StockChecks.IsSameStock(s, line));
            if (at < 0)
                merged.Add(line);
            else
                merged[at] = line with { Id = merged[at].Id };
        }

        return merged;
    }
}
