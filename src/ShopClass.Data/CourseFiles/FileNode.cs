using Newtonsoft.Json.Linq;
using ShopClass.Core.Measure;

namespace ShopClass.Data.CourseFiles;

/// <summary>
/// One <c>{ }</c> of a file, read field by field. What is missing or of the wrong sort is put down with its line, and
/// reading goes on with a stand-in, so that one reading finds every problem.
/// </summary>
internal sealed class FileNode
{
    private readonly JObject _object;
    private readonly string _what;
    private readonly HashSet<string> _reported = new(StringComparer.Ordinal);

    private FileNode(JObject node, string what, FileFindings findings)
    {
        _object = node;
        _what = what;
        Findings = findings;
    }

    public FileFindings Findings { get; }

    /// <summary>The token as an object with only these fields, or null when it is something else.</summary>
    public static FileNode? Open(
        JToken token,
        string what,
        FileFindings findings,
        IReadOnlyList<string> fields
    )
    {
        if (token is not JObject node)
        {
            findings.Add(token, $"Here {what} is expected, with its fields in braces.");
            return null;
        }

        foreach (var stranger in node.Properties().Where(p => !fields.Contains(p.Name)))
        {
            var near = NearestWord.To(stranger.Name, fields);
            findings.Add(
                stranger,
                $"“{Shown(stranger.Name)}” is no field of {what}. "
                    + (
                        near is null
                            ? $"Its fields are {string.Join(", ", fields)}."
                            : $"Is “{near}” meant?"
                    )
            );
        }

        return new(node, what, findings);
    }

    /// <summary>The token of a field, for its line; the object itself where the field is missing.</summary>
    public JToken At(string field) => _object.Property(field) is { } p ? p.Value : _object;

    public bool Has(string field) => _object.ContainsKey(field);

    /// <summary>Puts a problem down at a field's line; only the first for each field, since others mostly follow from it.</summary>
    public void Problem(string field, string sentence)
    {
        if (_reported.Add(field))
        {
            Findings.Add(At(field), sentence);
        }
    }

    public FileNode? Child(string field, string what, IReadOnlyList<string> fields)
    {
        return Has(field)
            ? Open(At(field), what, Findings, fields)
            : Missing<FileNode?>(field, null);
    }

    /// <summary>The items of a list; none where the field is missing. A longer list than allowed is not looked into.</summary>
    public IReadOnlyList<JToken> Items(string field, int most, string called)
    {
        if (!Has(field))
            return [];
        if (At(field) is not JArray list)
        {
            Problem(field, $"“{field}” is a list of {called} in square brackets.");
            return [];
        }

        if (list.Count <= most)
            return [.. list];
        Problem(field, $"Here are {list.Count} {called}; {most} is the most.");
        return [];
    }

    public string Text(string field, string? otherwise = null)
    {
        if (!Has(field))
            return otherwise ?? Missing(field, "");
        if (At(field) is not JValue { Type: JTokenType.String, Value: string text })
            return Wrong(field, "text in quotation marks", "");
        // What the JSON reader could not make a character of, it put this mark in the place of.
        return text.Contains('\uFFFD', StringComparison.Ordinal)
            ? Wrong(field, "text without broken characters", "")
            : text;
    }

    public bool Flag(string field, bool otherwise = false)
    {
        if (!Has(field))
            return otherwise;
        return At(field) is JValue { Value: bool flag }
            ? flag
            : Wrong(field, "true or false", otherwise);
    }

    public int Whole(string field, int stand) =>
        (int)Whole(field, stand, int.MinValue, int.MaxValue);

    public long Whole(string field, long stand, long least, long most)
    {
        if (!Has(field))
            return Missing(field, stand);
        return At(field) is JValue { Value: long number } && number >= least && number <= most
            ? number
            : Wrong(field, "a whole number", stand);
    }

    public decimal Number(string field, decimal otherwise)
    {
        if (!Has(field))
            return otherwise;
        return At(field) switch
        {
            JValue { Value: long number } => number,
            JValue { Value: decimal number } => number,
            _ => Wrong(field, "a number", otherwise),
        };
    }

    /// <summary>A length as written: "9 1/4 in", "235 mm"; without a unit it is in the file's. Null where it cannot be read.</summary>
    public Length? Length(string field, UnitSystem unit, Length? otherwise = null)
    {
        if (!Has(field))
            return otherwise ?? Missing<Length?>(field, null);
        if (At(field) is not JValue { Type: JTokenType.String, Value: string text })
        {
            var example = unit is UnitSystem.Inch ? "9 1/4 in" : "235 mm";
            return Wrong<Length?>(
                field,
                $"a length in quotation marks, such as \"{example}\"",
                null
            );
        }

        var reading = LengthReader.Read(text, unit);
        if (reading.IsRead)
            return reading.Value;
        Problem(field, $"“{field}”: {reading.Problem}");
        return null;
    }

    /// <summary>A list of lengths; those that cannot be read are put down and left out.</summary>
    public IReadOnlyList<Length> Lengths(string field, UnitSystem unit, int most)
    {
        List<Length> read = [];
        foreach (var item in Items(field, most, "lengths"))
        {
            var text = item is JValue { Type: JTokenType.String, Value: string written }
                ? written
                : "";
            var reading = LengthReader.Read(text, unit);
            if (reading.IsRead)
                read.Add(reading.Value);
            else
                Findings.Add(item, $"“{field}”: {reading.Problem}");
        }

        return read;
    }

    public T? Choice<T>(string field, FileWords<T> words, T? otherwise = null)
        where T : struct
    {
        if (!Has(field))
            return otherwise ?? Missing<T?>(field, null);
        var text = At(field) is JValue { Type: JTokenType.String, Value: string written }
            ? written
            : null;
        if (text is not null && words.Find(text) is { } found)
            return found;
        var choices = string.Join(", ", words.Words.Select(w => $"“{w}”"));
        return Wrong<T?>(field, $"one of {choices}", null);
    }

    private T Missing<T>(string field, T stand)
    {
        Problem(field, $"The field “{field}” is missing in {_what}.");
        return stand;
    }

    private T Wrong<T>(string field, string expected, T stand)
    {
        var found = At(field) switch
        {
            JObject => "a group in braces",
            JArray => "a list",
            JValue { Type: JTokenType.Null } => "null",
            var value => $"“{Shown(value.ToString())}”",
        };
        Problem(field, $"“{field}” is {expected}; here it is {found}.");
        return stand;
    }

    private static string Shown(string text)
    {
        var plain = new string([
            .. text.Take(41).Select(c => char.IsControl(c) || char.IsSurrogate(c) ? '?' : c),
        ]);
        return plain.Length > 40 ? plain[..40] + "…" : plain;
    }
}
