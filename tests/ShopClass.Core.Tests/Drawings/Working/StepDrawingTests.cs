using ShopClass.Core.Drawings;
using ShopClass.Core.Drawings.Working;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Core.Tests.Planning;
using Xunit;

namespace ShopClass.Core.Tests.Drawings.Working;

public class StepDrawingTests
{
    private static IReadOnlyList<Joint> ToteJoints { get; } =
    [
        new()
        {
            Kind = JointKind.Notch,
            Part = "A",
            Mate = "B",
            Depth = Wood.In(0, 1, 2),
            Width = Wood.In(4),
            Side = JointSide.Both,
            Positions = [Length.Zero],
        },
        new()
        {
            Kind = JointKind.Dado,
            Part = "A",
            Mate = "C",
            Depth = Wood.In(0, 1, 4),
            Width = Wood.In(0, 1, 2),
            Positions = [Wood.In(0, 1, 2)],
        },
        new()
        {
            Kind = JointKind.MortiseAndTenon,
            Part = "A",
            Mate = "D",
            Depth = Wood.In(0, 3, 4),
            Width = Wood.In(1, 1, 4),
            Across = Wood.In(0, 1, 2),
            Positions = [Wood.In(7, 1, 4)],
        },
    ];

    private static readonly CheckedPlan Tote = Planned("tool tote", ToteJoints);
    private static readonly WorkSequence Right = WorkWriter.Write(Tote, Hand.Right);
    private static readonly WorkSequence Left = WorkWriter.Write(Tote, Hand.Left);

    public static TheoryData<DrawingFrame> Frames =>
        new(DrawingFrame.Wide, DrawingFrame.Narrow, new DrawingFrame(239, 7.5));

    [Theory]
    [MemberData(nameof(Frames))]
    public void Every_step_but_practice_has_a_picture_within_its_frame(DrawingFrame frame) =>
        Assert.All(
            Right.Steps,
            step =>
            {
                var drawing = StepDrawing.Of(Tote, Right, step.Number, frame);
                Assert.Equal(step.Kind is StepKind.Practise, drawing is null);
                Assert.All(
                    drawing?.Shapes ?? [],
                    shape =>
                    {
                        var (left, top, right, bottom) = Drawn.RoomOf(shape);
                        Assert.True(
                            left >= -0.5
                                && top >= -0.5
                                && right <= drawing!.Width + 0.5
                                && bottom <= drawing.Height + 0.5,
                            $"step {step.Number}, {step.Title}: {shape} leaves {drawing!.Width} x {drawing.Height}"
                        );
                    }
                );
            }
        );

    [Fact]
    public void What_comes_off_a_piece_is_hatched_beyond_its_knife_line_on_the_side_of_the_waste()
    {
        foreach (var work in new[] { Right, Left })
        {
            var step = work.Steps.First(s =>
                s.Kind is StepKind.CutToLength && s.WasteSide is not null
            );
            var drawing = StepDrawing.Of(Tote, work, step.Number, DrawingFrame.Wide)!;
            var line = Assert.Single(drawing.Shapes.OfType<Line>(), l => l.Ink is Ink.KnifeLine);
            var waste = Assert.Single(drawing.Shapes.OfType<Box>(), b => b.Ink is Ink.Waste);

            if (work.Hand is Hand.Right)
                Assert.Equal(line.X1, waste.X, 0.1);
            else
                Assert.Equal(line.X1, waste.X + waste.Width, 0.1);
        }
    }

    [Fact]
    public void The_supporting_hand_lies_on_the_kept_side()
    {
        foreach (var work in new[] { Right, Left })
        {
            var step = work.Steps.First(s =>
                s.Kind is StepKind.CutToLength && s.Support is Support.BenchHook
            );
            var drawing = StepDrawing.Of(Tote, work, step.Number, DrawingFrame.Wide)!;
            var line = drawing.Shapes.OfType<Line>().First(l => l.Ink is Ink.KnifeLine);
            var hand = drawing.Shapes.OfType<Label>().Single(l => l.Text == "hand");

            Assert.Equal(work.Hand is Hand.Right, hand.X < line.X1);
        }
    }

    /// <summary>Large print of very short pieces: pegs 4 in long, a fence of 5 in; what holds them is named clear of all else.</summary>
    [Theory]
    [InlineData("peg rail")]
    [InlineData("bench hook")]
    public void What_holds_a_short_piece_is_named_clear_of_every_other_word(string project)
    {
        var plan = CheckedPlan.Make(
            DemoProjects.Find(project, UnitSystem.Inch),
            cancel: TestContext.Current.CancellationToken
        );
        var large = new DrawingFrame(239, 11);
        var named = 0;
        foreach (var hand in new[] { Hand.Right, Hand.Left })
        {
            var work = WorkWriter.Write(plan, hand);
            foreach (
                var step in work.Steps.Where(s =>
                    s.Kind is StepKind.SquareEnd or StepKind.CutToLength
                )
            )
            {
                var labels = StepDrawing
                    .Of(plan, work, step.Number, large)!
                    .Shapes.OfType<Label>()
                    .ToList();
                var holding = labels.Where(l =>
                    l.Text is "hand" or "jaws"
                    || l.Text.StartsWith("fence", StringComparison.Ordinal)
                );
                foreach (var label in holding)
                {
                    named++;
                    Assert.All(
                        labels.Where(l => l != label),
                        other =>
                            Assert.False(
                                Meet(label, other),
                                $"{project}, step {step.Number}: “{label.Text}” stands in “{other.Text}”"
                            )
                    );
                }
            }
        }

        Assert.True(named > 10);
    }

    private static bool Meet(Label one, Label other)
    {
        var (a, b) = (Drawn.RoomOf(one), Drawn.RoomOf(other));
        return a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom;
    }

