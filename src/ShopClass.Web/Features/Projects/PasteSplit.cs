using System.Text;

namespace ShopClass.Web.Features.Projects;

/// <summary>
/// Splits pasted text in records and cells by the rules of RFC 4180: a cell may stand in quotation marks, and then hold
/// separators, line breaks and doubled quotation marks. A mark inside a plain cell is only an inch mark.
/// </summary>
public static class PasteSplit
{
    /// <summary>The records that hold anything, each with the number of the line it begins on.</summary>
    public static IReadOnlyList<(int Line, IReadOnlyList<string> Cells)> Records(string text)
    {
        var separator = SeparatorIn(text);
        List<(int, IReadOnlyList<string>)> records = [];
        var at = 0;
        var line = 1;
        while (at < text.Length)
        {
            var begins = line;
            var cells = ReadRecord(text, separator, ref at, ref line);
            if (cells.Exists(c => c.Length > 0))
                records.Add((begins, cells));
        }

        return records;
    }

    /// <summary>Tabs, as a spreadsheet copies; else semicolons; else commas.</summary>
    private static char SeparatorIn(string text) =>
        text.Contains('\t') ? '\t'
        : text.Contains(';') ? ';'
        : ',';

    private static List<string> ReadRecord(string text, char separator, ref int at, ref int line)
    {
        List<string> cells = [];
        while (true)
        {
            cells.Add(ReadCell(text, separator, ref at, ref line).Trim());
            if (at >= text.Length)
                return cells;
            if (text[at++] == separator)
                continue;
            line++;
            return cells;
        }
    }

    /// <summary>One cell; leaves <paramref name="at"/> on the separator or line feed that ends it.</summary>
    private static string ReadCell(string text, char separator, ref int at, ref int line)
    {
        var cell = new StringBuilder();
        var isQuoted = at < text.Length && text[at] == '"' && ClosesIn(text, separator, at);
        if (isQuoted)
            at++;
        while (at < text.Length)
        {
            var c = text[at];
            if (isQuoted && c == '"')
            {
                at++;
                if (at < text.Length && text[at] == '"')
                    cell.Append(text[at++]);
                else
                    isQuoted = false;
                continue;
            }

            if (!isQuoted && (c == separator || c == '\n'))
                break;
            if (c == '\n')
                line++;
            cell.Append(c);
            at++;
        }

        return cell.ToString();
    }

    /// <summary>Whether the quotation mark at <paramref name="at"/> has a partner that ends its cell.</summary>
    private static bool ClosesIn(string text, char separator, int at)
    {
        for (var i = at + 1; i < text.Length; i++)
        {
            if (text[i] != '"')
                continue;
            if (i + 1 < text.Length && text[i + 1] == '"')
            {
                i++;
                continue;
            }

            return i + 1 == text.Length || text[i + 1] == separator || text[i + 1] is '\r' or '\n';
        }

        return false;
    }
}
