using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Tests.Planning;

public class VerdictTests
{
    private static Verdict Judge(PlanningRequest request) =>
        Verdicts.Judge(request, Wood.Plan(request));

    [Fact]
    public void Boards_that_will_do_are_said_to_fit()
    {
        var verdict = Judge(DemoProjects.Find("wall shelf", UnitSystem.Inch));
        Assert.Equal(VerdictKind.Fits, verdict.Kind);
        Assert.Equal("Everything fits on Board 1.", verdict.Sentence);
        Assert.Empty(verdict.Shortfalls);
    }

    [Fact]
    public void Nothing_is_judged_without_boards_or_parts()
    {
        var request = DemoProjects.Find("wall shelf", UnitSystem.Inch);
        Assert.Equal(VerdictKind.NothingToJudge, Judge(request with { Boards = [] }).Kind);
        Assert.Equal(
            VerdictKind.NothingToJudge,
            Judge(request with { Project = request.Project with { Parts = [] } }).Kind
        );
    }

    [Fact]
    public void A_short_board_is_told_how_much_longer_or_wider_would_do()
    {
        // Two of 300 with a kerf of 2 between want 602; side by side they want 202 of width.
        var request = Wood.Ask(
            Wood.Bare(Wood.Mm(2)),
            [Wood.Board("1", Wood.Mm(20), Wood.Mm(150), Wood.Mm(500))],
            Wood.Part("A", 2, Wood.Mm(20), Wood.Mm(100), Wood.Mm(300))
        );
        var verdict = Judge(request);
        Assert.Equal(VerdictKind.TooSmall, verdict.Kind);
        Assert.Equal(
            [
                new("1", PartDimension.Width, Wood.Mm(52)),
                new Shortfall("1", PartDimension.Length, Wood.Mm(102)),
            ],
            verdict.Shortfalls
        );
        Assert.Equal(
            "Too narrow by 52 mm: with a board 52 mm wider, or with a board 102 mm longer, everything fits. As it is, not everything fits, and that is proven; the layout shown leaves out A2.",
            verdict.Sentence
        );
    }

    [Theory]
    [InlineData("bench hook")]
    [InlineData("wall shelf")]
    [InlineData("planter")]
    public void The_amount_named_is_enough_and_a_step_less_is_not(string name)
    {
        var request = DemoProjects.Find(name, UnitSystem.Inch);
        var step = request.Rules.Precision.Step();
        var board = request.Boards[0] with { Length = request.Boards[0].Length - Wood.In(10) };
        request = request with { Boards = [board] };
        var shortfall = Judge(request).Shortfalls.Single(s => s.Direction is PartDimension.Length);
        bool Fits(Length more) =>
            Wood.Plan(
                request with
                {
                    Boards = [board with { Length = board.Length + more }],
                }
            ).IsComplete;
        Assert.True(Fits(shortfall.Amount));
        Assert.False(Fits(shortfall.Amount - step));
    }

    [Fact]
    public void A_thin_board_is_told_how_much_thicker_would_do()
    {
        var request = Wood.Ask(
            Wood.Bare(Wood.Mm(2)),
            [Wood.Board("1", Wood.Mm(18), Wood.Mm(150), Wood.Mm(500))],
            Wood.Part("A", 1, Wood.Mm(20), Wood.Mm(100), Wood.Mm(300))
        );
        Assert.Equal(
            [new Shortfall("1", PartDimension.Thickness, Wood.Mm(2))],
            Judge(request).Shortfalls
        );
    }

    [Fact]
    public void A_glue_up_is_named_as_the_route()
    {
        var request = Wood.Ask(
            Wood.Bare(Wood.Mm(2)),
            [Wood.Board("1", Wood.Mm(20), Wood.Mm(100), Wood.Mm(700))],
            Wood.Part("A", 1, Wood.Mm(20), Wood.Mm(180), Wood.Mm(300)) with
            {
                GlueUpAllowed = true,
            }
        );
        var verdict = Judge(request);
        Assert.Equal(VerdictKind.FitsByRoute, verdict.Kind);
        Assert.Equal(["Glue up A from 2 strips"], verdict.Routes);
    }

    [Fact]
    public void Rough_and_thick_boards_name_the_planing()
    {
        var request = DemoProjects.Find("peg rail", UnitSystem.Inch);
        var board = request.Boards[0];
        var thick = Judge(request with { Boards = [board with { Thickness = Wood.In(0, 7, 8) }] });
        Assert.Equal(
            ["Plane A from 7/8 in to 3/4 in", "Plane B from 7/8 in to 3/4 in"],
            thick.Routes
        );
        var rough = Judge(
            request with
            {
                Boards =
                [
                    board with
                    {
                        Thickness = Wood.In(1),
                        Surfacing = Surfacing.Rough,
                        Length = Wood.In(40),
                        WidthAtStart = Wood.In(6),
                        WidthAtMiddle = Wood.In(6),
                        WidthAtEnd = Wood.In(6),
                    },
                ],
            }
        );
        Assert.Equal(["Plane both faces of Board 1"], rough.Routes);
        Assert.Contains(
            "Board 1 is rough: both faces are planed, about 3/32 in each, before any reference mark.",
            rough.Cautions
        );
    }

    [Fact]
    public void A_rough_board_is_refused_where_no_planing_is_taught()
    {
        var request = DemoProjects.Find("peg rail", UnitSystem.Inch);
        var verdict = Judge(
            request with
            {
                Rules = request.Rules with { PlaningTaught = false },
                Boards = [request.Boards[0] with { Surfacing = Surfacing.Rough }],
            }
        );
        Assert.Equal(VerdictKind.TooSmall, verdict.Kind);
        Assert.Contains("teaches no planing", verdict.Sentence, StringComparison.Ordinal);
    }

    /// <summary>Specific gravity at 12 %: white oak 0.68, eastern white pine 0.35 (Wood Handbook FPL-GTR-190, Table 5-3a).</summary>
    [Theory]
    [InlineData("white-oak", true)]
    [InlineData("eastern-white-pine", false)]
    public void Wood_heavier_than_the_course_s_limit_is_called_hard_going(string species, bool hard)
    {
        Assert.NotNull(SpeciesTable.Find(species));
        var request = DemoProjects.Find("wall shelf", UnitSystem.Inch);
        var verdict = Judge(
            request with
            {
                Boards = [request.Boards[0] with { SpeciesId = species }],
            }
        );
        Assert.Equal(
            hard,
            verdict.Cautions.Any(c => c.Contains("hard going", StringComparison.Ordinal))
        );
    }
}
