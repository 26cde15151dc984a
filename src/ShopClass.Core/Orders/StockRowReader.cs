using System.Globalization;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Orders;

/// <summary>Reads one line of a price list.</summary>
/// <param name="currency">The currency of the list.</param>
/// <param name="unit">The unit a bare number is in.</param>
internal sealed class StockRowReader(string currency, UnitSystem unit)
{
    private readonly List<string> problems = [];

    /// <summary>The line as stock, or null; and every problem in it.</summary>
    public (PricedStock? Stock, IReadOnlyList<string> Problems) Read(
        TypedRow row,
        IReadOnlyList<StockHead?> heads
    )
    {
        problems.Clear();
        if (row.Cells.Count > heads.Count && row.Cells.Skip(heads.Count).Any(c => c.Length > 0))
            problems.Add(
                $"The line has {row.Cells.Count} cells and the head has {heads.Count}. A comma inside a cell needs quotation marks around the cell."
            );
        var cells = new Dictionary<StockColumn, (string Text, StockHead Head)>();
        for (var i = 0; i < Math.Min(heads.Count, row.Cells.Count); i++)
        {
            if (heads[i] is { } head && row.Cells[i].Length > 0)
                cells[head.Column] = (row.Cells[i], head);
        }

        var stock = problems.Count == 0 ? StockIn(cells) : null;
        if (stock is not null)
            problems.AddRange(StockChecks.ProblemsIn(stock, unit).Select(p => p.Sentence));
        return (problems.Count == 0 ? stock : null, [.. problems]);
    }

    private PricedStock? StockIn(Dictionary<StockColumn, (string Text, StockHead Head)> cells)
    {
        string Text(StockColumn column) => cells.TryGetValue(column, out var c) ? c.Text : "";
        var surfacing = SurfacingIn(Text(StockColumn.Surfacing));
        var size = SizeIn(cells, surfacing ?? Surfacing.S4S);
        var length = LengthIn(cells, StockColumn.Length);
        var species = Kept(SpeciesNames.Read(Text(StockColumn.Species)))?.Id;
        CheckCurrency(Text(StockColumn.Currency));
        var price = PriceIn(Text(StockColumn.Price));
        var basis = BasisIn(cells);
        var pack = CountIn(Text(StockColumn.Pack), "pack size");
        var available = CountIn(Text(StockColumn.Available), "number available");
        if (problems.Count > 0 || size is not { } s)
            return null;
        return new()
        {
            Id = "",
            Name = s.Name,
            SpeciesId = species!,
            Grade = Text(StockColumn.Grade).Trim(),
            Surfacing = surfacing ?? s.Usual,
            Nominal = s.Nominal,
            Thickness = s.Thickness,
            Width = s.Width,
            Length = length!.Value,
            Price = price,
            Basis = basis,
            PackSize = pack ?? 1,
            Available = available,
        };
    }

    private Money PriceIn(string text)
    {
        if (text.Trim().Length > 0)
            return Kept(MoneyText.Read(text, currency));
        problems.Add("The price is missing. Write what the seller asks.");
        return default;
    }

    private SizeRead? SizeIn(
        Dictionary<StockColumn, (string Text, StockHead Head)> cells,
        Surfacing surfacing
    )
    {
        var named = cells.TryGetValue(StockColumn.Size, out var c) ? c.Text : "";
        if (cells.ContainsKey(StockColumn.Thickness) || cells.ContainsKey(StockColumn.Width))
        {
            if (
                ThicknessIn(cells, surfacing) is not { } thickness
                || LengthIn(cells, StockColumn.Width) is not { } width
            )
                return null;
            var nominal =
                StockSizes.Read(named, surfacing, unit).Value?.Nominal
                ?? (thickness.Quarter is { } q ? new NominalSize(q.Rough, width) : null);
            var name =
                named.Length > 0
                    ? named
                    : $"{Said.Exactly(thickness.Actual, unit)} × {Said.Exactly(width, unit)}";
            return new(name, nominal, thickness.Actual, width, Surfacing.S4S);
        }

        var read = StockSizes.Read(named, surfacing, unit);
        if (read.Problem is { } problem)
            problems.Add(problem);
        return read.IsRead ? read.Value : null;
    }

