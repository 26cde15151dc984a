namespace ShopClass.Core.Drawings.Working;

/// <summary>A picture as a mirror shows it, its words still to be read.</summary>
internal static class Handed
{
    /// <summary>Left becomes right; the mirror of the mirror is the original.</summary>
    public static Drawing Mirrored(Drawing drawing) =>
        drawing with
        {
            Shapes = [.. drawing.Shapes.Select(s => Mirrored(s, drawing.Width))],
        };

    private static Shape Mirrored(Shape shape, double width) =>
        shape switch
        {
            Box b => b with { X = Round(width - b.X - b.Width) },
            Line l => l with { X1 = Round(width - l.X1), X2 = Round(width - l.X2) },
            Curve c => c with { Points = Mirrored(c.Points, width) },
            Polygon p => p with { Points = Mirrored(p.Points, width) },
            Oval o => o with { CentreX = Round(width - o.CentreX) },
            Label l => l with { X = Round(width - l.X), Anchor = Other(l.Anchor) },
            _ => shape,
        };

    private static Point[] Mirrored(IReadOnlyList<Point> points, double width) =>
        [.. points.Select(p => p with { X = Round(width - p.X) })];

    private static Anchor Other(Anchor anchor) =>
        anchor switch
        {
            Anchor.Start => Anchor.End,
            Anchor.End => Anchor.Start,
            _ => anchor,
        };

    private static double Round(double x) => Math.Round(x, 2);
}
