using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Reasons;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Tests.Planning.Reasons;

/// <summary>Each kind of reason in a case that gives it, and one that does not.</summary>
public class ReasonTests
{
    private static Part Part(string letter, int quantity, int width, int length) =>
        Wood.Part(letter, quantity, Wood.Mm(20), Wood.Mm(width), Wood.Mm(length));

    private static Board Plank(string id, int width, int length, params Defect[] bad) =>
        Wood.Board(id, Wood.Mm(20), Wood.Mm(width), Wood.Mm(length)) with
        {
            Defects = bad,
        };

    private static Defect Knot(int from, int to, DefectReach reach = DefectReach.Through) =>
        new(DefectKind.Knot, new(Wood.Mm(from), Wood.Mm(to), Wood.Mm(40), Wood.Mm(60)), reach);

    private static IReadOnlyList<BlankReason> Why(Board[] boards, params Part[] parts)
    {
        var made = CheckedPlan.Make(
            Wood.Ask(Wood.Bare(Wood.Mm(2)), boards, parts),
            cancel: TestContext.Current.CancellationToken
        );
        Assert.True(made.Plan.IsComplete);
        var reasons = BlankReasons.Of(made);
        Assert.All(reasons, r => Assert.Null(ClaimCheck.ProblemWith(r, made)));
        return reasons;
    }

    private static void Says(
        string blank,
        ReasonKind kind,
        string sentence,
        IReadOnlyList<BlankReason> reasons
    ) =>
        Assert.Equal(
            sentence,
            Assert.Single(reasons, r => r.Kind == kind && $"{r.Blank}" == blank).Sentence
        );

    private static void Never(ReasonKind kind, IReadOnlyList<BlankReason> reasons) =>
        Assert.DoesNotContain(reasons, r => r.Kind == kind);

    [Fact]
    public void The_only_board_of_the_right_thickness()
    {
        var thin = Plank("2", 100, 400) with { Thickness = Wood.Mm(12) };
        var slip = Wood.Part("B", 1, Wood.Mm(12), Wood.Mm(50), Wood.Mm(200));
        Says(
            "B1",
            ReasonKind.OnlyBoard,
            "Only Board 2 has the right thickness for it.",
            Why([Plank("1", 100, 400), thin], Part("A", 1, 50, 200), slip)
        );
        Never(
            ReasonKind.OnlyBoard,
            Why([Plank("1", 100, 400), Plank("2", 100, 400)], Part("A", 1, 50, 200))
        );
    }

    [Fact]
    public void The_only_board_big_enough() =>
        Says(
            "A1",
            ReasonKind.OnlyBoard,
            "Only Board 2 is big enough for it and of the right thickness.",
            Why([Plank("1", 100, 400), Plank("2", 100, 600)], Part("A", 1, 50, 500))
        );

    [Fact]
    public void Nothing_left_over_from_the_first_board()
    {
        var second = Why([Plank("1", 100, 400), Plank("2", 100, 400)], Part("A", 2, 100, 300));
        Says(
            "A2",
            ReasonKind.NothingLeftElsewhere,
            "No piece left over from Board 1 is big enough for it.",
            second
        );
        Never(
            ReasonKind.NothingLeftElsewhere,
            Why([Plank("1", 100, 700), Plank("2", 100, 700)], Part("A", 2, 100, 300))
        );
    }

    [Fact]
    public void A_hidden_face_over_a_knot()
    {
        var hiding = Part("A", 1, 100, 300) with { AcceptsHiddenDefect = true };
        Says(
            "A1",
            ReasonKind.HiddenFace,
            "It covers the knot at 100 mm, which shows only on the back face and becomes its hidden face.",
            Why([Plank("1", 100, 400, Knot(100, 120, DefectReach.BackFace))], hiding)
        );
        Never(ReasonKind.HiddenFace, Why([Plank("1", 100, 400)], hiding));
    }

