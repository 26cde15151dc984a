using PdfSharp.Drawing;
using ShopClass.Core.Drawings;

namespace ShopClass.Print.Pens;

/// <summary>How inks look on paper: black, greys, weights and dashes only, so that any printer will do.</summary>
internal static class PdfInks
{
    /// <summary>Black.</summary>
    public static XColor Black { get; } = XColors.Black;

    /// <summary>A dark grey that still copies well.</summary>
    public static XColor Soft { get; } = XColor.FromGrayScale(0.28);

    /// <summary>The stroke of an ink, or null where it has none.</summary>
    public static XPen? PenFor(Shape shape) =>
        shape.Ink switch
        {
            Ink.Wood => Stroke(Black, 0.8),
            Ink.Grain => Stroke(XColor.FromGrayScale(0.8), 0.3),
            Ink.Blank => Stroke(Black, 1.1),
            Ink.Finished => Dashed(Black, 0.5, 4, 2.4),
            Ink.Kerf => Stroke(Black, 0.5),
            Ink.Waste => Stroke(Soft, 0.4),
            Ink.Offcut => Dashed(Black, 0.6, 1, 2),
            Ink.Defect when shape is Box => Dashed(Soft, 0.5, 1.6, 1.6),
            Ink.Defect => Stroke(Black, shape is Curve ? 1 : 0.6),
            Ink.PencilLine => Stroke(Soft, 0.9),
            Ink.KnifeLine => Stroke(Black, 0.3),
            Ink.GaugeLine => Dashed(Black, 0.5, 6, 1.2),
            Ink.Dimension => Stroke(Soft, 0.4),
            Ink.Accent => Stroke(Black, 2),
            Ink.Lettering or Ink.Quiet => null,
            _ => throw new ArgumentOutOfRangeException(nameof(shape), shape.Ink, "Not an ink."),
        };

    /// <summary>The fill of a closed shape, or null where what lies below shows through.</summary>
    public static XBrush? FillFor(Shape shape) =>
        shape switch
        {
            { Ink: Ink.Wood } => new XSolidBrush(XColor.FromGrayScale(0.95)),
            Box { Ink: Ink.Blank } => new XSolidBrush(XColor.FromArgb(150, 255, 255, 255)),
            Oval { Ink: Ink.Defect } => new XSolidBrush(XColor.FromGrayScale(0.7)),
            Box { Ink: Ink.Lettering } => new XSolidBrush(Black),
            Oval { Ink: Ink.Dimension } => new XSolidBrush(Soft),
            Oval { Ink: Ink.Accent } => XBrushes.White,
            _ => null,
        };

    /// <summary>The colour of words.</summary>
    public static XBrush WordsIn(Ink ink) =>
        new XSolidBrush(ink is Ink.Quiet or Ink.Dimension ? Soft : Black);

    /// <summary>A plain stroke.</summary>
    public static XPen Stroke(XColor colour, double width) =>
        new(colour, width) { LineCap = XLineCap.Round, LineJoin = XLineJoin.Round };

    private static XPen Dashed(XColor colour, double width, double dash, double gap) =>
        new(colour, width)
        {
            DashPattern = [dash / width, gap / width],
            DashStyle = XDashStyle.Custom,
        };
}
