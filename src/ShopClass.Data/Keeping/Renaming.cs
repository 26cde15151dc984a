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
    private readonly Dictionary<string, string> names;
    private readonly Regex? words;

    /// <param name="names">
    /// Old names with what stands instead; a name that is to stay stands for itself, and keeps shorter ones within it. What is
    /// a part's letter is no name: it says nothing of anybody.
    /// </param>
    public Renaming(IEnumerable<KeyValuePair<string, string>> names)
    {
        this.names = new(
            names.Where(n => n.Key.Length > 0 && !PartLetter().IsMatch(n.Key)),
            StringComparer.Ordinal
        );
        words = this.names.Count == 0 ? null : Whole(this.names.Keys);
    }

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

    /// <summary>A text with other names in it. What was put in is not looked at again.</summary>
    public string In(string text) =>
        names.TryGetValue(text, out var other) ? other
        : words is null ? text
        : words.Replace(text, m => names[m.Value]);

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

    // The longest first: of two names that begin alike, the whole one counts.
    private static Regex Whole(IEnumerable<string> names) =>
        new(
            $@"(?<!\w)(?:{string.Join('|', names.OrderByDescending(n => n.Length).Select(Regex.Escape))})(?!\w)",
            RegexOptions.CultureInvariant,
            TimeSpan.FromSeconds(5)
        );

    [GeneratedRegex("^[A-Z]{1,2}$", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex PartLetter();
}