    [Fact]
    public void The_only_clear_run_long_enough()
    {
        Says(
            "A1",
            ReasonKind.OnlyClearRun,
            "The only clear run of Board 1 long enough for it, at its width, is this one: 480 mm, from the knot at 120 mm to the far end.",
            Why([Plank("1", 100, 600, Knot(100, 120))], Part("A", 1, 100, 300))
        );
        Never(
            ReasonKind.OnlyClearRun,
            Why([Plank("1", 100, 600, Knot(290, 300))], Part("A", 1, 100, 250))
        );
    }

    [Fact]
    public void Past_a_bad_place_where_there_is_more_than_one_run() =>
        Says(
            "A2",
            ReasonKind.PastABadPlace,
            "It begins where the knot ends, at 300 mm, so no clear wood is lost between them.",
            Why([Plank("1", 100, 600, Knot(290, 300))], Part("A", 2, 100, 250))
        );

    [Fact]
    public void On_one_line_with_a_blank_beside_it()
    {
        // A1 has to begin past the knot; C1 and B1 beside it fill the same length, from the beginning of the section or up to its end.
        Part[] parts = [Part("A", 1, 60, 300), Part("B", 1, 20, 140), Part("C", 1, 20, 158)];
        Says(
            "C1",
            ReasonKind.OneLine,
            "It could begin at 0 mm, but begins at 10 mm, on one line with A1: one line to mark instead of 2.",
            Why([Plank("1", 100, 400, Knot(0, 10))], parts)
        );
        Never(ReasonKind.OneLine, Why([Plank("1", 100, 400)], parts));
    }

    [Fact]
    public void Strips_glued_to_one_another_in_one_section()
    {
        // Wider than the board, so two strips of 90, one after the other in one long strip.
        var panel = Part("A", 1, 180, 300) with
        {
            GlueUpAllowed = true,
        };
        Says(
            "A1.1",
            ReasonKind.GlueMate,
            "It shares a section with A1.2, which it is glued to: their grain and colour come from the same stretch of board.",
            Why([Plank("1", 150, 610)], panel)
        );
        Never(ReasonKind.GlueMate, Why([Plank("1", 180, 610)], panel));
    }

    [Fact]
    public void One_crosscut_for_two_blanks_of_one_length()
    {
        Says(
            "A1",
            ReasonKind.OneCrosscut,
            "It shares a section with B1 of the same sawn length, so one crosscut (cut 1) serves both: one line to mark instead of 2.",
            Why([Plank("1", 100, 900)], Part("A", 1, 60, 700), Part("B", 1, 38, 700))
        );
        Never(ReasonKind.OneCrosscut, Why([Plank("1", 100, 700)], Part("A", 2, 100, 300)));
    }

    [Fact]
    public void Marked_together_where_the_rip_comes_first()
    {
        var reasons = Why([Plank("1", 100, 600)], Part("A", 1, 60, 300), Part("B", 1, 38, 300));
        Says(
            "A1",
            ReasonKind.GangMarked,
            "It lies beside B1, from the same line to the same line, so both are marked together, square across the board.",
            reasons
        );
        Never(
            ReasonKind.GangMarked,
            Why([Plank("1", 100, 320)], Part("A", 1, 60, 300), Part("B", 1, 38, 200))
        );
    }

    [Fact]
    public void A_shorter_blank_within_the_length_of_a_longer_one()
    {
        var reasons = Why([Plank("1", 100, 320)], Part("A", 1, 60, 300), Part("B", 1, 38, 200));
        Says(
            "B1",
            ReasonKind.WithinLength,
            "It comes out of the width beside A1, within the length that takes anyway; by itself it would use up 200 mm more of the board's length.",
            reasons
        );
        Says(
            "A1",
            ReasonKind.RoomBeside,
            "It leaves width for B1 beside it, within its own length.",
            reasons
        );
        Never(ReasonKind.WithinLength, Why([Plank("1", 100, 700)], Part("A", 2, 100, 300)));
    }

    [Fact]
    public void One_rip_for_two_blanks_in_line()
    {
        Says(
            "A1",
            ReasonKind.OneRip,
            "It lies in line with A2, so one rip (cut 2) serves both: one line to mark instead of 2.",
            Why([Plank("1", 180, 700)], Part("A", 2, 100, 300))
        );
        Never(ReasonKind.OneRip, Why([Plank("1", 100, 700)], Part("A", 2, 100, 300)));
    }