    private (Length Actual, HardwoodThickness? Quarter)? ThicknessIn(
        Dictionary<StockColumn, (string Text, StockHead Head)> cells,
        Surfacing surfacing
    )
    {
        if (
            cells.TryGetValue(StockColumn.Thickness, out var cell)
            && HardwoodThickness.Named(cell.Text.Trim()) is { } quarter
            && quarter.Quarters is not "3/4"
        )
            return (quarter.Actual(surfacing), quarter);
        return LengthIn(cells, StockColumn.Thickness) is { } thickness ? (thickness, null) : null;
    }

    private Length? LengthIn(
        Dictionary<StockColumn, (string Text, StockHead Head)> cells,
        StockColumn column
    )
    {
        if (!cells.TryGetValue(column, out var cell))
        {
            problems.Add($"The {column.ToString().ToLowerInvariant()} is missing.");
            return null;
        }

        var bare = cell.Head.Unit is not null && char.IsAsciiDigit(cell.Text.TrimEnd()[^1]);
        var read = LengthReader.Read(bare ? $"{cell.Text} {cell.Head.Unit}" : cell.Text, unit);
        if (read.Problem is { } problem)
            problems.Add($"The {column.ToString().ToLowerInvariant()}: {problem}");
        return read.IsRead ? read.Value : null;
    }

    private Surfacing? SurfacingIn(string text)
    {
        var word = text.Trim().Replace(" ", "", StringComparison.Ordinal).ToUpperInvariant();
        switch (word)
        {
            case "":
                return null;
            case "S4S" or "PAR" or "PLANED":
                return Surfacing.S4S;
            case "S3S":
                return Surfacing.S3S;
            case "S2S":
                return Surfacing.S2S;
            case "ROUGH" or "RGH" or "SAWN" or "ROUGHSAWN":
                return Surfacing.Rough;
            default:
                problems.Add(
                    $"“{LengthText.Shown(text)}” is no surfacing known here. Write rough, S2S, S3S or S4S."
                );
                return null;
        }
    }

    private PriceBasis BasisIn(Dictionary<StockColumn, (string Text, StockHead Head)> cells)
    {
        if (cells.TryGetValue(StockColumn.Basis, out var cell))
        {
            if (PriceBases.Read(cell.Text) is { } said)
                return said;
            problems.Add(
                $"“{LengthText.Shown(cell.Text)}” is nothing a price is for here. Write each, foot, board foot or metre."
            );
        }
        else if (
            cells.TryGetValue(StockColumn.Price, out var price) && price.Head.Basis is { } headed
        )
        {
            return headed;
        }

        return PriceBasis.Each;
    }

    private int? CountIn(string text, string what)
    {
        if (text.Trim().Length == 0)
            return null;
        if (
            int.TryParse(
                text,
                NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite,
                CultureInfo.InvariantCulture,
                out var count
            )
        )
            return count;
        problems.Add(
            $"“{LengthText.Shown(text)}” is no {what}. Write a whole number, or leave it empty."
        );
        return null;
    }

    private void CheckCurrency(string text)
    {
        if (
            text.Trim() is { Length: > 0 } said
            && !said.Equals(currency, StringComparison.OrdinalIgnoreCase)
        )
            problems.Add(
                $"The price is in {LengthText.Shown(said)}, and this list is in {currency}. Make a seller with that currency, or write it in {currency}."
            );
    }

    private T? Kept<T>(Reading<T> reading)
    {
        if (reading.Problem is { } problem)
            problems.Add(problem);
        return reading.Value;
    }
}
