using System.Globalization;
using System.Net;
using System.Text;
using PdfSharp.Drawing;
using ShopClass.Core.Drawings;
using ShopClass.Print.Lettering;
using ShopClass.Print.Pens;

namespace ShopClass.Print.Pages;

/// <summary>Writes down what is drawn on a page, at the same places, as SVG.</summary>
internal sealed class PageCopy(double width, double height, string title, int number)
{
    private readonly StringBuilder svg = new();
    private int figures;

    public PaperPage Page
    {
        get
        {
            var size = $"{N(width)} {N(height)}";
            var words = WebUtility.HtmlEncode($"{title}, page {number}");
            return new(
                width,
                height,
                $"<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drawing sheet-page\" role=\"group\" aria-label=\"{words}\" viewBox=\"0 0 {size}\">"
                    + $"<rect class=\"sheet-paper\" width=\"{N(width)}\" height=\"{N(height)}\"/>{svg}</svg>"
            );
        }
    }

    public void Line(XPen pen, double x1, double y1, double x2, double y2) =>
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<line x1=\"{N(x1)}\" y1=\"{N(y1)}\" x2=\"{N(x2)}\" y2=\"{N(y2)}\"{Stroke(pen)}/>"
        );

    public void Box(XPen pen, double x, double y, double wide, double high) =>
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<rect fill=\"none\" x=\"{N(x)}\" y=\"{N(y)}\" width=\"{N(wide)}\" height=\"{N(high)}\"{Stroke(pen)}/>"
        );

    public void Words(
        string text,
        Face face,
        double size,
        double x,
        double y,
        double wide,
        bool isRightToLeft
    )
    {
        // What is read from right to left begins at its right edge; stretched with its letters, so that they stay joined.
        var (from, turn) = isRightToLeft
            ? (x + wide, " direction=\"rtl\" lengthAdjust=\"spacingAndGlyphs\"")
            : (x, "");
        // The same length as on paper, whatever the browser makes of the letters.
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<text class=\"sheet-{face.ToString().ToLowerInvariant()}\" x=\"{N(from)}\" y=\"{N(y)}\" font-size=\"{N(size)}\" textLength=\"{N(wide)}\"{turn} xml:space=\"preserve\">{WebUtility.HtmlEncode(text)}</text>"
        );
    }

    public void Figure(Drawing drawing, double x, double y)
    {
        var id = $"sheet-{number}-{++figures}";
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<g transform=\"translate({N(x)} {N(y)})\" role=\"img\" aria-label=\"{WebUtility.HtmlEncode(drawing.TextTwin)}\">"
        );
        SvgPen.WriteShapes(svg, drawing, id);
        svg.Append("</g>");
    }

    private static string Stroke(XPen pen)
    {
        var dash =
            pen.DashStyle is XDashStyle.Custom
                ? $" stroke-dasharray=\"{string.Join(' ', pen.DashPattern.Select(d => N(d * pen.Width)))}\""
                : "";
        return $" class=\"sheet-line\" stroke-width=\"{N(pen.Width)}\"{dash}";
    }

    private static string N(double number) => SvgPen.N(number);
}