    [Fact]
    public void The_whole_width_without_a_rip()
    {
        Says(
            "A1",
            ReasonKind.WholeWidth,
            "It takes the whole width of Board 1, so it saves a rip of 300 mm.",
            Why([Plank("1", 100, 700)], Part("A", 2, 100, 300))
        );
        Never(ReasonKind.WholeWidth, Why([Plank("1", 200, 700)], Part("A", 1, 100, 300)));
    }

    [Fact]
    public void One_offcut_at_the_far_end()
    {
        Says(
            "A1",
            ReasonKind.OffcutInOnePiece,
            "Everything is packed towards the start of Board 1, so the 398 mm left at the far end stay in one piece.",
            Why([Plank("1", 200, 700)], Part("A", 1, 100, 300))
        );
        Says(
            "A1",
            ReasonKind.FirstOnTheBoard,
            "It begins at the start of Board 1, where the tape is hooked.",
            Why([Plank("1", 200, 400)], Part("A", 1, 100, 300))
        );
    }

    /// <summary>Laid out by hand: the planner would put both in one strip.</summary>
    [Fact]
    public void The_next_in_turn_where_nothing_else_is_to_say()
    {
        var request = Wood.Ask(
            Wood.Bare(Wood.Mm(2)),
            [Plank("1", 180, 520)],
            Part("A", 1, 100, 300),
            Part("B", 1, 90, 200)
        );
        var plan = Wood.Plan(request) with
        {
            Boards = [new("1", [Alone("A", 0, 300, 100), Alone("B", 302, 502, 90)])],
        };
        var sequence = Sequencer.Order(request, plan);
        var rehearsal = Rehearsal.Replay(request, plan, sequence);
        Assert.True(rehearsal.Passed);
        var made = new CheckedPlan(
            request,
            plan,
            sequence,
            rehearsal,
            Verdicts.Judge(request, plan)
        );
        Says(
            "B1",
            ReasonKind.NextInTurn,
            "It is the next along the board after A1, on wood that is clear for it.",
            BlankReasons.Of(made)
        );
    }

    private static Section Alone(string letter, int from, int to, int width)
    {
        var size = new RoughSize(Wood.Mm(20), Wood.Mm(width), Wood.Mm(to - from));
        return new(
            Wood.Mm(from),
            Wood.Mm(to),
            [
                new(
                    Length.Zero,
                    Wood.Mm(width),
                    [new(new(letter, 1), Wood.Mm(from), Wood.Mm(to), size)]
                ),
            ]
        );
    }

    [Fact]
    public void Surplus_length_is_kept_to_the_end_of_the_section()
    {
        var rules = Wood.Bare(Wood.Mm(2)) with { LengthAllowance = Wood.Mm(10) };
        var request = Wood.Ask(
            rules,
            [Plank("1", 100, 320)],
            Part("A", 1, 60, 300),
            Part("B", 1, 38, 295)
        );
        Says(
            "B1",
            ReasonKind.SurplusLength,
            "It keeps 5 mm more than it needs along the board, up to the end of its section, until it is brought to size: that saves a rough crosscut of 38 mm.",
            BlankReasons.Of(
                CheckedPlan.Make(request, cancel: TestContext.Current.CancellationToken)
            )
        );
        Never(
            ReasonKind.SurplusLength,
            Why([Plank("1", 100, 320)], Part("A", 1, 60, 300), Part("B", 1, 38, 200))
        );
    }

    [Fact]
    public void Surplus_width_is_kept_where_it_would_be_a_sliver()
    {
        Says(
            "A1",
            ReasonKind.SurplusWidth,
            "It keeps 10 mm more than it needs across the board until it is brought to size, instead of a rip of 300 mm for a strip too narrow to keep.",
            Why([Plank("1", 110, 400)], Part("A", 1, 100, 300))
        );
        Never(ReasonKind.SurplusWidth, Why([Plank("1", 100, 400)], Part("A", 1, 100, 300)));
    }
}
