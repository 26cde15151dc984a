using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Drawings.Working;

/// <summary>Adds under the picture of a cut on a board which side the knee or hand and the waste are on.</summary>
internal static class HandOnBoard
{
    public static Drawing Added(Drawing drawing, Cut cut, Step step, DrawingFrame frame)
    {
        if (step.WasteSide is not { } waste)
            return drawing;
        var t = frame.TextSize;
        var y = drawing.Height + 1.6 * t;
        var (left, right) = (0.22 * frame.Width, 0.78 * frame.Width);
        var (hand, off) = waste is Side.Right ? (left, right) : (right, left);
        var middle = frame.Width / 2;
        return drawing with
        {
            Height = Math.Round(y + 2.4 * t, 2),
            Shapes =
            [
                .. drawing.Shapes,
                new Line(middle, y - 1.2 * t, middle, y + 1.2 * t, Ink.Accent),
                At(middle, y + 1.9 * t, "saw, seen from where you stand", 0.8 * t, Ink.Quiet),
                new Oval(Math.Round(hand, 2), Math.Round(y, 2), 3.2 * t, t, Ink.Accent),
                At(hand, y, Holding(cut), 0.9 * t, Ink.Lettering),
                new Box(
                    Math.Round(off - 2.8 * t, 2),
                    Math.Round(y - t, 2),
                    5.6 * t,
                    2 * t,
                    Ink.Waste
                ),
                At(off, y, "waste side", 0.9 * t, Ink.Lettering),
            ],
        };
    }

    private static string Holding(Cut cut) =>
        cut.Support switch
        {
            Support.SawBench => "knee and hand",
            Support.Vise => "vise",
            _ => "hand",
        };

    private static Label At(double x, double y, string text, double size, Ink ink) =>
        new(Math.Round(x, 2), Math.Round(y, 2), text, Math.Round(size, 2), Anchor.Middle, ink);
}
