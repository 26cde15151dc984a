using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;
using Xunit;
using static ShopClass.Core.Tests.Sawing.HandDrawn;

namespace ShopClass.Core.Tests.Sawing;

/// <summary>The order of the cuts. All of it is common practice in hand sawing; the limits are the course's own.</summary>
public class OrderTests
{
    [Fact]
    public void The_bad_end_goes_before_anything_else_is_sawn()
    {
        var cuts = new BaseCase().Sequence.Cuts;
        Assert.Equal(CutKind.EndTrim, cuts[0].Kind);
        Assert.Equal(In(1), cuts[0].Position);
        Assert.Equal(Rect(0.875m, 1, 0, 8), cuts[0].Kerf);
    }

    [Fact]
    public void Boards_are_crosscut_to_lengths_then_ripped_to_strips_then_crosscut_to_blanks()
    {
        var cuts = Cuts(
            Board(96, 8),
            Section(0, 40, Strip(0, 3, Blank("A1", 0, 19), Blank("A2", 19.125m, 40))),
            Section(40.125m, 80, Strip(0, 5, Blank("B1", 40.125m, 60), Blank("B2", 60.125m, 80)))
        );
        Assert.Equal(
            "crosscut 80, crosscut 40, rip 3, rip 5, crosscut 19, crosscut 60",
            Summary(cuts)
        );
    }

    [Fact]
    public void Neighbours_with_the_same_rip_lines_are_ripped_as_one_and_crosscut_apart_afterwards()
    {
        var cuts = Cuts(
            Board(60.125m, 8),
            Section(0, 30, Strip(0, 3, Blank("A1", 0, 30))),
            Section(30.125m, 60.125m, Strip(0, 3, Blank("A2", 30.125m, 60.125m)))
        );
        Assert.Equal("rip 3, crosscut 30", Summary(cuts));
        Assert.Equal(In(60.125m), cuts[0].SawnLength);
    }

    [Fact]
    public void Neighbours_with_other_rip_lines_come_apart_before_the_rip()
    {
        var cuts = Cuts(
            Board(60.125m, 8),
            Section(0, 30, Strip(0, 3, Blank("A1", 0, 30))),
            Section(30.125m, 60.125m, Strip(0, 4, Blank("A2", 30.125m, 60.125m)))
        );
        Assert.Equal("crosscut 30, rip 3, rip 4", Summary(cuts));
    }

    [Fact]
    public void Neighbours_do_not_stay_joined_over_a_leftover_that_is_worth_keeping()
    {
        // 10 1/4 in between them: 10 in when both kerfs are gone, and 8 in is worth keeping.
        var cuts = Cuts(
            Board(70.25m, 8),
            Section(0, 30, Strip(0, 3, Blank("A1", 0, 30))),
            Section(40.25m, 70.25m, Strip(0, 3, Blank("A2", 40.25m, 70.25m)))
        );
        Assert.Equal("crosscut 30, crosscut 40.25, rip 3, rip 3", Summary(cuts));
    }

    [Fact]
    public void A_length_too_short_for_the_saw_bench_is_ripped_while_it_is_still_joined()
    {
        var cuts = Cuts(
            Board(96, 8),
            Section(0, 14, Strip(0, 3, Blank("A1", 0, 14))),
            Section(14.125m, 28.125m, Strip(0, 3, Blank("A2", 14.125m, 28.125m)))
        );
        Assert.Equal("crosscut 28.125, rip 3, crosscut 14", Summary(cuts));
        Assert.Equal(Support.SawBench, cuts[1].Support);
        Assert.Null(cuts[1].HoldNote);
    }

    [Fact]
    public void A_length_too_short_for_the_saw_bench_keeps_its_waste_until_it_is_ripped()
    {
        var cuts = Cuts(Board(25, 8), Section(0, 20, Strip(0, 3, Blank("A1", 0, 20))));
        Assert.Equal("rip 3, crosscut 20", Summary(cuts));
        Assert.Equal((Support.SawBench, In(25)), (cuts[0].Support, cuts[0].SawnLength));
    }

    [Fact]
    public void Waste_with_a_knot_in_it_is_not_kept_for_the_rip()
    {
        var knotty = Board(25, 8) with { Defects = [new(DefectKind.Knot, Rect(22, 23, 2, 4))] };
        var cuts = Cuts(knotty, Section(0, 20, Strip(0, 3, Blank("A1", 0, 20))));
        Assert.Equal("trim 20, rip 3", Summary(cuts));
        Assert.Equal(Support.Vise, cuts[1].Support);
    }

