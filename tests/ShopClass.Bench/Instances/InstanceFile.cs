using System.Globalization;
using System.Text.Json;

namespace ShopClass.Bench.Instances;

/// <summary>Reads one file: a header, then instances. What a file has besides the documented fields is passed over.</summary>
internal static class InstanceFile
{
    /// <summary>All instances of a file or of every .json file in a folder, by name; a file that is not of this form is named and left out.</summary>
    public static IEnumerable<Instance> ReadAll(string path)
    {
        IEnumerable<string> files = Directory.Exists(path)
            ? Directory.GetFiles(path, "*.json").Order(StringComparer.Ordinal)
            : [path];
        return files.SelectMany(Read);
    }

    private static List<Instance> Read(string file)
    {
        try
        {
            using var document = JsonDocument.Parse(File.ReadAllText(file));
            var root = document.RootElement;
            var set = Text(root, "set") ?? Path.GetFileNameWithoutExtension(file);
            return [.. root.GetProperty("instances").EnumerateArray().Select(i => Read(set, i))];
        }
        catch (Exception e)
            when (e
                    is JsonException
                        or KeyNotFoundException
                        or InvalidOperationException
                        or FormatException
                        or IndexOutOfRangeException
            )
        {
            Console.Error.WriteLine($"{Path.GetFileName(file)} is left out: {e.Message}");
            return [];
        }
    }

    private static Instance Read(string set, JsonElement json)
    {
        var flat = json.TryGetProperty("cap", out var cap);
        List<StockSize> stock = flat
            ? [new(cap.GetInt32(), 1, 1, -1)]
            : [.. json.GetProperty("stock").EnumerateArray().Select(Stock)];
        List<Item> items =
        [
            .. json.GetProperty("items").EnumerateArray().Select(i => flat ? Flat(i) : Item(i)),
        ];
        var profits =
            !flat && json.GetProperty("items").EnumerateArray().Any(i => i.GetArrayLength() > 3);
        return new(
            set,
            Text(json, "id") ?? "",
            Text(json, "class") ?? Text(json, "family") ?? "",
            items.Sum(i => i.Count),
            flat,
            profits,
            json.TryGetProperty("defects", out _) || json.TryGetProperty("stacks", out _),
            json.TryGetProperty("params", out var p) && p.TryGetProperty("max1cut", out var most)
                ? most.GetInt32()
                : null,
            stock,
            items,
            Numbers(json),
            json.TryGetProperty("proven", out var proven)
                ? proven.EnumerateArray().Select(k => k.GetString()!).ToHashSet()
                : new HashSet<string>()
        );
    }

    private static StockSize Stock(JsonElement s) =>
        new(
            s[0].GetInt32(),
            s[1].GetInt32(),
            s.GetArrayLength() > 2 ? (long)s[2].GetDouble() : 1,
            s.GetArrayLength() > 3 ? s[3].GetInt32() : -1
        );

    private static Item Flat(JsonElement i) => new(i[0].GetInt32(), 1, i[1].GetInt32(), 0);

    private static Item Item(JsonElement i) =>
        new(
            i[0].GetInt32(),
            i[1].GetInt32(),
            i[2].GetInt32(),
            i.GetArrayLength() > 3 ? i[3].GetInt64() : 0
        );

    private static Dictionary<string, double> Numbers(JsonElement json)
    {
        var numbers = new Dictionary<string, double>(StringComparer.Ordinal);
        if (json.TryGetProperty("values", out var values))
        {
            foreach (var value in values.EnumerateObject())
            {
                if (value.Value.ValueKind == JsonValueKind.Number)
                    numbers[value.Name] = value.Value.GetDouble();
            }
        }

        return numbers;
    }

    private static string? Text(JsonElement json, string name) =>
        !json.TryGetProperty(name, out var value) ? null
        : value.ValueKind == JsonValueKind.String ? value.GetString()
        : value.ValueKind == JsonValueKind.Number ? value.GetRawText()
        : null;
}
