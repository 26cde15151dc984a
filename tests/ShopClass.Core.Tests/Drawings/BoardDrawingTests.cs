using CsCheck;
using ShopClass.Core.Drawings;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Tests.Planning;
using Xunit;

namespace ShopClass.Core.Tests.Drawings;

public class BoardDrawingTests
{
    [Theory]
    [MemberData(nameof(Drawn.Frames), MemberType = typeof(Drawn))]
    public void Pointing_and_drawing_agree_about_every_defect(DrawingFrame frame)
    {
        var scale = BoardScale.For(Drawn.Cherry, frame);
        var drawing = BoardDrawing.Of(Drawn.Cherry, Precision.Sixteenth, frame);
        for (var i = 0; i < Drawn.Cherry.Defects.Count; i++)
        {
            var box = Assert.Single(drawing.Shapes.OfType<Box>(), b => b.Tag == $"defect {i + 1}");
            var (x, y, width, height) = scale.BoxFor(Drawn.Cherry.Defects[i].Place);
            Assert.Equal(
                [x, y, width, height],
                new[] { box.X, box.Y, box.Width, box.Height },
                new Near(0.01)
            );
        }
    }

    [Theory]
    [MemberData(nameof(Drawn.Frames), MemberType = typeof(Drawn))]
    public void A_place_found_under_its_own_point_is_the_same_place(DrawingFrame frame)
    {
        var scale = BoardScale.For(Drawn.Cherry, frame);
        Gen.Select(Gen.Long[0, Wood.In(72).Ticks], Gen.Long[0, Wood.In(6).Ticks])
            .Sample(p =>
            {
                var point = scale.PointAt(Length.FromTicks(p.Item1), Length.FromTicks(p.Item2));
                var (along, across) = scale.PlaceAt(point);
                Assert.InRange(along.Ticks - p.Item1, -1, 1);
                Assert.InRange(across.Ticks - p.Item2, -1, 1);
            });
    }

    [Theory]
    [MemberData(nameof(Drawn.Frames), MemberType = typeof(Drawn))]
    public void A_point_off_the_board_finds_the_nearest_place_on_it(DrawingFrame frame)
    {
        var scale = BoardScale.For(Drawn.Cherry, frame);
        Assert.Equal(
            (Length.Zero, Length.Zero),
            scale.PlaceAt(frame.Upright ? new(-500, -500) : new(-500, 5000))
        );
        Assert.Equal(
            (Wood.In(72), Wood.In(6, 3, 4)),
            scale.PlaceAt(frame.Upright ? new(5000, 5000) : new(5000, -500))
        );
    }

    [Theory]
    [MemberData(nameof(Drawn.Frames), MemberType = typeof(Drawn))]
    public void All_of_a_board_lies_within_its_drawing(DrawingFrame frame)
    {
        var drawing = BoardDrawing.Of(Drawn.Cherry, Precision.Sixteenth, frame);
        Assert.All(
            drawing.Shapes,
            shape =>
            {
                var (left, top, right, bottom) = Drawn.RoomOf(shape);
                Assert.InRange(left, -0.5, right);
                Assert.InRange(top, -0.5, bottom);
                Assert.InRange(right, left, drawing.Width + 0.5);
                Assert.InRange(bottom, top, drawing.Height + 0.5);
            }
        );
    }

    [Theory]
    [MemberData(nameof(Drawn.Frames), MemberType = typeof(Drawn))]
    public void A_board_half_typed_is_drawn_all_the_same(DrawingFrame frame)
    {
        var half = Drawn.Cherry with
        {
            Length = Length.Zero,
            WidthAtEnd = -Wood.In(1),
            TrimStart = Wood.In(500),
            Defects =
            [
                new(DefectKind.Knot, new(Wood.In(-3), Wood.In(900), Wood.In(50), Wood.In(2))),
            ],
        };
        var drawing = BoardDrawing.Of(half, Precision.Sixteenth, frame);
        Assert.All(
            drawing.Shapes.Select(Drawn.RoomOf),
            room => Assert.True(double.IsFinite(room.Left + room.Top + room.Right + room.Bottom))
        );
        Assert.Single(drawing.Shapes.OfType<Box>(), b => b.Tag == "defect 1");
    }

    [Fact]
    public void Only_the_selected_defect_is_in_the_accent()
    {
        var drawing = BoardDrawing.Of(Drawn.Cherry, Precision.Sixteenth, DrawingFrame.Wide, 1);
        Assert.Equal(
            "defect 2",
            Assert.Single(drawing.Shapes.OfType<Box>(), b => b.Ink is Ink.Accent).Tag
        );
    }

    [Fact]
    public void A_tapered_board_has_its_three_widths_in_its_outline()
    {
        var drawing = BoardDrawing.Of(Drawn.Cherry, Precision.Sixteenth, DrawingFrame.Wide);
        var outline = Assert
            .Single(drawing.Shapes.OfType<Polygon>(), p => p.Ink is Ink.Wood)
            .Points;
        var scale = (outline[^1].X - outline[0].X) / 72;
        double[] widths = [.. outline.Skip(1).Take(3).Select(p => outline[0].Y - p.Y)];
        Assert.Equal([7 * scale, 8.5 * scale, 6.75 * scale], widths, new Near(0.2));
    }

    [Fact]
    public void Knots_push_the_grain_aside()
    {
        var clear = Drawn.Cherry with { Defects = [] };
        Assert.NotEqual(GrainOf(clear), GrainOf(Drawn.Cherry));
        var knot = BoardScale
            .For(Drawn.Cherry, DrawingFrame.Wide)
            .BoxFor(Drawn.Cherry.Defects[1].Place);
        var (x, y) = (knot.X + knot.Width / 2, knot.Y + knot.Height / 2);
        Assert.DoesNotContain(
            BoardDrawing
                .Of(Drawn.Cherry, Precision.Sixteenth, DrawingFrame.Wide)
                .Shapes.OfType<Curve>()
                .Where(c => c.Ink is Ink.Grain),
            c =>
                c.Points.Any(p =>
                    Math.Abs(p.X - x) < knot.Width / 4 && Math.Abs(p.Y - y) < knot.Height / 4
                )
        );
    }

    [Fact]
    public void The_same_board_has_the_same_grain_and_another_has_its_own()
    {
        Assert.Equal(GrainOf(Drawn.Cherry), GrainOf(Drawn.Cherry));
        Assert.NotEqual(GrainOf(Drawn.Cherry), GrainOf(Drawn.Cherry with { Id = "another" }));
    }

    [Fact]
    public void The_words_say_what_is_drawn()
    {
        var words = BoardDrawing
            .Of(Drawn.Cherry, Precision.Sixteenth, DrawingFrame.Wide)
            .TextTwin.Split('\n');
        Assert.Contains(
            "Board cherry: 72 in long, 3/4 in thick, 7 in wide at the start, 8 1/2 in in the middle and 6 3/4 in at the far end.",
            words
        );
        Assert.Contains("Trim 1 in off the start.", words);
        Assert.Contains(
            "Defect 2 is a knot, from 12 in to 13 1/2 in along and 3 in to 4 in from the near edge.",
            words
        );
    }

    private static string GrainOf(Board board) =>
        string.Join(
            ' ',
            BoardDrawing
                .Of(board, Precision.Sixteenth, DrawingFrame.Wide)
                .Shapes.OfType<Curve>()
                .Where(c => c.Ink is Ink.Grain)
                .SelectMany(c => c.Points)
        );
}
