using System.Text.Json;
using ShopClass.Core.Planning.Classes;
using Xunit;

namespace ShopClass.Core.Tests.Planning.Classes;

/// <summary>
/// Published instances that no single search of ours packs onto as few boards as are known to do: it takes boards of several
/// packings put together (and in c03-n080-05 a linear programme that does not go round in circles).
/// c01-n040-08 is proven only by boards that give no piece twice. The file names the source.
/// </summary>
public class PublishedPackingTests
{
    private static readonly JsonElement[] Instances =
    [
        .. JsonDocument
            .Parse(
                File.ReadAllText(
                    Path.Combine(AppContext.BaseDirectory, "cases", "one-board-size.json")
                )
            )
            .RootElement.GetProperty("instances")
            .EnumerateArray(),
    ];

    public static TheoryData<string> Names =>
        [.. Instances.Select(i => i.GetProperty("id").GetString()!)];

    [Theory]
    [MemberData(nameof(Names))]
    public void As_few_boards_are_used_as_were_ever_published(string name)
    {
        var instance = Instances.Single(i => i.GetProperty("id").GetString() == name);
        int[] size = Numbers(instance.GetProperty("board"));
        StagedStock[] stock = [new(size[0], size[1], 1)];
        StagedItem[] items =
        [
            .. instance
                .GetProperty("items")
                .EnumerateArray()
                .Select(Numbers)
                .Select(i => new StagedItem(i[0], i[1], i[2])),
        ];

        var result = StagedPacking.Pack(
            stock,
            items,
            30_000,
            cancel: TestContext.Current.CancellationToken
        );

        Assert.Empty(StagedProblems.In(stock, items, result));
        Assert.Equal(instance.GetProperty("best").GetInt64(), result.Cost);
        Assert.True(result.IsProven);
    }

    private static int[] Numbers(JsonElement list) =>
        [.. list.EnumerateArray().Select(n => n.GetInt32())];
}
