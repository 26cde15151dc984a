using PdfSharp.Drawing;
using ShopClass.Core.Drawings;

namespace ShopClass.Print.Pens;

/// <summary>Lines that fill a shape on paper: slanting for waste, steep and close for sawdust, close strokes for bark.</summary>
/// <param name="Apart">Distance between lines, points.</param>
/// <param name="Slope">How far a line moves right for each point it goes up.</param>
/// <param name="Weight">Their weight, points.</param>
internal sealed record PdfHatch(double Apart, double Slope, double Weight)
{
    /// <summary>The hatch that fills a shape, if any.</summary>
    public static PdfHatch? For(Shape shape) =>
        shape switch
        {
            Box { Ink: Ink.Waste } or Polygon { Ink: Ink.Waste } => new(4.2, 1, 0.35),
            Box { Ink: Ink.Kerf } => new(1.2, -1, 0.5),
            Polygon { Ink: Ink.Defect } => new(2, 0.35, 0.4),
            _ => null,
        };

    /// <summary>Hatches the inside of an outline.</summary>
    public void Fill(XGraphics page, XGraphicsPath outline, XRect bounds)
    {
        var pen = PdfInks.Stroke(PdfInks.Soft, Weight);
        var state = page.Save();
        page.IntersectClip(outline);
        var shift = Slope * bounds.Height;
        var (from, to) = (bounds.Left - Math.Max(0, shift), bounds.Right - Math.Min(0, shift));
        for (var x = from; x <= to; x += Apart)
            page.DrawLine(pen, x, bounds.Bottom, x + shift, bounds.Top);
        page.Restore(state);
    }
}
