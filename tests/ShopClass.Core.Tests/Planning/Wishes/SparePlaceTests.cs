using ShopClass.Core.Lumber;
using ShopClass.Core.Planning.Wishes;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Tests.Planning.Wishes;

/// <summary>Where a spare fits in a leftover, and what makes a part risky; the numbers are worked out by hand.</summary>
public class SparePlaceTests
{
    private static readonly Part Wide = Wood.Part("A", 1, Wood.Mm(20), Wood.Mm(98), Wood.Mm(200));

    private static Board Board(params Defect[] bad) =>
        Wood.Board("1", Wood.Mm(20), Wood.Mm(100), Wood.Mm(1000), Surfacing.S4S) with
        {
            Defects = bad,
        };

    private static Defect Bad(int from, int to, int near, int far, DefectReach reach) =>
        new(DefectKind.Knot, Rect(from, to, near, far), reach);

    private static BoardRect Rect(int from, int to, int near, int far) =>
        new(Wood.Mm(from), Wood.Mm(to), Wood.Mm(near), Wood.Mm(far));

    private static BoardRect? In(BoardRect left, Board board, Part part) =>
        SparePlace.In(
            left,
            board,
            part,
            Wood.Bare(Wood.Mm(2)) with
            {
                WidthAllowance = Wood.Mm(4),
            }
        );

    [Fact]
    public void A_leftover_with_both_straight_edges_of_the_board_needs_no_allowance_on_them()
    {
        // 98 and 4 mm of allowance are more than the board has; but both its edges came straight.
        Assert.Equal(Rect(500, 700, 0, 100), In(Rect(500, 1000, 0, 100), Board(), Wide));
        // One edge was sawn: the allowance is needed.
        Assert.Null(In(Rect(500, 1000, 0, 99), Board(), Wide));
        // Rough edges have to be planed.
        Assert.Null(
            In(Rect(500, 1000, 0, 100), Board() with { Surfacing = Surfacing.Rough }, Wide)
        );
        // Narrower than the part is too narrow, straight or not.
        var wider = Wide with
        {
            Finished = Wide.Finished with { Width = Wood.Mm(101) },
        };
        Assert.Null(In(Rect(500, 1000, 0, 100), Board(), wider));
        // Exactly the part's own width will do.
        var exact = Wide with
        {
            Finished = Wide.Finished with { Width = Wood.Mm(100) },
        };
        Assert.NotNull(In(Rect(500, 1000, 0, 100), Board(), exact));
    }

    [Fact]
    public void A_narrow_part_takes_no_more_than_it_needs() =>
        Assert.Equal(
            Rect(500, 700, 0, 54),
            In(
                Rect(500, 1000, 0, 100),
                Board(),
                Wide with
                {
                    Finished = Wide.Finished with { Width = Wood.Mm(50) },
                }
            )
        );

    [Fact]
    public void Of_several_places_the_one_nearest_the_start_and_the_near_edge_is_taken()
    {
        var narrow = Wide with { Finished = Wide.Finished with { Width = Wood.Mm(30) } };
        // Past the knot across is nearer the start than past it along.
        Assert.Equal(
            Rect(500, 700, 40, 74),
            In(Rect(500, 1000, 0, 100), Board(Bad(560, 600, 20, 40, DefectReach.Through)), narrow)
        );
        Assert.Equal(
            Rect(600, 800, 0, 34),
            In(Rect(500, 1000, 0, 100), Board(Bad(560, 600, 20, 80, DefectReach.Through)), narrow)
        );
        Assert.Equal(
            Rect(650, 850, 0, 34),
            In(
                Rect(500, 1000, 0, 100),
                Board(
                    Bad(560, 600, 20, 80, DefectReach.Through),
                    Bad(620, 650, 20, 80, DefectReach.Through)
                ),
                narrow
            )
        );
    }

    [Theory]
    [InlineData(true, DefectReach.MarkedFace, DefectReach.MarkedFace, true)]
    [InlineData(true, DefectReach.MarkedFace, DefectReach.BackFace, false)]
    [InlineData(true, DefectReach.MarkedFace, DefectReach.Through, false)]
    [InlineData(false, DefectReach.MarkedFace, DefectReach.MarkedFace, false)]
    public void Bad_places_may_be_covered_when_all_are_hidden_on_one_face(
        bool accepts,
        DefectReach one,
        DefectReach other,
        bool may
    ) =>
        Assert.Equal(
            may,
            SparePlace.MayCover(
                Wide with
                {
                    AcceptsHiddenDefect = accepts,
                },
                Rect(0, 200, 0, 100),
                [Bad(10, 20, 10, 20, one), Bad(50, 60, 10, 20, other)]
            )
        );

    [Fact]
    public void Why_a_part_is_risky_is_said_in_clauses()
    {
        var thin = Wood.Part("T", 1, Wood.Mm(12), Wood.Mm(80), Wood.Mm(60));
        var halfInch = thin with
        {
            Letter = "H",
            Finished = new(Wood.In(0, 1, 2), Wood.Mm(80), Wood.Mm(80)),
        };
        var none = halfInch with { Letter = "N", Quantity = 0 };
        var risks = PartRisk.Ranked(
            new()
            {
                Name = "trial",
                Parts = [thin, halfInch, none],
                Joints =
                [
                    new() { Kind = JointKind.Dado, Part = "H" },
                    new()
                    {
                        Kind = JointKind.Dado,
                        Part = "T",
                        Side = JointSide.Both,
                        Positions = [Wood.Mm(10), Wood.Mm(30)],
                    },
                ],
            }
        );
        Assert.Equal(["T", "H"], risks.Select(r => r.Part.Letter));
        Assert.Equal(
            ["4 joints are sawn in each piece", "its grain is short", "it is thin"],
            risks[0].Why
        );
        // Half an inch is not thin, and a square part has no short grain.
        Assert.Equal(["a joint is sawn in it"], risks[1].Why);
    }
}
