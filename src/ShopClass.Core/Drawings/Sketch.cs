using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Drawings;

/// <summary>A drawing being made: shapes given along and across a board, in points, land where the board lies.</summary>
internal sealed class Sketch
{
    private readonly DrawingFrame frame;
    private readonly BoardScale scale;
    private readonly List<Shape> shapes;

    /// <summary>A blank sheet.</summary>
    public Sketch(DrawingFrame frame, BoardScale scale)
        : this(frame, scale, []) { }

    private Sketch(DrawingFrame frame, BoardScale scale, List<Shape> shapes) =>
        (this.frame, this.scale, this.shapes) = (frame, scale, shapes);

    /// <summary>The room it has.</summary>
    public DrawingFrame Frame => frame;

    /// <summary>Where the board lies.</summary>
    public BoardScale Scale => scale;

    /// <summary>What has been drawn, back to front.</summary>
    public IReadOnlyList<Shape> Shapes => shapes;

    /// <summary>The same sheet, with a board lying elsewhere on it.</summary>
    public Sketch With(BoardScale other) => new(frame, other, shapes);

    /// <summary>A shape as it is.</summary>
    public void Add(Shape shape) => shapes.Add(shape);

    /// <summary>A rectangle of the board.</summary>
    public void Rect(BoardRect rect, Ink ink, string? tag = null)
    {
        var (x, y, width, height) = scale.BoxFor(rect);
        shapes.Add(new Box(Round(x), Round(y), Round(width), Round(height), ink, tag));
    }

    /// <summary>A straight line.</summary>
    public void Line(double along, double across, double toAlong, double toAcross, Ink ink)
    {
        var (a, b) = (scale.At(along, across), scale.At(toAlong, toAcross));
        shapes.Add(new Line(Round(a.X), Round(a.Y), Round(b.X), Round(b.Y), ink));
    }

    /// <summary>A closed shape.</summary>
    public void Shape(IEnumerable<(double Along, double Across)> corners, Ink ink) =>
        shapes.Add(
            new Polygon([.. corners.Select(c => Rounded(scale.At(c.Along, c.Across)))], ink)
        );

    /// <summary>A smooth curve through places on the board.</summary>
    public void Through(IReadOnlyList<(double Along, double Across)> places, Ink ink)
    {
        if (places.Count > 1)
            shapes.Add(
                new Curve(Smooth([.. places.Select(p => scale.At(p.Along, p.Across))]), ink)
            );
    }

    /// <summary>An ellipse.</summary>
    public void Ring(double along, double across, double alongRadius, double acrossRadius, Ink ink)
    {
        var c = scale.At(along, across);
        var (rx, ry) = scale.IsUpright ? (acrossRadius, alongRadius) : (alongRadius, acrossRadius);
        shapes.Add(new Oval(Round(c.X), Round(c.Y), Round(rx), Round(ry), ink));
    }

    /// <summary>Words at a place; level unless they turn with the board.</summary>
    public void Words(
        double along,
        double across,
        string text,
        double size,
        Anchor anchor,
        Ink ink,
        bool turnsWithBoard = false
    )
    {
        var p = scale.At(along, across);
        var turn = turnsWithBoard && scale.IsUpright ? 90 : 0;
        shapes.Add(new Label(Round(p.X), Round(p.Y), text, Round(size), anchor, ink, turn));
    }

    // Catmull-Rom through the points, written as cubic Béziers.
    private static List<Point> Smooth(IReadOnlyList<Point> through)
    {
        List<Point> points = [Rounded(through[0])];
        for (var i = 0; i + 1 < through.Count; i++)
        {
            var (before, from) = (through[Math.Max(0, i - 1)], through[i]);
            var (to, after) = (through[i + 1], through[Math.Min(through.Count - 1, i + 2)]);
            points.Add(
                Rounded(new(from.X + (to.X - before.X) / 6, from.Y + (to.Y - before.Y) / 6))
            );
            points.Add(Rounded(new(to.X - (after.X - from.X) / 6, to.Y - (after.Y - from.Y) / 6)));
            points.Add(Rounded(to));
        }

        return points;
    }

    private static Point Rounded(Point p) => new(Math.Round(p.X, 1), Math.Round(p.Y, 1));

    private static double Round(double points) => Math.Round(points, 2);
}
