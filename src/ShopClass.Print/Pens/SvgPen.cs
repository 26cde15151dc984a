using System.Globalization;
using System.Net;
using System.Text;
using ShopClass.Core.Drawings;

namespace ShopClass.Print.Pens;

/// <summary>Writes a drawing as SVG text. Looks come from classes (<c>ink-wood</c>, <c>ink-kerf</c> …) in the app's drawing.css.</summary>
public static class SvgPen
{
    /// <summary>
    /// A whole <c>svg</c> element with viewBox, <c>role="img"</c>, title and description; everything from people is escaped.
    /// <paramref name="idPrefix"/> keeps ids apart when a page holds several drawings.
    /// </summary>
    public static string Write(Drawing drawing, string idPrefix)
    {
        var id = Escaped(idPrefix);
        var svg = new StringBuilder();
        svg.Append(
            CultureInfo.InvariantCulture,
            $"""<svg xmlns="http://www.w3.org/2000/svg" class="drawing" role="img" aria-labelledby="{id}-title" """
        );
        svg.Append(
            CultureInfo.InvariantCulture,
            $"""aria-describedby="{id}-desc" viewBox="0 0 {N(drawing.Width)} {N(drawing.Height)}" """
        );
        svg.Append(
            CultureInfo.InvariantCulture,
            $"""width="{N(drawing.Width)}" height="{N(drawing.Height)}">"""
        );
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<title id=\"{id}-title\">{Escaped(drawing.Title)}</title>"
        );
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<desc id=\"{id}-desc\">{Escaped(drawing.TextTwin)}</desc>"
        );
        WriteShapes(svg, drawing, id);
        return svg.Append("</svg>").ToString();
    }

    /// <summary>What is in a drawing, without the element about it.</summary>
    internal static void WriteShapes(StringBuilder svg, Drawing drawing, string id)
    {
        SvgHatches.Write(svg, drawing, id);
        foreach (var shape in drawing.Shapes)
            svg.Append(ElementFor(shape, id));
    }

    /// <summary>A number as SVG wants it: a point for the decimals, two at most.</summary>
    internal static string N(double number) =>
        Math.Round(number, 2).ToString("0.##", CultureInfo.InvariantCulture);

    private static string ElementFor(Shape shape, string id) =>
        shape switch
        {
            Box b =>
                $"<rect x=\"{N(b.X)}\" y=\"{N(b.Y)}\" width=\"{N(b.Width)}\" height=\"{N(b.Height)}\"{Looks(b, id)}{Tag(b)}/>",
            Line l =>
                $"<line x1=\"{N(l.X1)}\" y1=\"{N(l.Y1)}\" x2=\"{N(l.X2)}\" y2=\"{N(l.Y2)}\"{Looks(l, id)}/>",
            Curve c => $"<path d=\"{PathOf(c.Points)}\"{Looks(c, id)}/>",
            Polygon p =>
                $"<polygon points=\"{string.Join(' ', p.Points.Select(q => $"{N(q.X)},{N(q.Y)}"))}\"{Looks(p, id)}/>",
            Oval o =>
                $"<ellipse cx=\"{N(o.CentreX)}\" cy=\"{N(o.CentreY)}\" rx=\"{N(o.RadiusX)}\" ry=\"{N(o.RadiusY)}\"{Looks(o, id)}/>",
            Label t => TextFor(t),
            _ => throw new ArgumentException(
                $"No way to draw a {shape.GetType().Name}.",
                nameof(shape)
            ),
        };

    private static string TextFor(Label label)
    {
        // Capitals stand about 0.66 of the size above the line; half of that puts their middle on the anchor.
        var baseline = label.Y + 0.33 * label.Size;
        var anchor = label.Anchor switch
        {
            Anchor.Start => "start",
            Anchor.Middle => "middle",
            _ => "end",
        };
        var turn =
            label.Turn == 0
                ? ""
                : $" transform=\"rotate({N(label.Turn)} {N(label.X)} {N(label.Y)})\"";
        return $"<text x=\"{N(label.X)}\" y=\"{N(baseline)}\" font-size=\"{N(label.Size)}\" "
            + $"text-anchor=\"{anchor}\" class=\"{ClassOf(label.Ink)}\"{turn}>{WordsOf(label.Text)}</text>";
    }

    // The face sets the figures of a fraction small when asked to; the text itself stays plain.
    private static string WordsOf(string text) =>
        string.Concat(
            Fractions
                .Split(ReadingOrder.Isolated(text))
                .Select(part =>
                    part.IsFraction
                        ? $"<tspan class=\"fraction\">{part.Text}</tspan>"
                        : Escaped(part.Text)
                )
        );

    private static string PathOf(IReadOnlyList<Point> points)
    {
        var path = new StringBuilder();
        for (var i = 0; i < points.Count; i++)
        {
            path.Append(
                i == 0 ? "M"
                : i % 3 == 1 ? "C"
                : " "
            );
            path.Append(N(points[i].X)).Append(' ').Append(N(points[i].Y));
        }

        return path.ToString();
    }

    private static string Looks(Shape shape, string id)
    {
        var hatch = SvgHatches.For(shape) is { } name ? $" fill=\"url(#{id}-{name})\"" : "";
        return $" class=\"{ClassOf(shape.Ink)}\"{hatch}";
    }

    private static string Tag(Box box) =>
        box.Tag is null ? "" : $" data-tag=\"{Escaped(box.Tag)}\"";

    private static string ClassOf(Ink ink) =>
        ink switch
        {
            Ink.PencilLine => "ink-pencil-line",
            Ink.KnifeLine => "ink-knife-line",
            Ink.GaugeLine => "ink-gauge-line",
            _ => $"ink-{ink.ToString().ToLowerInvariant()}",
        };

    private static string Escaped(string text) => WebUtility.HtmlEncode(text);
}
