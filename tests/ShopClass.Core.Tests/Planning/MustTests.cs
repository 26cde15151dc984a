using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Tests.Planning;

/// <summary>Each must with a pair: one case that only just fits, and the same case one tick too small.</summary>
public class MustTests
{
    private static readonly Length Tick = Length.FromTicks(1);
    private static readonly Length Kerf = Wood.Mm(2);

    private static bool Fits(PlanningRequest request)
    {
        var plan = Wood.Plan(request);
        Assert.Empty(LayoutProblems.In(request, plan));
        return plan.IsComplete;
    }

    private static bool Fits(Board board, params Part[] parts) =>
        Fits(Wood.Ask(Wood.Bare(Kerf), [board], parts));

    private static Board Plank(Length width, Length length) =>
        Wood.Board("1", Wood.Mm(20), width, length);

    private static Part Some(int quantity, Length width, Length length) =>
        Wood.Part("A", quantity, Wood.Mm(20), width, length);

    [Fact]
    public void A_crosscut_leaves_one_kerf_between_two_lengths()
    {
        Assert.True(Fits(Plank(Wood.Mm(100), Wood.Mm(402)), Some(2, Wood.Mm(100), Wood.Mm(200))));
        Assert.False(
            Fits(Plank(Wood.Mm(100), Wood.Mm(402) - Tick), Some(2, Wood.Mm(100), Wood.Mm(200)))
        );
    }

    [Fact]
    public void A_rip_leaves_one_kerf_between_neighbours()
    {
        Assert.True(Fits(Plank(Wood.Mm(102), Wood.Mm(200)), Some(2, Wood.Mm(50), Wood.Mm(200))));
        Assert.False(
            Fits(Plank(Wood.Mm(102) - Tick, Wood.Mm(200)), Some(2, Wood.Mm(50), Wood.Mm(200)))
        );
    }

    [Fact]
    public void End_trim_is_sawn_off_with_its_kerf_inside_it()
    {
        var board = Plank(Wood.Mm(100), Wood.Mm(250)) with
        {
            TrimStart = Wood.Mm(20),
            TrimEnd = Wood.Mm(30),
        };
        Assert.True(Fits(board, Some(1, Wood.Mm(100), Wood.Mm(200))));
        Assert.False(Fits(board, Some(1, Wood.Mm(100), Wood.Mm(200) + Tick)));
    }

    [Theory]
    [InlineData(100, 100, 100, true)]
    [InlineData(99, 100, 100, false)]
    [InlineData(100, 99, 100, false)]
    [InlineData(100, 100, 99, false)]
    public void The_smallest_of_three_widths_counts(int start, int middle, int end, bool fits)
    {
        var board = Plank(Wood.Mm(100), Wood.Mm(200)) with
        {
            WidthAtStart = Wood.Mm(start),
            WidthAtMiddle = Wood.Mm(middle),
            WidthAtEnd = Wood.Mm(end),
        };
        Assert.Equal(fits, Fits(board, Some(1, Wood.Mm(100), Wood.Mm(200))));
    }

    [Fact]
    public void Grain_runs_along_the_part_unless_it_may_run_either_way()
    {
        var part = Some(1, Wood.Mm(200), Wood.Mm(100));
        Assert.False(Fits(Plank(Wood.Mm(100), Wood.Mm(300)), part));
        Assert.True(
            Fits(Plank(Wood.Mm(100), Wood.Mm(300)), part with { Grain = GrainDirection.Any })
        );
    }

    [Fact]
    public void Both_straight_edges_of_a_planed_board_need_no_width_allowance()
    {
        var rules = Wood.Bare(Kerf) with { WidthAllowance = Wood.Mm(6) };
        var part = Some(1, Wood.Mm(100), Wood.Mm(200));
        PlanningRequest On(Surfacing surfacing, Length width) =>
            Wood.Ask(rules, [Wood.Board("1", Wood.Mm(20), width, Wood.Mm(200), surfacing)], part);
        Assert.True(Fits(On(Surfacing.S4S, Wood.Mm(100))));
        Assert.False(Fits(On(Surfacing.S4S, Wood.Mm(100) - Tick)));
        Assert.True(Fits(On(Surfacing.S2S, Wood.Mm(106))));
        Assert.False(Fits(On(Surfacing.S2S, Wood.Mm(106) - Tick)));
    }

    [Theory]
    [InlineData(true, true, true)]
    [InlineData(false, true, false)]
    [InlineData(true, false, false)]
    public void A_part_wider_than_the_board_is_glued_up_where_part_and_course_allow(
        bool allowed,
        bool taught,
        bool fits
    )
    {
        var rules = Wood.Bare(Kerf) with
        {
            EdgeGluingTaught = taught,
            EdgeJointAllowance = Wood.Mm(1),
        };
        var part = Some(1, Wood.Mm(180), Wood.Mm(200)) with { GlueUpAllowed = allowed };
        var request = Wood.Ask(rules, [Plank(Wood.Mm(100), Wood.Mm(500))], part);
        var plan = Wood.Plan(request);
        Assert.Equal(fits, Fits(request));
        Assert.Equal(fits ? 2 : 0, plan.GlueUps.GetValueOrDefault("A"));
        if (fits)
            Assert.Equal(1, plan.Goals.Single(g => g.Goal is PlanGoal.GlueUps).Value);
    }

