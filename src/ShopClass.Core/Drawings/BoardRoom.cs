namespace ShopClass.Core.Drawings;

/// <summary>The room around a board for its dimensions, tape and notes, and what is left for the board itself.</summary>
/// <param name="BeforeStart">Room before the board's start.</param>
/// <param name="AfterEnd">Room after its far end.</param>
/// <param name="NearSide">Room on the side of its near edge.</param>
/// <param name="FarSide">Least room on the side of its far edge; notes may ask for more.</param>
/// <param name="Along">The most a board may take along.</param>
/// <param name="Across">The most it may take across.</param>
/// <param name="ForLength">Room for the dimension line beyond the notes.</param>
/// <param name="Upright">Whether boards stand on end.</param>
internal sealed record BoardRoom(
    double BeforeStart,
    double AfterEnd,
    double NearSide,
    double FarSide,
    double Along,
    double Across,
    double ForLength,
    bool Upright
)
{
    /// <summary>The usual room in a frame.</summary>
    public static BoardRoom In(DrawingFrame frame)
    {
        var t = frame.TextSize;
        return frame.Upright
            ? new(
                2.6 * t,
                2.6 * t,
                5 * t,
                7.6 * t,
                frame.Width * 2.9,
                frame.Width - 12.6 * t,
                0,
                true
            )
            : new(
                4.4 * t,
                4.4 * t,
                3.2 * t,
                2.6 * t,
                frame.Width - 8.8 * t,
                frame.Width * 0.34,
                1.9 * t,
                false
            );
    }

    /// <summary>Where the board's start meets its near edge, with so much room for notes beyond the far edge.</summary>
    public Point StartOf(BoardScale? scale, double notes) =>
        Upright
            ? new(NearSide, BeforeStart)
            : new(BeforeStart, Math.Max(FarSide, notes + ForLength) + (scale?.WidthDrawn ?? 0));
}
