namespace ShopClass.Core.Drawings;

/// <summary>The room a drawing gets. Lengths scale to it; letters do not.</summary>
/// <param name="Width">Width in points; the height follows from what is drawn.</param>
/// <param name="TextSize">Height of ordinary letters, points.</param>
/// <param name="Upright">Whether boards stand on end (start at the top), as on a narrow screen; otherwise they lie, start to the left.</param>
public sealed record DrawingFrame(double Width, double TextSize, bool Upright = false)
{
    /// <summary>Across a desktop page or a landscape sheet.</summary>
    public static DrawingFrame Wide { get; } = new(960, 13);

    /// <summary>A phone screen.</summary>
    public static DrawingFrame Narrow { get; } = new(358, 13, Upright: true);

    /// <summary>The width between the margins of a sheet of paper.</summary>
    public static DrawingFrame Paper { get; } = new(515, 8);
}
