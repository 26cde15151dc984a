using System.Text;
using ShopClass.Core.Drawings;

namespace ShopClass.Core.Orders;

/// <summary>
/// Writes a table as RFC 4180 has it: commas, CRLF, quotation marks where they are needed. Text that a spreadsheet would
/// take for a formula gets an apostrophe before it; numbers stay numbers.
/// </summary>
public sealed class CsvText
{
    private readonly StringBuilder text = new();

    /// <summary>A table with this header; then add its rows.</summary>
    public CsvText(params IReadOnlyList<string> header) => Add([.. header.Select(Words)]);

    /// <summary>A cell of words.</summary>
    public static Cell Words(string? words) => new(Defused(ReadingOrder.Bare(words ?? "")));

    /// <summary>A cell that is a number, written with a point and no thousands.</summary>
    public static Cell Number(long number) => new($"{number}");

    /// <summary>A cell that is an amount of money, without its currency.</summary>
    public static Cell Amount(Measure.Money money) => new(Measure.MoneyText.Write(money));

    /// <summary>A cell that is a number of hundredths.</summary>
    public static Cell Hundredths(long hundredths) => new(PriceWords.Hundredths(hundredths));

    /// <summary>Adds a row.</summary>
    public CsvText Add(params IReadOnlyList<Cell> cells)
    {
        text.AppendJoin(',', cells.Select(c => Quoted(c.Text))).Append("\r\n");
        return this;
    }

    /// <summary>The whole file's text.</summary>
    public override string ToString() => text.ToString();

    // What spreadsheets take for a formula: the usual four, full-width forms of them, and a tab or return before one.
    private static string Defused(string words) =>
        words.Length > 0 && "=+-@\t\r\n＝＋－＠".Contains(words[0], StringComparison.Ordinal)
            ? "'" + words
            : words;

    private static string Quoted(string cell) =>
        cell.AsSpan().IndexOfAny(",\"\r\n") < 0 && cell.Trim().Length == cell.Length
            ? cell
            : $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";

    /// <summary>A cell as it will be written.</summary>
    /// <param name="Text">Its text.</param>
    public readonly record struct Cell(string Text);
}
