using ShopClass.Core.Courses;
using ShopClass.Core.Drawings;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;
using ShopClass.Core.Tests.Planning;

namespace ShopClass.Core.Tests.Drawings;

/// <summary>Boards and plans to draw, and the room that drawn shapes take.</summary>
internal static class Drawn
{
    /// <summary>A waney, tapered board with a knot, a split and ends to trim.</summary>
    public static Board Cherry { get; } =
        Wood.Board("cherry", Wood.In(0, 3, 4), Wood.In(7), Wood.In(72)) with
        {
            WidthAtMiddle = Wood.In(8, 1, 2),
            WidthAtEnd = Wood.In(6, 3, 4),
            TrimStart = Wood.In(1),
            TrimEnd = Wood.In(0, 1, 2),
            Defects =
            [
                new(DefectKind.Wane, new(Wood.In(30), Wood.In(46), Wood.In(0), Wood.In(1))),
                new(DefectKind.Knot, new(Wood.In(12), Wood.In(13, 1, 2), Wood.In(3), Wood.In(4))),
                new(DefectKind.Split, new(Wood.In(66), Wood.In(72), Wood.In(3), Wood.In(4))),
            ],
        };

    /// <summary>The rooms a drawing may get.</summary>
    public static TheoryData<DrawingFrame> Frames { get; } =
        new(DrawingFrame.Wide, DrawingFrame.Narrow, DrawingFrame.Paper);

    /// <summary>A layout with its cuts and rehearsal.</summary>
    public static CheckedPlan Checked(PlanningRequest request, CutPlan plan)
    {
        var sequence = Sequencer.Order(request, plan);
        var rehearsal = Rehearsal.Replay(request, plan, sequence);
        return new(
            request,
            plan,
            sequence,
            rehearsal,
            new(VerdictKind.Fits, "It fits.", [], [], [])
        );
    }

    /// <summary>Two sides and three pegs from a pine board 48 in long.</summary>
    public static CheckedPlan SidesAndPegs()
    {
        var request = Wood.Ask(
            CourseRules.DefaultsFor(UnitSystem.Inch),
            [
                Wood.Board("pine", Wood.In(0, 3, 4), Wood.In(7, 1, 4), Wood.In(48)) with
                {
                    TrimStart = Wood.In(1),
                },
            ],
            Wood.Part("A", 2, Wood.In(0, 3, 4), Wood.In(6), Wood.In(14)),
            Wood.Part("B", 3, Wood.In(0, 3, 4), Wood.In(0, 3, 4), Wood.In(4))
        );
        return Checked(request, Planner.Plan(request));
    }

    /// <summary>The rectangle a shape takes; words by the width table, turned where they are turned.</summary>
    public static (double Left, double Top, double Right, double Bottom) RoomOf(Shape shape) =>
        shape switch
        {
            Box b => (b.X, b.Y, b.X + b.Width, b.Y + b.Height),
            Line l => Around([new(l.X1, l.Y1), new(l.X2, l.Y2)]),
            Curve c => Around([.. c.Points.Where((_, i) => i % 3 == 0)]),
            Polygon p => Around(p.Points),
            Oval o => (
                o.CentreX - o.RadiusX,
                o.CentreY - o.RadiusY,
                o.CentreX + o.RadiusX,
                o.CentreY + o.RadiusY
            ),
            Label t => RoomOfWords(t),
            _ => throw new ArgumentException("An unknown shape.", nameof(shape)),
        };

    private static (double, double, double, double) RoomOfWords(Label label)
    {
        var width = LetterWidths.Of(label.Text, label.Size);
        var before = label.Anchor switch
        {
            Anchor.Start => 0,
            Anchor.Middle => width / 2,
            _ => width,
        };
        // Capitals and figures stand 0.66 of the size high.
        var half = 0.33 * label.Size;
        return label.Turn == 0
            ? (label.X - before, label.Y - half, label.X - before + width, label.Y + half)
            : (label.X - half, label.Y - before, label.X + half, label.Y - before + width);
    }

    private static (double, double, double, double) Around(IReadOnlyList<Point> points) =>
        (points.Min(p => p.X), points.Min(p => p.Y), points.Max(p => p.X), points.Max(p => p.Y));
}
