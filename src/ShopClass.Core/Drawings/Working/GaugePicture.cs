using ShopClass.Core.Measure;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Drawings.Working;

/// <summary>A marking gauge with what it is set to.</summary>
internal static class GaugePicture
{
    public static Drawing Of(Step step, DrawingFrame frame)
    {
        var t = frame.TextSize;
        var setting = step.Marks.Count > 0 ? step.Marks[0] : "";
        var share = WorkLine.Marked(step) is { Ticks: > 0 } length
            ? Math.Clamp(length.Ticks / (8.0 * Length.TicksPerInch), 0.06, 1)
            : 0.5;
        var (y, fence) = (4 * t, 0.62 * frame.Width);
        var pin = Math.Round(fence - share * 0.45 * frame.Width, 2);
        var stem = Math.Min(fence + 11 * t, frame.Width - t);
        return new(
            frame.Width,
            7.5 * t,
            step.Title,
            $"A marking gauge, set to {setting}.",
            [
                new Box(pin - t, y - 0.5 * t, stem - pin + t, t, Ink.Wood),
                new Box(fence, y - 2 * t, 2 * t, 4 * t, Ink.Blank),
                new Line(pin, y + 0.5 * t, pin, y + 1.4 * t, Ink.KnifeLine),
                new Line(pin, y + 2.2 * t, fence, y + 2.2 * t, Ink.Dimension),
                new Line(pin, y + 1.8 * t, pin, y + 2.6 * t, Ink.Dimension),
                new Line(fence, y + 1.8 * t, fence, y + 2.6 * t, Ink.Dimension),
                new Label((pin + fence) / 2, y + 3 * t, setting, t, Anchor.Middle, Ink.Accent),
                new Label(pin, y - 1.2 * t, "pin", t, Anchor.Middle, Ink.Quiet),
                new Label(fence + t, y - 2.7 * t, "fence", t, Anchor.Middle, Ink.Quiet),
            ]
        );
    }
}
