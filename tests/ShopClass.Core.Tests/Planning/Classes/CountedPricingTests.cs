using CsCheck;
using ShopClass.Core.Planning.Classes;
using ShopClass.Core.Planning.Classes.Staged;
using Xunit;

namespace ShopClass.Core.Tests.Planning.Classes;

/// <summary>The most valuable board of single pieces, beside all sets of pieces that fit on one board.</summary>
public class CountedPricingTests
{
    private const int Width = 10;
    private const int Length = 14;

    private static readonly Gen<(StagedItem Item, long Price)[]> Cases = Gen.Select(
        Gen.Int[1, Width],
        Gen.Int[1, Length],
        Gen.Int[1, 2],
        Gen.Long[0, 50],
        (width, length, count, price) => (new StagedItem(width, length, count), price)
    ).Array[1, 4];

    [Fact]
    public void The_best_board_is_the_best_set_of_pieces_that_fits_on_one() =>
        Cases.Sample(Check, iter: 300, threads: 1);

    private static void Check((StagedItem Item, long Price)[] pieces)
    {
        var cutting = new Cutting(
            [new Plank(Length, Width, 1, int.MaxValue, KeepsEdges: false)],
            [
                .. pieces.Select(p => new Piece(
                    [new Way(p.Item.Length, p.Item.Width, p.Item.Width)],
                    p.Item.Count,
                    Suits: null
                )),
            ]
        );
        long[] prices = [.. pieces.Select(p => p.Price)];
        int[] left = [.. pieces.Select(p => p.Item.Count)];

        var pricing = CountedPricing.For(cutting)!;
        var effort = new Effort(1_000_000, TestContext.Current.CancellationToken);
        var theMost = MostOnOneBoard(pieces);
        // A search that found something may stop there; the last finds nothing more, and says that there is nothing.
        for (var best = 0L; ; )
        {
            var boards = pricing.Better(prices, left, best, 1 << 26, effort, out var most);
            Assert.True(most >= theMost);
            Assert.All(
                boards.SelectMany(b => b.Pieces.CountBy(p => p)),
                cut => Assert.True(cut.Value <= left[cut.Key])
            );
            if (boards.Count == 0)
            {
                Assert.Equal((theMost, theMost), (best, most));
                return;
            }

            best = boards[^1].Pieces.Sum(p => prices[p]);
        }
    }

    private static long MostOnOneBoard((StagedItem Item, long Price)[] pieces)
    {
        var most = 0L;
        var counts = new int[pieces.Length];
        while (Next(counts, pieces))
        {
            var value = counts.Select((n, i) => n * pieces[i].Price).Sum();
            if (value > most && FitOnOne(pieces, counts))
                most = value;
        }

        return most;
    }

    private static bool Next(int[] counts, (StagedItem Item, long Price)[] pieces)
    {
        for (var i = 0; i < counts.Length; i++)
        {
            if (counts[i]++ < pieces[i].Item.Count)
                return true;
            counts[i] = 0;
        }

        return false;
    }

    private static bool FitOnOne((StagedItem Item, long Price)[] pieces, int[] counts) =>
        StagedPacking
            .Pack(
                [new StagedStock(Width, Length, 1)],
                [
                    .. pieces
                        .Select((p, i) => p.Item with { Count = counts[i] })
                        .Where(i => i.Count > 0),
                ],
                2000
            )
            .Cost <= 1;
}
