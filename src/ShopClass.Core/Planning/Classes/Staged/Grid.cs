namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>
/// Sizes counted in steps, so that tables over lengths stay small. Where all sizes are whole steps nothing is lost; where
/// that would be too many steps, pieces are rounded: up for layouts, which then surely fit, down for bounds, which then
/// surely hold.
/// </summary>
internal sealed class Grid
{
    private const int MostSteps = 12_000;
    private readonly int step;
    private readonly bool up;

    private Grid(int step, bool up, bool isExact)
    {
        IsExact = isExact;
        this.step = step;
        this.up = up;
    }

    /// <summary>Whether all sizes are whole steps.</summary>
    public bool IsExact { get; }

    /// <summary>The coarsest steps that lose nothing, or as many as are allowed.</summary>
    public static Grid For(IEnumerable<int> sizes, int longest, bool up)
    {
        var common = 0;
        var smallest = int.MaxValue;
        foreach (var size in sizes)
        {
            common = Common(common, size);
            smallest = Math.Min(smallest, size);
        }

        common = Math.Max(common, 1);
        return longest / common <= MostSteps
            ? new(common, up, isExact: true)
            : new(Math.Min(longest / MostSteps + 1, smallest), up, isExact: false);
    }

    /// <summary>The steps a piece takes.</summary>
    public int Piece(int size) => up ? (size + step - 1) / step : size / step;

    /// <summary>The steps a board has room for.</summary>
    public int Room(int size) => size / step;

    private static int Common(int a, int b)
    {
        while (b != 0)
            (a, b) = (b, a % b);
        return a;
    }
}
