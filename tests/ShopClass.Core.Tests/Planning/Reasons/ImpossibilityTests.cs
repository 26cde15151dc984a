using CsCheck;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Reasons;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Tests.Planning.Reasons;

public class ImpossibilityTests
{
    private static readonly Part Panel = Wood.Part("A", 2, Wood.Mm(20), Wood.Mm(100), Wood.Mm(300));

    private static Board Plank(int width, int length, params Defect[] bad) =>
        Wood.Board("1", Wood.Mm(20), Wood.Mm(width), Wood.Mm(length)) with
        {
            Defects = bad,
        };

    private static Defect Knot(int from, int to, DefectReach reach = DefectReach.Through) =>
        new(DefectKind.Knot, new(Wood.Mm(from), Wood.Mm(to), Wood.Mm(60), Wood.Mm(80)), reach);

    private static IReadOnlyList<Impossibility> On(Board board, params Part[] parts) =>
        Impossibilities.Of(Wood.Ask(Wood.Bare(Wood.Mm(2)), [board], parts));

    private static void Proves(
        string sentence,
        ImpossibilityKind kind,
        IReadOnlyList<Impossibility> found
    )
    {
        var proof = Assert.Single(found, f => f.Kind == kind);
        Assert.Equal(sentence, proof.Sentence);
        if (proof.Needed is { } needed)
            Assert.True(proof.There < needed);
    }

    [Fact]
    public void A_thin_board_is_proved_by_its_thickness()
    {
        var thick = Panel with { Finished = Panel.Finished with { Thickness = Wood.Mm(25) } };
        Proves(
            "Board 1 is 20 mm thick; A needs 25 mm.",
            ImpossibilityKind.Thickness,
            On(Plank(150, 900), thick)
        );
        Assert.Empty(On(Plank(150, 900), Panel));
    }

    [Fact]
    public void A_narrow_board_is_proved_by_its_width_unless_the_part_may_be_glued_up()
    {
        Proves(
            "A needs 100 mm of width; Board 1 is 99 mm wide, and A may not be glued up.",
            ImpossibilityKind.Width,
            On(Plank(99, 900), Panel)
        );
        Assert.DoesNotContain(On(Plank(100, 900), Panel), i => i.Kind is ImpossibilityKind.Width);
        Assert.Empty(On(Plank(99, 900), Panel with { GlueUpAllowed = true }));
    }

    [Fact]
    public void Where_no_gluing_is_taught_the_proof_by_width_says_so()
    {
        var request = Wood.Ask(
            Wood.Bare(Wood.Mm(2)) with
            {
                EdgeGluingTaught = false,
            },
            [Plank(99, 900)],
            Panel with
            {
                GlueUpAllowed = true,
            }
        );
        Proves(
            "A needs 100 mm of width; Board 1 is 99 mm wide, and this course teaches no edge gluing.",
            ImpossibilityKind.Width,
            Impossibilities.Of(request)
        );
    }

    [Fact]
    public void A_board_cut_up_by_a_knot_is_proved_by_its_longest_clear_run()
    {
        Proves(
            "A needs 300 mm of clear board, 100 mm wide; the longest clear run that wide is 299 mm.",
            ImpossibilityKind.Run,
            On(Plank(150, 600, Knot(299, 310)), Panel with { Quantity = 1 })
        );
        Assert.Empty(On(Plank(150, 600, Knot(300, 310)), Panel with { Quantity = 1 }));
    }

    [Fact]
    public void A_knot_at_the_edge_stops_no_run_that_fits_beside_it() =>
        // The knot lies from 60 to 80 across: 100 wide fits beyond it on a board 180 wide, and not on one of 179.
        Assert.Equal(
            [0, 1],
            new[] { 180, 179 }.Select(width =>
                On(Plank(width, 600, Knot(299, 310)), Panel with { Quantity = 1 }).Count
            )
        );

    [Fact]
    public void A_knot_on_one_face_stops_no_part_that_may_hide_it()
    {
        var hiding = Panel with { Quantity = 1, AcceptsHiddenDefect = true };
        Assert.Empty(On(Plank(150, 600, Knot(299, 310, DefectReach.BackFace)), hiding));
        Assert.Single(On(Plank(150, 600, Knot(299, 310)), hiding));
    }

