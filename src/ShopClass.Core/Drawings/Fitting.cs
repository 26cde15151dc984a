namespace ShopClass.Core.Drawings;

/// <summary>Words written inside a rectangle of the board, as big and as level as they will go.</summary>
internal static class Fitting
{
    private static readonly double[] Shrinks = [1, 0.9, 0.8];

    /// <summary>
    /// Writes a name with its size inside the rectangle: on two lines or on one, level or turned.
    /// </summary>
    /// <returns>False when there is no room for both; nothing is written then.</returns>
    public static bool Write(
        Sketch sketch,
        Lumber.BoardRect rect,
        string name,
        string size,
        Ink nameInk
    )
    {
        var (x, y, width, height) = sketch.Scale.BoxFor(rect);
        var middle = new Point(x + width / 2, y + height / 2);
        foreach (var shrink in Shrinks)
        {
            var t = sketch.Frame.TextSize * shrink;
            foreach (var turned in (bool[])[false, true])
            {
                var (along, across) = turned ? (height, width) : (width, height);
                if (OnTwoLines(sketch, middle, (along, across), (name, size, t), nameInk, turned))
                    return true;
                if (
                    OnOneLine(
                        sketch,
                        middle,
                        (along, across),
                        (size.Length == 0 ? name : $"{name}, {size}", t),
                        nameInk,
                        turned
                    )
                )
                    return true;
            }
        }

        return false;
    }

    private static bool OnTwoLines(
        Sketch sketch,
        Point middle,
        (double Along, double Across) room,
        (string Name, string Size, double T) words,
        Ink ink,
        bool turned
    )
    {
        var (name, size, t) = words;
        var wide = Math.Max(LetterWidths.Of(name, t * 1.25), LetterWidths.Of(size, t));
        if (size.Length == 0 || wide + 0.8 * t > room.Along || 3.1 * t > room.Across)
            return false;
        sketch.Add(LabelAt(Off(middle, -0.68 * t, turned), name, t * 1.25, ink, turned));
        sketch.Add(LabelAt(Off(middle, 0.68 * t, turned), size, t, Ink.Dimension, turned));
        return true;
    }

    private static bool OnOneLine(
        Sketch sketch,
        Point middle,
        (double Along, double Across) room,
        (string Text, double T) words,
        Ink ink,
        bool turned
    )
    {
        var (text, t) = words;
        if (LetterWidths.Of(text, t) + 0.8 * t > room.Along || 1.3 * t > room.Across)
            return false;
        sketch.Add(LabelAt(middle, text, t, ink, turned));
        return true;
    }

    // A turned label reads from the top down, so its second line lies to the left of its first.
    private static Point Off(Point middle, double lines, bool turned) =>
        turned ? new(middle.X - lines, middle.Y) : new(middle.X, middle.Y + lines);

    private static Label LabelAt(Point at, string text, double size, Ink ink, bool turned) =>
        new(
            Math.Round(at.X, 2),
            Math.Round(at.Y, 2),
            text,
            Math.Round(size, 2),
            Anchor.Middle,
            ink,
            turned ? 90 : 0
        );
}
