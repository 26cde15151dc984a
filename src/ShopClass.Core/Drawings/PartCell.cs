using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Drawings;

/// <summary>One part of a parts drawing: its face, and under it letter, name, quantity and size.</summary>
internal sealed class PartCell(
    Part part,
    Precision precision,
    DrawingFrame frame,
    double pointsPerTick
)
{
    private readonly double t = frame.TextSize;

    /// <summary>Width with its words.</summary>
    public double Width => Math.Max(FaceWidth, Math.Max(WidthOf(Heading), WidthOf(Size)));

    /// <summary>Height with its words.</summary>
    public double Height => FaceHeight + 3.1 * t;

    private double FaceWidth => part.Finished.Length.Ticks * pointsPerTick;

    private double FaceHeight => part.Finished.Width.Ticks * pointsPerTick;

    private string Heading => $"{part.Letter}  {part.Name} × {part.Quantity}";

    private string Size => SizeOf(part, precision);

    /// <summary>The finished size in words.</summary>
    public static string SizeOf(Part part, Precision precision) =>
        LengthWriter.WriteSize(
            part.Finished.Thickness,
            part.Finished.Width,
            part.Finished.Length,
            precision
        );

    /// <summary>The shapes, its top left corner at a point.</summary>
    public IEnumerable<Shape> At(double x, double y)
    {
        var face = FaceAsBoard();
        var scale = BoardScale.At(face, upright: false, pointsPerTick, new(x, y + FaceHeight));
        var sketch = new Sketch(frame, scale);
        WoodSketch.AddWood(sketch, face);
        sketch.Rect(
            new(Length.Zero, face.Length, Length.Zero, face.WidthAtStart),
            Ink.Blank,
            part.Letter
        );
        AddLetter(sketch);
        sketch.Words(0, -1.05 * t, Heading, t, Anchor.Start, Ink.Lettering);
        sketch.Words(0, -2.35 * t, Size, t, Anchor.Start, Ink.Dimension);
        return sketch.Shapes;
    }

    private void AddLetter(Sketch sketch)
    {
        var size = Math.Min(t * 2, Math.Min(FaceHeight * 0.7, FaceWidth * 0.6));
        if (size >= t * 0.8)
            sketch.Words(
                FaceWidth / 2,
                FaceHeight / 2,
                part.Letter,
                size,
                Anchor.Middle,
                Ink.Lettering
            );
    }

    private double WidthOf(string text) => LetterWidths.Of(text, t);

    private Board FaceAsBoard() =>
        new()
        {
            Id = $"part {part.Letter}",
            Name = part.Name,
            SpeciesId = "",
            Surfacing = Surfacing.S4S,
            Thickness = part.Finished.Thickness,
            WidthAtStart = part.Finished.Width,
            WidthAtMiddle = part.Finished.Width,
            WidthAtEnd = part.Finished.Width,
            Length = part.Finished.Length,
        };
}
