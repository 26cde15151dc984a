using System.IO.Compression;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using ShopClass.Data.Store;

namespace ShopClass.Data.Keeping;

/// <summary>
/// Takes names out of what was packed: wherever a text is a name, or a sentence has it as whole words, another stands
/// instead. Keys and ids stay, and so does everything counted or measured.
/// </summary>
internal sealed partial class Renaming
{
    private readonly (string Old, Regex Word, string New)[] names;

    /// <param name="names">Old names with what stands instead. What is a part's letter is no name: it says nothing of anybody.</param>
    public Renaming(IEnumerable<KeyValuePair<string, string>> names) =>
        this.names = [
            .. names
                .Where(n => n.Key.Length > 0 && n.Key != n.Value && !PartLetter().IsMatch(n.Key))
                .OrderByDescending(n => n.Key.Length)
                .ThenBy(n => n.Key, StringComparer.Ordinal)
                .Select(n => (n.Key, Whole(n.Key), n.Value)),
        ];

    /// <summary>The same, packed again.</summary>
    public byte[] In(byte[] packed)
    {
        using var gzip = new GZipStream(new MemoryStream(packed), CompressionMode.Decompress);
        var node = JsonNode.Parse(gzip);
        return Packed.Pack(Changed(node, ""));
    }

    /// <summary>The same value with other names in it.</summary>
    public T In<T>(T value) =>
        Changed(JsonSerializer.SerializeToNode(value, ShopJson.Options), "")
            .Deserialize<T>(ShopJson.Options)!;

    /// <summary>A text with other names in it.</summary>
    public string In(string text)
    {
        foreach (var (old, word, other) in names)
        {
            if (text == old)
                return other;
            if (text.Length > old.Length)
                text = word.Replace(text, _ => other);
        }

        return text;
    }

    private JsonNode? Changed(JsonNode? node, string property)
    {
        switch (node)
        {
            case JsonObject o:
                foreach (var (key, value) in o.ToList())
                    if (Changed(value, key) is var changed && changed != value)
                        o[key] = changed;
                return o;
            case JsonArray a:
                for (var i = 0; i < a.Count; i++)
                    if (Changed(a[i], property) is var changed && changed != a[i])
                        a[i] = changed;
                return a;
            case JsonValue v when v.TryGetValue<string>(out var text) && !IsKey(property):
                return In(text) is var renamed && renamed != text
                    ? JsonValue.Create(renamed)
                    : node;
            default:
                return node;
        }
    }

    private static bool IsKey(string property) =>
        property.EndsWith("Id", StringComparison.OrdinalIgnoreCase);

    private static Regex Whole(string name) =>
        new(
            $@"(?<!\w){Regex.Escape(name)}(?!\w)",
            RegexOptions.CultureInvariant,
            TimeSpan.FromSeconds(5)
        );

    [GeneratedRegex("^[A-Z]{1,2}$", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex PartLetter();
}
