using ShopClass.Core.Drawings;
using ShopClass.Core.Measure;
using ShopClass.Core.Sawing;
using ShopClass.Core.Tests.Planning;
using Xunit;

namespace ShopClass.Core.Tests.Drawings;

public class PlanDrawingTests
{
    [Fact]
    public void Tape_marks_rise_from_the_start_and_name_what_ends_there()
    {
        var plan = Drawn.SidesAndPegs();
        var marks = PlanDrawing.TapeMarks(plan, "pine");
        var crosscuts = plan
            .Sequence.Cuts.Where(c => c.Kind is not CutKind.Rip)
            .Select(c => c.Position);
        Assert.Equal(crosscuts.Distinct().Order(), marks.Select(m => m.At));
        Assert.Equal("end trim", marks[0].Meaning);
        foreach (
            var blank in plan
                .Plan.Boards[0]
                .Sections.SelectMany(s => s.Strips)
                .SelectMany(s => s.Blanks)
        )
            Assert.Contains(
                marks,
                m =>
                    m.At == blank.To && m.Meaning.Contains($"{blank.Key}", StringComparison.Ordinal)
            );
    }

    [Fact]
    public void Kerfs_are_drawn_where_the_cuts_put_them()
    {
        var plan = Drawn.SidesAndPegs();
        var drawing = PlanDrawing.Of(plan, "pine", DrawingFrame.Wide);
        Assert.Equal(
            plan.Sequence.Cuts.Count,
            drawing.Shapes.Count(s => s is Box { Ink: Ink.Kerf })
        );
    }

    [Fact]
    public void A_finished_part_lies_dashed_within_its_blank()
    {
        var drawing = PlanDrawing.Of(Drawn.SidesAndPegs(), "pine", DrawingFrame.Wide);
        var blanks = drawing.Shapes.OfType<Box>().Where(b => b.Ink is Ink.Blank).ToList();
        var finished = drawing.Shapes.OfType<Box>().Where(b => b.Ink is Ink.Finished).ToList();
        Assert.Equal(5, finished.Count);
        Assert.All(
            finished,
            f =>
                Assert.Contains(
                    blanks,
                    b =>
                        b.X <= f.X
                        && b.Y <= f.Y
                        && f.X + f.Width <= b.X + b.Width
                        && f.Y + f.Height <= b.Y + b.Height
                )
        );
    }

    [Fact]
    public void The_words_name_every_blank_and_every_mark()
    {
        var plan = Drawn.SidesAndPegs();
        var drawing = PlanDrawing.Of(plan, "pine", DrawingFrame.Narrow);
        foreach (var name in (string[])["A1", "A2", "B1", "B2", "B3"])
            Assert.Contains($"Blank {name}, ", drawing.TextTwin, StringComparison.Ordinal);
        foreach (var mark in PlanDrawing.TapeMarks(plan, "pine"))
            Assert.Contains(
                $"Mark {LengthWriter.WriteWithUnit(mark.At, Precision.Sixteenth)} from the start: {mark.Meaning}.",
                drawing.TextTwin,
                StringComparison.Ordinal
            );
    }

    [Fact]
    public void Pieces_sawn_apart_are_drawn_apart()
    {
        var plan = Drawn.SidesAndPegs();
        var drawing = PlanDrawing.AtCut(plan, plan.Sequence.Cuts.Count + 1, DrawingFrame.Wide);
        var pieces = drawing
            .Shapes.OfType<Polygon>()
            .Where(p => p.Ink is Ink.Wood)
            .Select(Drawn.RoomOf)
            .ToList();
        Assert.Equal(plan.Rehearsal.Steps[^1].Pieces.Count, pieces.Count);
        for (var i = 0; i < pieces.Count; i++)
        for (var j = 0; j < i; j++)
        {
            var (a, b) = (pieces[i], pieces[j]);
            var gap = Math.Max(
                Math.Max(a.Left - b.Right, b.Left - a.Right),
                Math.Max(a.Top - b.Bottom, b.Top - a.Bottom)
            );
            Assert.True(gap > 5, $"pieces {i} and {j} are only {gap} apart");
        }
    }

    [Fact]
    public void There_is_no_cut_before_the_first_and_no_board_the_plan_does_not_know()
    {
        var plan = Drawn.SidesAndPegs();
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            PlanDrawing.AtCut(plan, 0, DrawingFrame.Wide)
        );
        Assert.Throws<ArgumentException>(() => PlanDrawing.Of(plan, "oak", DrawingFrame.Wide));
    }

    [Fact]
    public void Parts_are_drawn_once_each_and_all_to_one_scale()
    {
        var project = Drawn.SidesAndPegs().Request.Project;
        var boxes = PartsDrawing
            .Of(project, Precision.Sixteenth, DrawingFrame.Wide)
            .Shapes.OfType<Box>()
            .ToDictionary(b => b.Tag!, StringComparer.Ordinal);
        Assert.Equal(2, boxes.Count);
        Assert.Equal(14 / 4.0, boxes["A"].Width / boxes["B"].Width, 0.01);
        Assert.Equal(6 / 14.0, boxes["A"].Height / boxes["A"].Width, 0.01);
    }

    [Fact]
    public void An_empty_parts_list_says_so()
    {
        var drawing = PartsDrawing.Of(
            new() { Name = "new" },
            Precision.Millimetre,
            DrawingFrame.Narrow
        );
        Assert.Equal("No parts yet.", drawing.TextTwin);
    }
}
