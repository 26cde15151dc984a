using PdfSharp.Drawing;
using ShopClass.Core.Drawings;
using ShopClass.Print.Lettering;

namespace ShopClass.Print.Pens;

/// <summary>Draws a drawing on a page.</summary>
internal sealed class PdfPen(XGraphics page, Setting setting)
{
    /// <summary>Draws it with its top left corner at a point, one drawing point for one point of the page.</summary>
    public void Draw(Drawing drawing, double x, double y)
    {
        var state = page.Save();
        page.TranslateTransform(x, y);
        foreach (var shape in drawing.Shapes)
            Draw(shape);
        page.Restore(state);
    }

    /// <summary>Finds the letters of a drawing that cannot be printed, and draws nothing.</summary>
    public void Try(Drawing drawing)
    {
        foreach (var label in drawing.Shapes.OfType<Label>())
            setting.Prepared(label.Text, FaceOf(label));
    }

    private static Face FaceOf(Label label) =>
        label.Ink is Ink.Lettering or Ink.Accent ? Face.Strong : Face.Text;

    private void Draw(Shape shape)
    {
        switch (shape)
        {
            case Label label:
                DrawWords(label);
                break;
            case Line line:
                page.DrawLine(PdfInks.PenFor(line)!, line.X1, line.Y1, line.X2, line.Y2);
                break;
            case Curve curve:
                page.DrawBeziers(PdfInks.PenFor(curve)!, PointsOf(curve.Points));
                break;
            default:
                DrawClosed(shape, OutlineOf(shape));
                break;
        }
    }

    private static XGraphicsPath OutlineOf(Shape shape)
    {
        var path = new XGraphicsPath();
        switch (shape)
        {
            case Box b:
                path.AddRectangle(b.X, b.Y, b.Width, b.Height);
                break;
            case Oval o:
                path.AddEllipse(
                    o.CentreX - o.RadiusX,
                    o.CentreY - o.RadiusY,
                    2 * o.RadiusX,
                    2 * o.RadiusY
                );
                break;
            case Polygon p:
                path.AddPolygon(PointsOf(p.Points));
                break;
            default:
                throw new ArgumentException(
                    $"No way to draw a {shape.GetType().Name}.",
                    nameof(shape)
                );
        }

        return path;
    }

    private void DrawClosed(Shape shape, XGraphicsPath outline)
    {
        if (PdfInks.FillFor(shape) is { } fill)
            page.DrawPath(fill, outline);
        if (PdfHatch.For(shape) is { } hatch)
            hatch.Fill(page, outline, BoundsOf(shape));
        if (PdfInks.PenFor(shape) is { } pen)
            page.DrawPath(pen, outline);
    }

    private void DrawWords(Label label)
    {
        var face = FaceOf(label);
        var text = setting.Prepared(label.Text, face);
        var width = setting.WidthOf(text, face, label.Size);
        var left = label.Anchor switch
        {
            Anchor.Start => 0,
            Anchor.Middle => -width / 2,
            _ => -width,
        };
        var state = page.Save();
        page.TranslateTransform(label.X, label.Y);
        page.RotateTransform(label.Turn);
        // Capitals stand 0.66 of the size above the line; half of that puts their middle on the anchor.
        setting.Draw(text, face, label.Size, PdfInks.WordsIn(label.Ink), left, 0.33 * label.Size);
        page.Restore(state);
    }

    private static XRect BoundsOf(Shape shape) =>
        shape switch
        {
            Box b => new(b.X, b.Y, b.Width, b.Height),
            Polygon p => new(
                new XPoint(p.Points.Min(q => q.X), p.Points.Min(q => q.Y)),
                new XPoint(p.Points.Max(q => q.X), p.Points.Max(q => q.Y))
            ),
            _ => XRect.Empty,
        };

    private static XPoint[] PointsOf(IReadOnlyList<Point> points) =>
        [.. points.Select(p => new XPoint(p.X, p.Y))];
}
