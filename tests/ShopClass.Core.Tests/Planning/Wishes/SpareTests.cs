using CsCheck;
using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Wishes;
using ShopClass.Core.Projects;
using ShopClass.Core.Remakes;

namespace ShopClass.Core.Tests.Planning.Wishes;

public class SpareTests
{
    private static Part Part(string letter, int thickness, int width, int length) =>
        Wood.Part(letter, 1, Wood.Mm(thickness), Wood.Mm(width), Wood.Mm(length));

    private static Joint Joint(JointKind kind, string part, string? mate, params int[] at) =>
        new()
        {
            Kind = kind,
            Part = part,
            Mate = mate,
            Positions = [.. at.Select(p => Wood.Mm(p))],
        };

    private static string Ranked(IReadOnlyList<Joint> joints, params Part[] parts) =>
        string.Join(
            " ",
            PartRisk
                .Ranked(
                    new()
                    {
                        Name = "trial",
                        Parts = parts,
                        Joints = joints,
                    }
                )
                .Select(r => r.Part.Letter)
        );

    /// <summary>Joints sawn first, then short grain, then thin, then the longest (common practice; the order is our proposal).</summary>
    [Fact]
    public void Joints_count_before_short_grain_before_thin_before_long() =>
        Assert.Equal(
            "J S T L A",
            Ranked(
                [Joint(JointKind.Dado, "J", "A", 50, 100)],
                Part("A", 20, 80, 200),
                Part("L", 20, 80, 400),
                Part("T", 10, 80, 200),
                Part("S", 20, 80, 60),
                Part("J", 20, 80, 150)
            )
        );

    [Theory]
    // A nailed butt has nothing sawn; a shelf in its dado is only cut square; a dovetail is sawn in both.
    [InlineData(JointKind.Nailed, 0, 0)]
    [InlineData(JointKind.Dado, 2, 0)]
    [InlineData(JointKind.Rabbet, 2, 0)]
    [InlineData(JointKind.Dovetail, 2, 1)]
    [InlineData(JointKind.MortiseAndTenon, 2, 1)]
    public void Joints_are_counted_where_they_are_sawn(JointKind kind, int receives, int enters)
    {
        var risks = PartRisk.Ranked(
            new()
            {
                Name = "trial",
                Parts = [Part("A", 20, 80, 200), Part("B", 20, 80, 200)],
                Joints = [Joint(kind, "A", "B", 20, 100)],
            }
        );
        Assert.Equal(receives, risks.Single(r => r.Part.Letter == "A").Joints);
        Assert.Equal(enters, risks.Single(r => r.Part.Letter == "B").Joints);
    }

    // 600 mm are left at the far end, and of Board 2, 250.
    private static PlanningRequest Request { get; } =
        Wood.Ask(
            Wood.Bare(Wood.Mm(2)) with
            {
                Precision = Precision.Millimetre,
            },
            [
                Wood.Board("1", Wood.Mm(20), Wood.Mm(100), Wood.Mm(1002)),
                Wood.Board("2", Wood.Mm(12), Wood.Mm(100), Wood.Mm(450)),
            ],
            Part("A", 20, 100, 200),
            Part("B", 20, 100, 200),
            Part("C", 12, 100, 200)
        );

    private static CheckedPlan Make(PlanningRequest request) =>
        CheckedPlan.Make(request, cancel: TestContext.Current.CancellationToken);

    [Fact]
    public void The_spare_lies_where_the_riskiest_part_s_wood_is_left()
    {
        // C is thin, and no joint is sawn in any.
        var spare = Spares.Of(Make(Request))!;
        Assert.Equal(("C", "2", true), (spare.Letter, spare.BoardId, spare.IsTheRiskiest));
        Assert.Equal(Wood.Mm(202), spare.Place.From);
        Assert.Equal(
            "Keep 100 × 200 mm of Board 2, from 202 mm along, for one more C: the riskiest part (it is thin). Do not give that piece away before C is done.",
            Spares.Sentence(spare, Request)
        );
    }

    [Fact]
    public void Where_the_riskiest_finds_no_room_the_next_is_kept_for()
    {
        var short2 = Request with
        {
            Boards = [Request.Boards[0], Request.Boards[1] with { Length = Wood.Mm(400) }],
        };
        var spare = Spares.Of(Make(short2))!;
        Assert.Equal(("A", "1", false), (spare.Letter, spare.BoardId, spare.IsTheRiskiest));
    }

    [Fact]
    public void A_spare_keeps_clear_of_bad_places()
    {
        var knot = new Defect(
            DefectKind.Knot,
            new(Wood.Mm(220), Wood.Mm(230), Wood.Mm(20), Wood.Mm(30))
        );
        var knotty = Request with
        {
            Boards = [Request.Boards[0], Request.Boards[1] with { Defects = [knot] }],
        };
        Assert.Equal(Wood.Mm(230), Spares.Of(Make(knotty))!.Place.From);
    }

    [Fact]
    public void A_remake_of_that_part_takes_the_wood_kept_for_it_and_others_leave_it()
    {
        // 316 mm are left: room for one more B, the longer of the two, and that is where an A would come from as well.
        var request = Wood.Ask(
            Wood.Bare(Wood.Mm(2)),
            [Wood.Board("1", Wood.Mm(20), Wood.Mm(100), Wood.Mm(820))],
            Part("A", 20, 100, 200),
            Part("B", 20, 100, 300)
        );
        var made = Make(request);
        Assert.Equal("B", Spares.Of(made)!.Letter);

        string Remade(BlankKey key) =>
            Remaker
                .Options(
                    new()
                    {
                        Plan = made,
                        CutsMade = made.Sequence.Cuts.Count,
                        Spoiled = key,
                    },
                    new()
                )
                .Options[0]
                .Sentence;

        Assert.EndsWith(
            "It is the wood kept for a spare B.",
            Remade(new("B", 1)),
            StringComparison.Ordinal
        );
        Assert.EndsWith(
            "That uses the wood kept for a spare B.",
            Remade(new("A", 1)),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Whatever_spare_is_kept_can_be_sawn_from_its_leftover() =>
        RandomWood
            .Requests(parts: 3, boards: 2, defects: 2)
            .Sample(
                request =>
                {
                    var made = Make(request);
                    if (Spares.Of(made) is not { } spare || made.Plan.GlueUps.Count > 0)
                        return;
                    var answer = Remaker.Options(
                        new()
                        {
                            Plan = made,
                            CutsMade = made.Sequence.Cuts.Count,
                            Spoiled = new(spare.Letter, 1),
                        },
                        new()
                    );
                    Assert.Contains(
                        "kept for a spare",
                        answer.Options.Single(o => o.Way is RemakeWay.Offcut).Sentence,
                        StringComparison.Ordinal
                    );
                },
                iter: 80,
                threads: 1
            );
}
