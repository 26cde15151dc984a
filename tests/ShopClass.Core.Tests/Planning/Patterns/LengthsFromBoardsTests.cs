using CsCheck;
using ShopClass.Core.Planning.Patterns;

namespace ShopClass.Core.Tests.Planning.Patterns;

public class LengthsFromBoardsTests
{
    private static readonly Gen<LengthsRequest> Small =
        from board in Gen.Int[20, 60]
        from kerf in Gen.Int[0, 3]
        from wanted in (
            from length in Gen.Int[3, 20]
            from count in Gen.Int[0, 3]
            select new LengthWanted(length, count)
        ).List[1, 4]
        select new LengthsRequest(board, kerf, wanted);

    [Fact]
    public void No_small_case_can_be_cut_from_fewer_boards() =>
        Small.Sample(
            request =>
            {
                var plan = Plan(request);
                AssertCuts(request, plan);
                Assert.Equal(EveryWay.Fewest(request), plan.Boards.Count);
                Assert.True(plan.IsFewest);
            },
            iter: 300
        );

    [Fact]
    public void The_same_request_gets_the_same_plan() =>
        Small.Sample(request => Assert.Equal(Plan(request).Boards, Plan(request).Boards), iter: 30);

    [Theory]
    [InlineData(48, 0, 2)]
    [InlineData(48, 1, 3)]
    [InlineData(50, 1, 2)]
    public void A_kerf_lies_between_pieces_and_not_at_the_boards_end(
        long board,
        long kerf,
        int boards
    )
    {
        // Three pieces of 16 fill 48 without a kerf; with a kerf of 1 they need 50.
        var plan = Plan(new(board, kerf, [new(16, 6)]));
        Assert.Equal(boards, plan.Boards.Count);
        Assert.True(plan.IsFewest);
    }

    [Fact]
    public void Work_that_ends_at_once_still_gives_whole_boards_and_a_bound()
    {
        var request = PublishedLengths.Request("hard28") with { StepLimit = 0 };
        var plan = Plan(request);
        AssertCuts(request, plan);
        Assert.True(plan.Bound <= plan.Boards.Count);
    }

    [Fact]
    public void A_piece_longer_than_the_board_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Plan(new(10, 0, [new(11, 1)])));

    [Theory]
    [MemberData(nameof(PublishedLengths.Names), MemberType = typeof(PublishedLengths))]
    public void The_published_optimum_is_found_and_never_undercut(string name)
    {
        var request = PublishedLengths.Request(name);
        var plan = Plan(request);
        AssertCuts(request, plan);
        Assert.Equal(PublishedLengths.FewestBoards(name), plan.Boards.Count);
        Assert.True(plan.Bound <= plan.Boards.Count);
    }

    private static LengthsPlan Plan(LengthsRequest request) =>
        LengthsFromBoards.Fewest(request, TestContext.Current.CancellationToken);

    private static void AssertCuts(LengthsRequest request, LengthsPlan plan)
    {
        var cut = new int[request.Wanted.Count];
        foreach (var board in plan.Boards)
        {
            Assert.NotEmpty(board);
            Assert.True(
                board.Sum(p => request.Wanted[p].Length) + ((board.Count - 1) * request.Kerf)
                    <= request.Board
            );
            foreach (var piece in board)
                cut[piece]++;
        }

        Assert.Equal(request.Wanted.Select(w => w.Count), cut);
    }
}
