using System.Text.Json;
using ShopClass.Core.Planning.Classes;
using Xunit;

namespace ShopClass.Core.Tests.Planning.Classes;

/// <summary>Published instances with several board sizes at different costs; the file names their source.</summary>
public class PublishedCostTests
{
    private static readonly JsonElement[] Instances =
    [
        .. JsonDocument
            .Parse(
                File.ReadAllText(
                    Path.Combine(AppContext.BaseDirectory, "cases", "several-board-sizes.json")
                )
            )
            .RootElement.GetProperty("instances")
            .EnumerateArray(),
    ];

    public static TheoryData<string> Names =>
        [.. Instances.Select(i => i.GetProperty("id").GetString()!)];

    // The published costs may cut the boards first along or first across, we only across: we may be a little above.
    [Theory]
    [MemberData(nameof(Names))]
    public void What_is_bought_costs_no_less_than_the_published_bound_and_little_more_than_the_best_found(
        string name
    )
    {
        var instance = Instances.Single(i => i.GetProperty("id").GetString() == name);
        var best = instance.GetProperty("best").GetInt64();
        StagedStock[] stock = [.. Rows(instance, "stock").Select(StockOf)];
        StagedItem[] items =
        [
            .. Rows(instance, "items").Select(i => new StagedItem(i[0], i[1], i[2])),
        ];

        var result = StagedPacking.Pack(
            stock,
            items,
            20_000,
            cancel: TestContext.Current.CancellationToken
        );

        TestContext.Current.SendDiagnosticMessage(
            $"{name}: {result.Cost}, bound {result.Bound}; published {best}, bound {instance.GetProperty("bound")}"
        );
        Assert.Empty(StagedProblems.In(stock, items, result));
        Assert.True(result.Bound <= result.Cost);
        Assert.True(result.Cost >= instance.GetProperty("bound").GetInt64());
        Assert.True(
            result.Cost * 100 <= best * 104,
            $"{result.Cost} is more than 4 % above {best}"
        );
    }

    private static int[][] Rows(JsonElement instance, string name) =>
        [
            .. instance
                .GetProperty(name)
                .EnumerateArray()
                .Select(row => row.EnumerateArray().Select(n => n.GetInt32()).ToArray()),
        ];

    private static StagedStock StockOf(int[] row) =>
        row[3] < 0 ? new(row[0], row[1], row[2]) : new(row[0], row[1], row[2], row[3]);
}