    [Fact]
    public void The_mirror_of_the_mirror_is_the_original()
    {
        var drawing = StepDrawing.Of(Tote, Right, Right.Steps.Count, DrawingFrame.Wide)!;

        Assert.Equal(
            drawing.Shapes.OfType<Box>(),
            Handed.Mirrored(Handed.Mirrored(drawing)).Shapes.OfType<Box>()
        );
        Assert.NotEqual(
            drawing.Shapes.OfType<Box>(),
            Handed.Mirrored(drawing).Shapes.OfType<Box>()
        );
    }

    [Fact]
    public void A_joint_is_knifed_where_it_is_marked_hatched_where_it_is_cut_and_there_afterwards()
    {
        // Notches 1/2 in deep in both edges and a dado 1/4 in deep across.
        var dado = Right.Steps.Single(s => s.Kind is StepKind.MarkJoint && Is(s, "dado"));
        var cut = Right.Steps.First(s => s.Kind is StepKind.CutJoint && Is(s, "dado"));

        Assert.DoesNotContain(Drawing(dado).Shapes.OfType<Box>(), b => b.Ink is Ink.Waste);
        Assert.Single(Drawing(cut).Shapes.OfType<Box>(), b => b.Ink is Ink.Waste);
        // The notches came first: one near, one far.
        Assert.Equal(2, Drawing(cut).Shapes.OfType<Box>().Count(b => b.Ink is Ink.Kerf));
        Assert.Contains(Drawing(cut).Shapes.OfType<Label>(), l => l.Text == "1/2");
    }

    [Fact]
    public void A_joint_off_the_middle_is_drawn_at_its_distance_from_the_reference_edge()
    {
        // The mortise, 1/2 in across a part 7 in wide: 1 in from the reference edge, which lies below.
        var plan = Planned("tool tote", [ToteJoints[2] with { FromEdge = Wood.In(1) }]);
        var work = WorkWriter.Write(plan, Hand.Right);
        var cut = work.Steps.First(s => s.Kind is StepKind.CutJoint && Is(s, "mortise"));
        var drawing = StepDrawing.Of(plan, work, cut.Number, DrawingFrame.Wide)!;

        var piece = Assert.Single(drawing.Shapes.OfType<Box>(), b => b.Ink is Ink.Blank);
        var hole = Assert.Single(drawing.Shapes.OfType<Box>(), b => b.Ink is Ink.Waste);
        var inch = piece.Height / 7;
        Assert.Equal(inch, piece.Y + piece.Height - (hole.Y + hole.Height), 0.1);
        Assert.Equal(inch / 2, hole.Height, 0.1);
        Assert.Contains(drawing.Shapes.OfType<Label>(), l => l.Text == "1");
        Assert.Contains(drawing.Shapes.OfType<Label>(), l => l.Text == "1 1/2");
    }

    [Fact]
    public void Two_mortises_for_one_part_are_each_drawn_in_their_own_steps()
    {
        var plan = Planned(
            "tool tote",
            [
                ToteJoints[2] with
                {
                    FromEdge = Wood.In(1),
                },
                ToteJoints[2] with
                {
                    FromEdge = Wood.In(5),
                },
            ]
        );
        var work = WorkWriter.Write(plan, Hand.Right);
        var marks = work
            .Steps.Where(s => s.Kind is StepKind.MarkJoint && Is(s, "mortise"))
            .Select(s => StepDrawing.Of(plan, work, s.Number, DrawingFrame.Wide)!)
            .ToList();

        Assert.Equal(2, marks.Count);
        Assert.Contains(marks[0].Shapes.OfType<Label>(), l => l.Text == "1 1/2");
        Assert.DoesNotContain(marks[0].Shapes.OfType<Label>(), l => l.Text == "5 1/2");
        Assert.Contains(marks[1].Shapes.OfType<Label>(), l => l.Text == "5 1/2");
    }

    [Fact]
    public void The_text_twin_tells_sizes_line_waste_and_hold()
    {
        var step = Left.Steps.First(s => s.Kind is StepKind.CutToLength && s.Saw is not null);

        var twin = StepDrawing.Of(Tote, Left, step.Number, DrawingFrame.Wide)!.TextTwin;

        Assert.StartsWith($"Step {step.Number} of {Left.Steps.Count}: {step.Title}.", twin);
        Assert.Contains("in before, ", twin);
        Assert.Contains("The line is a knife line", twin);
        Assert.Contains("The waste is on the left.", twin);
        Assert.Contains(step.Hold, twin);
    }

    [Fact]
    public void Own_words_stand_where_the_writer_would_have_put_them()
    {
        TechniqueNote[] notes = [new("Rip", "Our way to rip."), new("Dado", "Our way to a dado.")];
        var settings = new WorkSettings
        {
            Techniques = new SortedDictionary<string, string>(
                notes.ToDictionary(n => n.Key, n => n.Text, StringComparer.Ordinal),
                StringComparer.Ordinal
            ),
        };

        Assert.Equal(
            WorkWriter.Write(Tote, Hand.Right, settings).Steps.Select(s => s.Technique),
            TechniqueNotes.InOwnWords(Right, notes).Steps.Select(s => s.Technique)
        );
    }

    private static bool Is(Step step, string word) =>
        step.Id.Contains(word, StringComparison.Ordinal);

    private static Drawing Drawing(Step step) =>
        StepDrawing.Of(Tote, Right, step.Number, DrawingFrame.Wide)!;

    private static CheckedPlan Planned(string name, IReadOnlyList<Joint> joints)
    {
        var request = DemoProjects.Find(name, UnitSystem.Inch);
        return CheckedPlan.Make(
            request with
            {
                Project = request.Project with { Joints = joints },
            }
        );
    }
}
