using ShopClass.Bench.Instances;

namespace ShopClass.Core.Tests.Bench;

/// <summary>The judge of the bench's published instances must itself refuse what is wrong.</summary>
public class SolutionCheckTests
{
    private static readonly Variant ThreeStages = new("b3n", Aim.FewestBoards, 3, false);

    [Fact]
    public void Parts_beside_each_other_pass() =>
        Assert.Null(Fault([new(0, 0, 0, 0), new(0, 0, 5, 0)]));

    [Fact]
    public void Parts_over_each_other_are_refused() =>
        Assert.Contains(
            "lies over",
            Fault([new(0, 0, 0, 0), new(0, 0, 4, 0)])!,
            StringComparison.Ordinal
        );

    [Fact]
    public void A_part_over_the_edge_is_refused() =>
        Assert.Contains(
            "leaves",
            Fault([new(0, 0, 0, 0), new(0, 0, 6, 0)])!,
            StringComparison.Ordinal
        );

    [Fact]
    public void A_missing_part_is_refused() =>
        Assert.Contains("wanted 2", Fault([new(0, 0, 0, 0)])!, StringComparison.Ordinal);

    [Fact]
    public void More_boards_than_there_are_are_refused() =>
        Assert.Contains(
            "more than 1",
            Fault([new(0, 0, 0, 0), new(0, 1, 0, 0)], boards: 2)!,
            StringComparison.Ordinal
        );

    [Fact]
    public void A_pinwheel_cannot_be_cut_from_edge_to_edge()
    {
        // Five pieces around a middle: the textbook layout that no edge-to-edge cut can begin.
        Item[] items = [new(2, 1, 2, 0), new(1, 2, 2, 0), new(1, 1, 1, 0)];
        Placed[] pinwheel =
        [
            new(0, 0, 0, 0),
            new(1, 0, 2, 0),
            new(0, 0, 1, 2),
            new(1, 0, 0, 1),
            new(2, 0, 1, 1),
        ];
        Assert.Contains(
            "cannot be cut",
            Fault(pinwheel, new(3, 3, 1, -1), items, ThreeStages)!,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(2, false, false)]
    [InlineData(2, true, true)]
    [InlineData(3, false, true)]
    [InlineData(3, true, true)]
    public void Stages_and_the_first_cuts_direction_count(int stages, bool dividesW, bool passes)
    {
        // A full-height part at the left, two different ones above each other at the right: the first cut must divide W,
        // or else be the idle first of three.
        Item[] items = [new(4, 6, 1, 0), new(3, 4, 1, 0), new(6, 2, 1, 0)];
        Placed[] parts = [new(0, 0, 0, 0), new(1, 0, 4, 0), new(2, 0, 4, 4)];
        var variant = new Variant("", Aim.FewestBoards, stages, dividesW);
        Assert.Equal(passes, Fault(parts, new(10, 6, 1, -1), items, variant) == null);
    }

    private static string? Fault(Placed[] parts, int boards = 1) =>
        Fault(parts, new(10, 10, 1, 1), [new(5, 10, 2, 0)], ThreeStages, boards);

    private static string? Fault(
        Placed[] parts,
        StockSize board,
        Item[] items,
        Variant variant,
        int boards = 1
    )
    {
        var instance = new Instance(
            "",
            "",
            "",
            0,
            false,
            false,
            false,
            null,
            [board],
            items,
            new Dictionary<string, double>(StringComparer.Ordinal),
            new HashSet<string>()
        );
        return new SolutionCheck(
            instance,
            variant,
            new([.. Enumerable.Repeat(0, boards)], parts, null, false)
        ).Fault();
    }
}
