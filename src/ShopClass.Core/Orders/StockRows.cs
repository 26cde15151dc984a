using ShopClass.Core.Measure;

namespace ShopClass.Core.Orders;

/// <summary>A line of typed text, split in cells.</summary>
/// <param name="Line">Its line in the text, from 1.</param>
/// <param name="Cells">Its cells.</param>
public sealed record TypedRow(int Line, IReadOnlyList<string> Cells);

/// <summary>Why a line of a price list was not read.</summary>
/// <param name="Line">Its line in the text, from 1; 0 when it is about the whole.</param>
/// <param name="Sentence">What was read and what is expected.</param>
public sealed record RowProblem(int Line, string Sentence);

/// <summary>What was read from a price list as text.</summary>
/// <param name="Stock">The lines that are right, each with its line in the text.</param>
/// <param name="Problems">The lines that are not, in their order.</param>
public sealed record StockReading(
    IReadOnlyList<(int Line, PricedStock Stock)> Stock,
    IReadOnlyList<RowProblem> Problems
);

/// <summary>Reads a price list somebody pasted or a file held: a head, then a line for each kind of board.</summary>
public static class StockRows
{
    private static readonly IReadOnlyList<StockColumn> Needed =
    [
        StockColumn.Length,
        StockColumn.Species,
        StockColumn.Price,
    ];

    /// <summary>
    /// Reads every line. Columns may stand in any order; unknown ones are named once and left out. Lines that say the same
    /// board as an earlier one are refused.
    /// </summary>
    /// <param name="rows">The text in lines and cells; the first is the head.</param>
    /// <param name="currency">The currency of the list.</param>
    /// <param name="unit">The unit a bare number is in.</param>
    public static StockReading Read(IReadOnlyList<TypedRow> rows, string currency, UnitSystem unit)
    {
        if (rows.Count == 0)
            return Nothing(
                0,
                $"Nothing was pasted. Begin with a line of heads: {StockHead.Expected}."
            );
        var heads = rows[0].Cells.Select(StockHead.Read).ToList();
        if (HeadProblem(heads) is { } problem)
            return Nothing(rows[0].Line, problem);
        if (rows.Count - 1 > StockChecks.MostLines)
            return Nothing(
                0,
                $"This list has {rows.Count - 1:N0} lines; a seller's list here holds at most {StockChecks.MostLines}. Leave out what the class will not use."
            );
        return ReadLines(rows, heads, new(currency, unit));
    }

    private static StockReading ReadLines(
        IReadOnlyList<TypedRow> rows,
        List<StockHead?> heads,
        StockRowReader reader
    )
    {
        var problems = new List<RowProblem>();
        for (var i = 0; i < heads.Count; i++)
        {
            if (heads[i] is null && rows[0].Cells[i].Length > 0)
                problems.Add(
                    new(
                        rows[0].Line,
                        $"The column “{LengthText.Shown(rows[0].Cells[i])}” is none that is known and was left out."
                    )
                );
        }

        var read = new List<(int Line, PricedStock Stock)>();
        foreach (var row in rows.Skip(1))
        {
            var (stock, sentences) = reader.Read(row, heads);
            if (
                stock is not null
                && read.FirstOrDefault(r => StockChecks.IsSameStock(r.Stock, stock))
                    is { Stock: not null } twin
            )
                sentences =
                [
                    $"This is the same board as in line {twin.Line}. Keep one of the two.",
                ];
            problems.AddRange(sentences.Select(s => new RowProblem(row.Line, s)));
            if (stock is not null && sentences.Count == 0)
                read.Add((row.Line, stock));
        }

        return new(read, problems);
    }

    private static string? HeadProblem(List<StockHead?> heads)
    {
        var columns = heads.OfType<StockHead>().Select(h => h.Column).ToList();
        if (columns.Count == 0)
            return $"The first line has no head that is known. Heads are {StockHead.Expected}.";
        if (columns.GroupBy(c => c).FirstOrDefault(g => g.Count() > 1) is { } twice)
            return $"Two columns are both read as {Word(twice.Key)}. Keep one of them.";
        var missing = Needed.Where(n => !columns.Contains(n)).Select(Word).ToList();
        if (
            !columns.Contains(StockColumn.Size)
            && !(columns.Contains(StockColumn.Thickness) && columns.Contains(StockColumn.Width))
        )
            missing.Insert(0, "size (or thickness and width)");
        return missing.Count == 0 ? null : $"A column is missing: {string.Join(", ", missing)}.";
    }

    private static string Word(StockColumn column) => column.ToString().ToLowerInvariant();

    private static StockReading Nothing(int line, string sentence) =>
        new([], [new(line, sentence)]);
}
