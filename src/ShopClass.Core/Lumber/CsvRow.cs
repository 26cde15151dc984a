using System.Globalization;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Lumber;

/// <summary>A row of a table that ships with the app.</summary>
/// <param name="Place">Table and line, for messages.</param>
/// <param name="Header">Column names.</param>
/// <param name="Fields">Its fields, as many as columns.</param>
internal sealed record CsvRow(
    string Place,
    IReadOnlyList<string> Header,
    IReadOnlyList<string> Fields
)
{
    /// <summary>The field in this column; may be empty.</summary>
    public string this[string column]
    {
        get
        {
            for (var i = 0; i < Header.Count; i++)
            {
                if (Header[i] == column)
                    return Fields[i];
            }

            throw new InvalidDataException($"{Place}: there is no column {column}.");
        }
    }

    /// <summary>A field that must not be empty.</summary>
    public string Required(string column) =>
        this[column] is { Length: > 0 } field ? field : throw Wrong(column, "a text");

    /// <summary>One of two words.</summary>
    public bool Is(string column, string yes, string no) =>
        this[column] == yes || (this[column] == no ? false : throw Wrong(column, $"{yes} or {no}"));

    /// <summary>Whether the figure was read or is remembered.</summary>
    public Basis BasisIn(string column) => Is(column, "read", "memory") ? Basis.Read : Basis.Memory;

    /// <summary>A length in inches, as exact text.</summary>
    public Length Inches(string column) =>
        LengthReader.Read(this[column], UnitSystem.Inch) is { IsRead: true } read
            ? read.Value
            : throw Wrong(column, "a length in inches");

    /// <summary>A figure with its basis and source; null when the field is empty.</summary>
    public SourcedFigure? Figure(string column, string basisColumn, string sourceColumn)
    {
        if (this[column].Length == 0)
            return null;
        return decimal.TryParse(
            this[column],
            NumberStyles.AllowDecimalPoint,
            CultureInfo.InvariantCulture,
            out var value
        )
            ? new(value, BasisIn(basisColumn), Required(sourceColumn))
            : throw Wrong(column, "a number");
    }

    private InvalidDataException Wrong(string column, string expected) =>
        new($"{Place}: {column} is “{this[column]}”; expected {expected}.");
}
