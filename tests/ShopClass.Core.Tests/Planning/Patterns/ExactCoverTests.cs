using CsCheck;
using ShopClass.Core.Planning.Patterns;

namespace ShopClass.Core.Tests.Planning.Patterns;

public class ExactCoverTests
{
    // Most pieces are a third to a half of the board, where the linear programme alone decides least.
    private static readonly Gen<LengthsRequest> Awkward =
        from board in Gen.Int[30, 60]
        from wanted in (
            from length in Gen.Int[board / 5, board / 2]
            from count in Gen.Int[1, 2]
            select new LengthWanted(length, count)
        ).List[2, 5]
        select new LengthsRequest(board, 0, wanted);

    [Fact]
    public void All_patterns_searched_to_the_end_decide_whether_so_many_boards_do() =>
        Awkward.Sample(
            request =>
            {
                var lengths = ReducedLengths.Of(request).Lengths;
                var fewest = EveryWay.Fewest(request);
                for (var boards = 1; boards <= fewest; boards++)
                {
                    var work = Unlimited();
                    var all = new TightPatterns(lengths, lengths.Sizes, 1, 1000).All(work)!;
                    var cover = new ExactCover(lengths, boards, work);
                    var found = cover.Find(all, 100_000);
                    Assert.True(cover.IsDecided);
                    Assert.Equal(boards == fewest, found is not null);
                    if (found is not null)
                        Assert.Equal(lengths.Counts, PiecesIn(found, lengths.Sizes.Length));
                }
            },
            iter: 200
        );

    [Fact]
    public void The_patterns_a_plan_can_hold_are_those_whose_worth_is_near_enough_the_most() =>
        Awkward.Sample(
            request =>
            {
                var lengths = ReducedLengths.Of(request).Lengths;
                var atLeast = Math.Max(1, lengths.Board - 3);
                var all = new TightPatterns(lengths, lengths.Sizes, 1, 1000).All(Unlimited())!;
                var tight = new TightPatterns(lengths, lengths.Sizes, atLeast, 1000).All(
                    Unlimited()
                )!;
                Assert.Equal(
                    all.Where(p => Length(p, lengths) >= atLeast).Select(Text),
                    tight.Select(Text)
                );
            },
            iter: 100
        );

    [Fact]
    public void Few_nodes_leave_it_undecided()
    {
        var lengths = new Lengths(10, [5, 4, 3, 2], [2, 2, 2, 2]);
        var all = new TightPatterns(lengths, lengths.Sizes, 1, 1000).All(Unlimited())!;
        var cover = new ExactCover(lengths, 3, Unlimited());
        Assert.Null(cover.Find(all, 1));
        Assert.False(cover.IsDecided);
    }

    [Fact]
    public void Boards_proven_too_few_are_not_tried_again_and_the_bound_says_so()
    {
        // Schoenfield's BPP119: the linear programme allows 76 boards, the published optimum is 77.
        var plan = LengthsFromBoards.Fewest(
            PublishedLengths.Request("Hard28_BPP119"),
            TestContext.Current.CancellationToken
        );
        Assert.Equal(77, plan.Bound);
        Assert.True(plan.IsFewest);
    }

    private static Work Unlimited() => new(1_000_000, default);

    private static string Text(Pattern pattern) =>
        string.Join(' ', pattern.Kinds) + " x " + string.Join(' ', pattern.Counts);

    private static long Length(Pattern pattern, Lengths lengths) =>
        pattern.Kinds.Select((kind, k) => (long)lengths.Sizes[kind] * pattern.Counts[k]).Sum();

    private static int[] PiecesIn(IEnumerable<Pattern> boards, int sizes)
    {
        var counts = new int[sizes];
        foreach (var board in boards)
        {
            for (var k = 0; k < board.Kinds.Length; k++)
                counts[board.Kinds[k]] += board.Counts[k];
        }

        return counts;
    }
}