    [Theory]
    [InlineData(91, true)]
    [InlineData(90, false)]
    public void Each_edge_to_be_glued_needs_its_allowance(int width, bool fits)
    {
        var rules = Wood.Bare(Kerf) with { EdgeJointAllowance = Wood.Mm(1) };
        var part = Some(1, Wood.Mm(180), Wood.Mm(200)) with { GlueUpAllowed = true };
        // (180 + 2 x 1) / 2 = 91 mm for each of two strips; three strips have no room in length.
        Assert.Equal(fits, Fits(Wood.Ask(rules, [Plank(Wood.Mm(width), Wood.Mm(402))], part)));
    }

    [Theory]
    [InlineData(DefectReach.Through, false, false)]
    [InlineData(DefectReach.Through, true, false)]
    [InlineData(DefectReach.BackFace, false, false)]
    [InlineData(DefectReach.BackFace, true, true)]
    public void A_bad_place_lies_in_no_part_but_on_a_face_that_stays_hidden(
        DefectReach reach,
        bool accepts,
        bool fits
    )
    {
        var knot = new Defect(
            DefectKind.Knot,
            new(Wood.Mm(90), Wood.Mm(110), Wood.Mm(40), Wood.Mm(60)),
            reach
        );
        var board = Plank(Wood.Mm(100), Wood.Mm(200)) with { Defects = [knot] };
        var part = Some(1, Wood.Mm(100), Wood.Mm(200)) with { AcceptsHiddenDefect = accepts };
        Assert.Equal(fits, Fits(board, part));
    }

    [Fact]
    public void Bad_places_on_both_faces_leave_no_face_to_show()
    {
        Defect Knot(DefectReach reach, int from) =>
            new(
                DefectKind.Knot,
                new(Wood.Mm(from), Wood.Mm(from + 10), Wood.Mm(0), Wood.Mm(10)),
                reach
            );
        var part = Some(1, Wood.Mm(100), Wood.Mm(200)) with { AcceptsHiddenDefect = true };
        var board = Plank(Wood.Mm(100), Wood.Mm(200));
        Assert.True(
            Fits(
                board with
                {
                    Defects = [Knot(DefectReach.BackFace, 20), Knot(DefectReach.BackFace, 90)],
                },
                part
            )
        );
        Assert.False(
            Fits(
                board with
                {
                    Defects = [Knot(DefectReach.BackFace, 20), Knot(DefectReach.MarkedFace, 90)],
                },
                part
            )
        );
    }

    [Theory]
    [InlineData(100, 110, true)]
    [InlineData(99, 110, false)]
    [InlineData(100, 111, false)]
    public void Parts_lie_clear_on_either_side_of_a_split(int from, int to, bool fits)
    {
        var split = new Defect(
            DefectKind.Split,
            new(Wood.Mm(from), Wood.Mm(to), Wood.Mm(30), Wood.Mm(50))
        );
        var board = Plank(Wood.Mm(100), Wood.Mm(210)) with { Defects = [split] };
        Assert.Equal(fits, Fits(board, Some(2, Wood.Mm(100), Wood.Mm(100))));
    }

    [Fact]
    public void Kerf_and_waste_may_cover_a_bad_place()
    {
        var knot = new Defect(
            DefectKind.Hole,
            new(Wood.Mm(100), Wood.Mm(102), Wood.Mm(0), Wood.Mm(100))
        );
        var board = Plank(Wood.Mm(100), Wood.Mm(202)) with { Defects = [knot] };
        Assert.True(Fits(board, Some(2, Wood.Mm(100), Wood.Mm(100))));
    }

    [Theory]
    [InlineData(20, true)]
    [InlineData(19, false)]
    [InlineData(26, true)]
    [InlineData(27, false)]
    public void A_board_is_thick_enough_and_not_too_thick(int thickness, bool fits)
    {
        // The course asks students to plane away 6 mm at most.
        var board = Wood.Board("1", Wood.Mm(thickness), Wood.Mm(100), Wood.Mm(200));
        Assert.Equal(fits, Fits(board, Some(1, Wood.Mm(100), Wood.Mm(200))));
    }

    [Fact]
    public void An_open_dimension_stays_over_its_finished_size()
    {
        var part = Some(1, Wood.Mm(100), Wood.Mm(200)) with
        {
            Open = [new(PartDimension.Length, Wood.Mm(5), "the ends dry-fit")],
        };
        Assert.True(Fits(Plank(Wood.Mm(100), Wood.Mm(205)), part));
        Assert.False(Fits(Plank(Wood.Mm(100), Wood.Mm(205) - Tick), part));
    }

    [Fact]
    public void What_may_hide_a_bad_place_takes_it_and_leaves_the_clear_wood_to_the_others()
    {
        // 404 mm: both parts fit only if A covers the knot, which shows on the back alone.
        var knot = new Defect(
            DefectKind.Knot,
            new(Wood.Mm(50), Wood.Mm(60), Wood.Mm(40), Wood.Mm(50)),
            DefectReach.BackFace
        );
        var board = Wood.Board("1", Wood.Mm(20), Wood.Mm(100), Wood.Mm(404)) with
        {
            Defects = [knot],
        };
        CutPlan Planned(bool accepts) =>
            Wood.Plan(
                Wood.Ask(
                    Wood.Bare(Wood.Mm(2)),
                    [board],
                    Wood.Part("A", 1, Wood.Mm(20), Wood.Mm(100), Wood.Mm(200)) with
                    {
                        AcceptsHiddenDefect = accepts,
                    },
                    Wood.Part("B", 1, Wood.Mm(20), Wood.Mm(100), Wood.Mm(200))
                )
            );

        var plan = Planned(accepts: true);
        Assert.True(plan.IsComplete);
        Assert.Equal("A", plan.Boards[0].Sections[0].Strips[0].Blanks[0].Key.Part);
        Assert.False(Planned(accepts: false).IsComplete);
    }
}
