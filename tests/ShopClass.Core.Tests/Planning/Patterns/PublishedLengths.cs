using System.Text.Json;
using ShopClass.Core.Planning.Patterns;

namespace ShopClass.Core.Tests.Planning.Patterns;

/// <summary>Published instances for pieces of full width; the file names their sources.</summary>
public static class PublishedLengths
{
    private static readonly JsonElement[] Instances =
    [
        .. JsonDocument
            .Parse(
                File.ReadAllText(
                    Path.Combine(AppContext.BaseDirectory, "cases", "published-lengths.json")
                )
            )
            .RootElement.GetProperty("instances")
            .EnumerateArray(),
    ];

    public static TheoryData<string> Names =>
        [.. Instances.Select(i => i.GetProperty("id").GetString()!)];

    /// <summary>The first instance whose name begins so.</summary>
    internal static LengthsRequest Request(string name)
    {
        var instance = Find(name);
        return new(
            instance.GetProperty("board").GetInt64(),
            0,
            [
                .. instance
                    .GetProperty("lengths")
                    .EnumerateArray()
                    .Select(l => new LengthWanted(l[0].GetInt64(), l[1].GetInt32())),
            ]
        );
    }

    internal static int FewestBoards(string name) =>
        Find(name).GetProperty("fewestBoards").GetInt32();

    private static JsonElement Find(string name) =>
        Instances.First(i =>
            i.GetProperty("id").GetString()!.StartsWith(name, StringComparison.OrdinalIgnoreCase)
        );
}
