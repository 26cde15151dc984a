using CsCheck;
using ShopClass.Core.Drawings;
using ShopClass.Core.Planning;
using ShopClass.Core.Tests.Sawing;
using Xunit;

namespace ShopClass.Core.Tests.Drawings;

/// <summary>Laws over drawings of random layouts. A failure prints the seed that repeats it.</summary>
public class DrawingLaws
{
    private const int Runs = 60;
    private static readonly DrawingFrame[] Frames =
    [
        DrawingFrame.Wide,
        DrawingFrame.Narrow,
        DrawingFrame.Paper,
    ];

    [Fact]
    public void Everything_lies_within_the_drawing() =>
        EveryDrawing(
            (drawing, _) =>
                Assert.All(
                    drawing.Shapes,
                    shape =>
                    {
                        var (left, top, right, bottom) = Drawn.RoomOf(shape);
                        Assert.True(
                            left >= -0.5
                                && top >= -0.5
                                && right <= drawing.Width + 0.5
                                && bottom <= drawing.Height + 0.5,
                            $"{shape} leaves {drawing.Width} x {drawing.Height}"
                        );
                    }
                )
        );

    [Fact]
    public void Words_never_lie_on_words() =>
        EveryDrawing(
            (drawing, _) =>
            {
                var rooms = drawing
                    .Shapes.OfType<Label>()
                    .Select(l => (l.Text, Room: Drawn.RoomOf(l)))
                    .ToList();
                for (var i = 0; i < rooms.Count; i++)
                for (var j = 0; j < i; j++)
                    Assert.False(
                        Overlap(rooms[i].Room, rooms[j].Room),
                        $"\"{rooms[i].Text}\" lies on \"{rooms[j].Text}\""
                    );
            }
        );

    [Fact]
    public void Each_blank_is_drawn_once_and_to_the_boards_scale() =>
        EveryDrawing(
            (drawing, plan) =>
            {
                var blanks =
                    from s in plan.Plan.Boards[0].Sections
                    from t in s.Strips
                    from b in t.Blanks
                    select (Tag: b.Key.ToString(), Rect: b.In(t));
                if (!blanks.Any())
                    return; // bad places can leave a random layout without one
                var scale =
                    drawing
                        .Shapes.OfType<Box>()
                        .Where(b => b.Ink is Ink.Blank)
                        .Max(b => Math.Max(b.Width, b.Height))
                    / blanks.Max(b => Math.Max(b.Rect.Along.Ticks, b.Rect.Across.Ticks));
                foreach (var (tag, rect) in blanks)
                {
                    var box = Assert.Single(drawing.Shapes.OfType<Box>(), b => b.Tag == tag);
                    double[] drawn =
                    [
                        Math.Min(box.Width, box.Height),
                        Math.Max(box.Width, box.Height),
                    ];
                    double[] expected =
                    [
                        .. new[] { rect.Along.Ticks * scale, rect.Across.Ticks * scale }.Order(),
                    ];
                    Assert.Equal(expected[0], drawn[0], 0.03);
                    Assert.Equal(expected[1], drawn[1], 0.03);
                }
            }
        );

    [Fact]
    public void Before_each_cut_every_piece_is_drawn_and_one_line_is_in_the_accent() =>
        RandomLayouts.Any.Sample(
            l =>
            {
                var plan = Drawn.Checked(l.Request, l.Plan);
                foreach (var cut in plan.Sequence.Cuts)
                {
                    var drawing = PlanDrawing.AtCut(plan, cut.Number, DrawingFrame.Wide);
                    Assert.Equal(
                        plan.Rehearsal.Steps[cut.Number - 1].Pieces.Count,
                        drawing.Shapes.Count(s => s is Polygon { Ink: Ink.Wood })
                    );
                    Assert.Single(drawing.Shapes, s => s is Line { Ink: Ink.Accent });
                }
            },
            iter: Runs / 4
        );

    private static void EveryDrawing(Action<Drawing, CheckedPlan> holds) =>
        RandomLayouts.Any.Sample(
            l =>
            {
                var plan = Drawn.Checked(l.Request, l.Plan);
                foreach (var frame in Frames)
                    holds(PlanDrawing.Of(plan, l.Request.Boards[0].Id, frame), plan);
            },
            iter: Runs
        );

    private static bool Overlap(
        (double Left, double Top, double Right, double Bottom) a,
        (double Left, double Top, double Right, double Bottom) b
    ) =>
        a.Left + 0.5 < b.Right
        && b.Left + 0.5 < a.Right
        && a.Top + 0.5 < b.Bottom
        && b.Top + 0.5 < a.Bottom;
}