    [Fact]
    public void Two_parts_too_wide_for_side_by_side_are_proved_one_after_another()
    {
        // The issue's own example, in its figures: two parts that need 18 3/8 in, and a run of 16 1/4 in.
        var rules = Wood.Bare(Wood.In(0, 1, 8)) with
        {
            Unit = UnitSystem.Inch,
            Precision = Precision.Sixteenth,
        };
        var part = Wood.Part("A", 2, Wood.In(0, 3, 4), Wood.In(7), Wood.In(9, 1, 8));
        var board = Wood.Board("1", Wood.In(0, 3, 4), Wood.In(9, 1, 4), Wood.In(26)) with
        {
            Defects =
            [
                new(DefectKind.Knot, new(Wood.In(16, 1, 4), Wood.In(18), Wood.In(4), Wood.In(5))),
            ],
        };
        Proves(
            "A1 and A2 cannot lie side by side. One after another they need 18 3/8 in of clear board; the longest clear run that wide is 16 1/4 in.",
            ImpossibilityKind.EndToEnd,
            Impossibilities.Of(Wood.Ask(rules, [board], part))
        );
        Assert.Empty(
            Impossibilities.Of(Wood.Ask(rules, [board with { Length = Wood.In(27, 1, 8) }], part))
        );
    }

    [Fact]
    public void Many_copies_are_counted_into_the_runs_there_are()
    {
        var four = Panel with { Quantity = 4 };
        Proves(
            "The 4 blanks A1 to A4 cannot lie side by side. One after another, the clear runs have room for 3 of them.",
            ImpossibilityKind.EndToEnd,
            On(Plank(150, 1200, Knot(620, 660)), four)
        );
        Assert.Empty(On(Plank(150, 1200, Knot(620, 660)), Panel with { Quantity = 3 }));
    }

    [Fact]
    public void Different_wide_parts_are_added_up_along_the_board()
    {
        Part[] parts = [Panel, Wood.Part("B", 1, Wood.Mm(20), Wood.Mm(90), Wood.Mm(200))];
        Proves(
            "No two blanks of A and B can lie side by side. One after another they need 804 mm with the kerfs between them; between the end trims the board has 803 mm.",
            ImpossibilityKind.EndToEnd,
            On(Plank(150, 803), parts)
        );
        Assert.Empty(On(Plank(150, 804), parts));
    }

    [Fact]
    public void A_board_with_too_little_wood_is_proved_by_area()
    {
        // Six of 40 x 300 with a 2 mm kerf on a board of 130: three to a section, so two sections, 602 mm.
        var slats = Wood.Part("A", 6, Wood.Mm(20), Wood.Mm(40), Wood.Mm(300));
        var proof = Assert.Single(On(Plank(130, 550), slats));
        Assert.Equal(ImpossibilityKind.Area, proof.Kind);
        Assert.StartsWith(
            "All blanks and the kerfs between them take at least ",
            proof.Sentence,
            StringComparison.Ordinal
        );
        Assert.Empty(On(Plank(130, 602), slats));
    }

    /// <summary>A proof holds for every plan, so where there is a plan there can be none.</summary>
    [Fact]
    public void What_can_be_planned_is_never_proved_impossible() =>
        RandomWood
            .Requests(parts: 4, boards: 2, defects: 3)
            .Sample(
                request =>
                {
                    if (Wood.Plan(request).IsComplete)
                        Assert.Empty(Impossibilities.Of(request).Select(i => i.Sentence));
                },
                iter: 150,
                threads: 1
            );

    [Fact]
    public void A_board_only_just_big_enough_is_never_proved_too_small() =>
        RandomWood
            .Requests(parts: 3, boards: 1, defects: 2)
            .Sample(
                request =>
                {
                    var shortfall = Verdicts
                        .Judge(request, Wood.Plan(request))
                        .Shortfalls.FirstOrDefault(s => s.Direction is PartDimension.Length);
                    if (shortfall is null)
                        return;
                    var board = request.Boards[0];
                    var enough = request with
                    {
                        Boards = [board with { Length = board.Length + shortfall.Amount }],
                    };
                    Assert.Empty(Impossibilities.Of(enough).Select(i => i.Sentence));
                },
                iter: 40,
                threads: 1
            );

    [Fact]
    public void A_verdict_of_too_small_carries_its_proofs_and_one_that_fits_has_none()
    {
        var small = Wood.Ask(Wood.Bare(Wood.Mm(2)), [Plank(150, 500)], Panel);
        var verdict = Verdicts.Judge(small, Wood.Plan(small));
        Assert.Equal(Impossibilities.Of(small).Select(i => i.Sentence), verdict.Proofs);
        Assert.NotEmpty(verdict.Proofs);
        var ample = small with { Boards = [Plank(150, 900)] };
        Assert.Empty(Verdicts.Judge(ample, Wood.Plan(ample)).Proofs);
    }
}
