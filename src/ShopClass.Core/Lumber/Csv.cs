using System.Text;

namespace ShopClass.Core.Lumber;

/// <summary>
/// A strict reader for the tables that ship with the app: a header, commas, fields in quotes where they hold a comma,
/// every row as long as the header. Whatever else it meets is a mistake of ours, so it throws.
/// </summary>
internal static class Csv
{
    /// <summary>The rows of an embedded table, each by column name.</summary>
    /// <exception cref="InvalidDataException">The table is missing or malformed; names table and line.</exception>
    public static IReadOnlyList<CsvRow> ReadEmbedded(string name)
    {
        var resource = $"{typeof(Csv).Namespace}.Tables.{name}";
        using var stream =
            typeof(Csv).Assembly.GetManifestResourceStream(resource)
            ?? throw new InvalidDataException($"The table {name} is not embedded.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return Read(name, reader.ReadToEnd());
    }

    /// <summary>The rows of a table given as text.</summary>
    /// <exception cref="InvalidDataException">Malformed; names table and line.</exception>
    public static IReadOnlyList<CsvRow> Read(string name, string text)
    {
        var lines = text.TrimStart('\uFEFF').ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');
        var header = Fields(lines[0], $"{name} line 1");
        var rows = new List<CsvRow>(lines.Length - 1);
        for (var i = 1; i < lines.Length; i++)
        {
            var place = $"{name} line {i + 1}";
            var fields = Fields(lines[i], place);
            if (fields.Count != header.Count)
                throw new InvalidDataException(
                    $"{place} has {fields.Count} fields; the header has {header.Count}."
                );
            rows.Add(new(place, header, fields));
        }

        return rows;
    }

    private static List<string> Fields(string line, string place)
    {
        var fields = new List<string>();
        var field = new StringBuilder();
        var quoted = false;
        for (var i = 0; i < line.Length; i++)
        {
            var c = line[i];
            if (c == '"' && quoted && i + 1 < line.Length && line[i + 1] == '"')
            {
                field.Append('"');
                i++;
            }
            else if (c == '"')
            {
                quoted = !quoted;
            }
            else if (c == ',' && !quoted)
            {
                fields.Add(field.ToString());
                field.Clear();
            }
            else
            {
                field.Append(c);
            }
        }

        if (quoted)
            throw new InvalidDataException($"{place} has a quote that is not closed.");
        fields.Add(field.ToString());
        return fields;
    }
}
