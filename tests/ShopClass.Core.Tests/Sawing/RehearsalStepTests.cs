using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;
using Xunit;
using static ShopClass.Core.Tests.Sawing.HandDrawn;

namespace ShopClass.Core.Tests.Sawing;

/// <summary>What lies on the bench after each cut, and what it is called.</summary>
public class RehearsalStepTests
{
    [Fact]
    public void Steps_begin_with_the_whole_boards_of_the_plan()
    {
        var twoBoards = new BaseCase
        {
            Asking = r => r with { Boards = [.. r.Boards, Board(30, 6, "b2"), Board(9, 9, "b3")] },
            Planning = p =>
                p with
                {
                    Boards = [p.Boards[0] with { Sections = [p.Boards[0].Sections[0]] }, OnBoard2],
                },
        };
        twoBoards.Keeps();
        var first = twoBoards.Report.Steps[0];
        Assert.Equal(0, first.CutNumber);
        Assert.Equal(
            [
                new Piece("b1", Rect(0, 60, 0, 8), PieceFate.Stock),
                new Piece("b2", Rect(0, 30, 0, 6), PieceFate.Stock),
            ],
            first.Pieces
        );
    }

    [Fact]
    public void A_step_follows_each_cut_and_shows_all_pieces_as_they_lie()
    {
        var steps = new BaseCase().Report.Steps;
        Assert.Equal([0, 1, 2, 3, 4, 5, 6], steps.Select(s => s.CutNumber));
        Assert.Equal(
            [
                new Piece("b1", Rect(0, 0.875m, 0, 8), PieceFate.Waste),
                new Piece("b1", Rect(1, 60, 0, 8), PieceFate.Stock),
            ],
            steps[1].Pieces
        );
        Assert.Equal(
            [
                new Piece("b1", Rect(0, 0.875m, 0, 8), PieceFate.Waste),
                new Piece("b1", Rect(1, 26, 0, 5.25m), PieceFate.Blank, new("A", 1)),
                new Piece("b1", Rect(1, 26, 5.375m, 7.625m), PieceFate.Blank, new("B", 1)),
                new Piece("b1", Rect(1, 26, 7.75m, 8), PieceFate.Waste),
                new Piece("b1", Rect(26.125m, 51.125m, 0, 5.25m), PieceFate.Blank, new("A", 2)),
                new Piece("b1", Rect(26.125m, 51.125m, 5.375m, 8), PieceFate.Offcut),
                new Piece("b1", Rect(51.25m, 60, 0, 8), PieceFate.Waste),
            ],
            steps[6].Pieces
        );
    }

    [Fact]
    public void A_cut_that_cannot_be_made_leaves_everything_as_it_lies()
    {
        var report = new BaseCase().WithCut(1, c => c with { Piece = Rect(0, 50, 0, 8) }).Report;
        Assert.Equal(report.Steps[0].Pieces, report.Steps[1].Pieces);
        Assert.False(report.Passed);
    }

    [Theory]
    [InlineData("8", "1.5", PieceFate.Offcut)]
    [InlineData("7.9375", "1.5", PieceFate.Waste)]
    [InlineData("8", "1.4375", PieceFate.Waste)]
    public void A_leftover_is_an_offcut_when_it_is_long_and_wide_enough(
        decimal length,
        decimal width,
        PieceFate fate
    ) => Assert.Equal(fate, LeftoverOf(Board(25.125m + length, width)).Fate);

    [Theory]
    [InlineData(DefectReach.Through, PieceFate.Waste)]
    [InlineData(DefectReach.BackFace, PieceFate.Offcut)]
    public void A_defect_right_through_makes_a_leftover_waste(DefectReach reach, PieceFate fate) =>
        Assert.Equal(
            fate,
            LeftoverOf(
                Board(40, 4) with
                {
                    Defects = [new(DefectKind.Knot, Rect(30, 31, 1, 2), reach)],
                }
            ).Fate
        );

    [Theory]
    [InlineData("1", PieceFate.Offcut)]
    [InlineData("1.0625", PieceFate.Waste)]
    public void A_bad_end_does_not_count_towards_an_offcuts_length(decimal trim, PieceFate fate) =>
        Assert.Equal(fate, LeftoverOf(Board(34.125m, 4) with { TrimEnd = In(trim) }).Fate);

    private static BoardLayout OnBoard2 =>
        Layout("b2", Section(0, 25, Strip(0, 5.25m, Blank("A2", 0, 25))));

    /// <summary>What is left when a blank 25 in long and as wide as the board is sawn off its start.</summary>
    private static Piece LeftoverOf(Board board)
    {
        var width = (decimal)board.SmallestWidth.Ticks / Length.TicksPerInch;
        var plan = Plan(Layout("b1", Section(0, 25, Strip(0, width, Blank("A1", 0, 25)))));
        var report = Rehearse(Request([board], [Part("A", width, 24)]), plan);
        Assert.True(report.Passed);
        return report.Steps[^1].Pieces[^1];
    }
}