    [Fact]
    public void A_rip_that_stays_too_short_goes_to_the_vise_and_is_sawn_from_both_ends()
    {
        var cuts = Cuts(Board(20, 8), Section(0, 20, Strip(0, 3, Blank("A1", 0, 20))));
        Assert.Equal(Support.Vise, cuts[0].Support);
        Assert.Equal("shorter than 24 in: rip it in the vise, from both ends", cuts[0].HoldNote);
        Assert.Contains("turn it end for end", cuts[0].Hold, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("24", Support.SawBench)]
    [InlineData("23.9375", Support.Vise)]
    public void A_rip_needs_the_saw_bench_limit_to_be_held_under_the_knee(
        decimal length,
        Support support
    )
    {
        var cuts = Cuts(Board(length, 8), Section(0, length, Strip(0, 3, Blank("A1", 0, length))));
        Assert.Equal(support, Assert.Single(cuts).Support);
    }

    [Theory]
    [InlineData("6", Support.BenchHook)]
    [InlineData("5.9375", Support.Vise)]
    public void A_crosscut_needs_the_bench_hook_limit_on_its_longer_side(
        decimal length,
        Support support
    )
    {
        var cuts = Cuts(
            Board(length + 5, 3),
            Section(
                0,
                length + 5,
                Strip(0, 3, Blank("A1", 0, length), Blank("A2", length + 0.125m, length + 5))
            )
        );
        Assert.Equal(support, Assert.Single(cuts).Support);
        Assert.Equal(support is Support.Vise, cuts[0].HoldNote is not null);
    }

    [Fact]
    public void Short_pieces_stay_joined_to_a_longer_one_until_the_last()
    {
        // 9 in, 5 in and 5 1/2 in from one strip: with the 9 in piece off first, nothing of 6 in would be left to hold.
        var cuts = Cuts(
            Board(19.75m, 3),
            Section(
                0,
                19.75m,
                Strip(
                    0,
                    3,
                    Blank("A1", 0, 9),
                    Blank("A2", 9.125m, 14.125m),
                    Blank("A3", 14.25m, 19.75m)
                )
            )
        );
        Assert.Equal("crosscut 14.125, crosscut 9", Summary(cuts));
        Assert.All(cuts, c => Assert.Equal(Support.BenchHook, c.Support));
        Assert.Contains("long enough to hold", cuts[0].Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void The_longest_leftover_comes_off_first_where_that_leaves_enough_to_hold()
    {
        var cuts = Cuts(
            Board(96, 8),
            Section(0, 30, Strip(0, 8, Blank("A1", 0, 30))),
            Section(30.125m, 60.125m, Strip(0, 8, Blank("A2", 30.125m, 60.125m)))
        );
        Assert.Equal("crosscut 60.125, crosscut 30", Summary(cuts));
        Assert.Contains("leftover of", cuts[0].Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void The_leftover_stays_on_where_it_is_needed_to_hold_the_rest()
    {
        // Taken off first, the leftover would leave 10 1/8 in, whose halves are too short for the bench hook.
        var cuts = Cuts(
            Board(22, 8),
            Section(0, 5, Strip(0, 8, Blank("A1", 0, 5))),
            Section(5.125m, 10.125m, Strip(0, 8, Blank("A2", 5.125m, 10.125m)))
        );
        Assert.Equal("crosscut 5, crosscut 10.125", Summary(cuts));
        Assert.All(cuts, c => Assert.Equal(Support.BenchHook, c.Support));
    }

    [Fact]
    public void A_section_that_needs_no_rip_is_crosscut_straight_into_its_blanks()
    {
        var cuts = Cuts(
            Board(60, 8),
            Section(0, 60, Strip(0, 8, Blank("A1", 0, 30), Blank("A2", 30.125m, 60)))
        );
        Assert.Equal("crosscut 30", Summary(cuts));
        Assert.Equal("A1 and A2", cuts[0].Leaves);
    }

    [Fact]
    public void The_kerf_lies_on_the_waste_side_and_between_two_blanks()
    {
        var cuts = Cuts(
            Board(60, 8),
            Section(2, 60, Strip(1, 4, Blank("A1", 2, 30)), Strip(4.125m, 7, Blank("A2", 2, 30)))
        );
        Assert.Equal(
            [(In(0.875m), In(1)), (In(4), In(4.125m)), (In(7), In(7.125m))],
            cuts.Where(c => c.Kind is CutKind.Rip).Select(c => (c.Kerf.Near, c.Kerf.Far))
        );
    }

    [Fact]
    public void On_a_tapered_board_waste_beyond_the_last_strip_is_ripped_off()
    {
        var tapered = Board(30, 8) with { Surfacing = Surfacing.Rough, WidthAtStart = In(9) };
        var toTheEdge = Cuts(tapered, Section(0, 30, Strip(0, 8, Blank("A1", 0, 30))));
        var short_ = Cuts(tapered, Section(0, 30, Strip(0, 7.5m, Blank("A1", 0, 30))));
        Assert.Empty(toTheEdge);
        Assert.Equal("rip 7.5", Summary(short_));
    }

    [Fact]
    public void Every_cut_of_the_breakdown_is_third_class_to_a_pencil_line_with_a_hand_saw() =>
        Assert.All(
            new BaseCase().Sequence.Cuts,
            c =>
            {
                Assert.Equal((CutClass.Third, LineKind.Pencil), (c.Class, c.Line));
                Assert.Equal(c.Kind is CutKind.Rip ? SawKind.HandRip : SawKind.HandCrosscut, c.Saw);
                Assert.NotEmpty(c.Reason);
                Assert.Contains("light strokes", c.Hold, StringComparison.Ordinal);
            }
        );

    [Fact]
    public void Nothing_drawn_by_hand_makes_the_sequencer_or_the_rehearsal_throw()
    {
        var overlapping = Section(
            5,
            70,
            Strip(3, 9, Blank("A1", 0, 200), Blank("A1", 30, 31)),
            Strip(2, 4, Blank("Z9", 30, 20))
        );
        var plan = Plan(Layout("b1", overlapping, overlapping), Layout("b9"));
        var report = Rehearse(Request([Board(60, 8)], [Part("A", 5, 24)]), plan);
        Assert.False(report.Passed);
    }

    private static IReadOnlyList<Cut> Cuts(Board board, params Section[] sections) =>
        Sequencer.Order(Request([board], []), Plan(Layout(board.Id, sections))).Cuts;

    private static string Summary(IReadOnlyList<Cut> cuts) =>
        string.Join(
            ", ",
            cuts.Select(c =>
                (
                    c.Kind is CutKind.EndTrim ? "trim "
                    : c.Kind is CutKind.Rip ? "rip "
                    : "crosscut "
                ) + $"{(decimal)c.Position.Ticks / Length.TicksPerInch:0.####}"
            )
        );
}
