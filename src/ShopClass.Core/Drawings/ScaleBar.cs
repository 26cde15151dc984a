using ShopClass.Core.Measure;

namespace ShopClass.Core.Drawings;

/// <summary>A short ruler that tells the scale of a drawing.</summary>
internal static class ScaleBar
{
    private static readonly long[] Inches = [48, 24, 12, 6, 3, 1];
    private static readonly long[] Millimetres = [1000, 500, 200, 100, 50, 10];

    /// <summary>The shapes, the bar's left end at a point.</summary>
    public static IEnumerable<Shape> At(
        Point left,
        double pointsPerTick,
        Precision precision,
        DrawingFrame frame
    )
    {
        var t = frame.TextSize;
        var steps =
            precision.Unit() is UnitSystem.Inch
                ? Inches.Select(i => Length.FromInches(i)).ToList()
                : [.. Millimetres.Select(Length.FromMillimetres)];
        var longest = frame.Width * 0.22;
        var bar = steps.Find(s => s.Ticks * pointsPerTick <= longest);
        if (bar == Length.Zero)
            bar = steps[^1];
        var right = Math.Round(left.X + bar.Ticks * pointsPerTick, 2);
        var middle = Math.Round((left.X + right) / 2, 2);
        yield return new Line(left.X, left.Y, right, left.Y, Ink.Dimension);
        foreach (var x in (double[])[left.X, middle, right])
            yield return new Line(x, left.Y - 0.3 * t, x, left.Y, Ink.Dimension);
        var text = LengthWriter.WriteWithUnit(bar, precision);
        yield return new Label(right + 0.5 * t, left.Y - 0.1 * t, text, t, Anchor.Start, Ink.Quiet);
    }
}
