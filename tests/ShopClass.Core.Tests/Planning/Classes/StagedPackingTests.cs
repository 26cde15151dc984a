using CsCheck;
using ShopClass.Core.Planning.Classes;
using Xunit;

namespace ShopClass.Core.Tests.Planning.Classes;

public class StagedPackingTests
{
    private static readonly Gen<StagedItem> AnyItem = Gen.Select(
        Gen.Int[1, 20],
        Gen.Int[1, 30],
        Gen.Int[1, 4],
        (width, length, count) => new StagedItem(width, length, count)
    );

    private static readonly Gen<StagedStock> AnyStock = Gen.Select(
        Gen.Int[20, 40],
        Gen.Int[30, 90],
        Gen.Int[80, 120],
        (width, length, price) => new StagedStock(width, length, (long)width * length * price)
    );

    private static Gen<(StagedStock[] Stock, StagedItem[] Items)> Cases(int kinds) =>
        Gen.Select(AnyStock.Array[1, 3], AnyItem.Array[1, kinds]);

    [Fact]
    public void Every_packing_is_sound_and_never_below_its_bound() =>
        Cases(10)
            .Sample(
                c =>
                {
                    var result = Pack(c.Stock, c.Items, 50);
                    Assert.True(result.IsComplete);
                    Assert.Empty(StagedProblems.In(c.Stock, c.Items, result));
                    Assert.True(result.Bound <= result.Cost);
                },
                iter: 30,
                threads: 1
            );

    [Fact]
    public void The_same_question_gives_the_same_packing() =>
        Cases(8)
            .Sample(
                c =>
                    Assert.Equal(
                        Text(Pack(c.Stock, c.Items, 50)),
                        Text(Pack(c.Stock, c.Items, 50))
                    ),
                iter: 10,
                threads: 1
            );

    [Fact]
    public void What_fits_on_no_board_is_told()
    {
        var result = Pack([new(10, 20, 5)], [new(11, 3, 1)]);
        Assert.False(result.IsComplete);
        Assert.Empty(result.Boards);
    }

    [Fact]
    public void Nothing_to_cut_costs_nothing()
    {
        var result = Pack([new(10, 20, 5)], []);
        Assert.True(result.IsProven);
        Assert.Equal(0, result.Cost);
    }

    [Fact]
    public void A_board_there_is_once_is_taken_once()
    {
        StagedStock[] stock = [new(10, 10, 1, 1), new(10, 10, 3)];
        StagedItem[] items = [new(10, 10, 3)];
        var result = Pack(stock, items);
        Assert.Empty(StagedProblems.In(stock, items, result));
        Assert.Equal(7, result.Cost);
    }

    /// <summary>
    /// Published least costs with first cuts across the board's length: OR-Library instances cgcut1 (Christofides and
    /// Whitlock 1977) and ngcutap-9 (Beasley 2004), three stages with trims, proven optimal.
    /// </summary>
    [Theory]
    [InlineData("15 10", "8 4 2;3 7 1;8 2 3;3 4 5;3 3 2;3 2 2;2 1 1", 2)]
    [InlineData("20 20", "14 2 1;1 5 1;20 4 2;12 3 3;11 8 2;11 6 2;7 9 1;17 5 1;7 14 2;1 7 3", 3)]
    public void Published_optima_are_reached_and_proven(string board, string items, int boards)
    {
        var size = Numbers(board);
        var result = Pack(
            [new(size[0], size[1], 1)],
            [.. items.Split(';').Select(Numbers).Select(i => new StagedItem(i[0], i[1], i[2]))]
        );
        Assert.Equal(boards, result.Cost);
        Assert.True(result.IsProven);
    }

    /// <summary>
    /// The same two with one piece in each strip: the best published for two stages with trims is a board more (cgcut1,
    /// ngcutap-9; read from the same table).
    /// </summary>
    [Theory]
    [InlineData("15 10", "8 4 2;3 7 1;8 2 3;3 4 5;3 3 2;3 2 2;2 1 1", 3)]
    [InlineData("20 20", "14 2 1;1 5 1;20 4 2;12 3 3;11 8 2;11 6 2;7 9 1;17 5 1;7 14 2;1 7 3", 4)]
    public void With_one_piece_in_a_strip_two_stages_are_enough(
        string board,
        string items,
        int boards
    )
    {
        var size = Numbers(board);
        StagedStock[] stock = [new(size[0], size[1], 1)];
        StagedItem[] asked =
        [
            .. items.Split(';').Select(Numbers).Select(i => new StagedItem(i[0], i[1], i[2])),
        ];
        var result = StagedPacking.Pack(
            stock,
            asked,
            2_000,
            onePerStrip: true,
            cancel: TestContext.Current.CancellationToken
        );
        Assert.Empty(StagedProblems.In(stock, asked, result));
        Assert.All(
            result.Boards.SelectMany(b => b.Sections).SelectMany(s => s.Strips),
            strip => Assert.Single(strip.Places)
        );
        Assert.Equal(boards, result.Cost);
        Assert.True(result.Bound <= boards);
    }

    private static int[] Numbers(string text) =>
        [
            .. text.Split(' ')
                .Select(t => int.Parse(t, System.Globalization.CultureInfo.InvariantCulture)),
        ];

    private static StagedResult Pack(
        IReadOnlyList<StagedStock> stock,
        IReadOnlyList<StagedItem> items,
        int steps = 200
    ) => StagedPacking.Pack(stock, items, steps, cancel: TestContext.Current.CancellationToken);

    private static string Text(StagedResult result) =>
        System.Text.Json.JsonSerializer.Serialize(result);
}
