using ShopClass.Core.Measure;
using ShopClass.Print.Sheets;

namespace ShopClass.Print.Labels;

/// <summary>A sheet of labels: how many, how big, and where the first one lies.</summary>
/// <param name="Id">Its key: <c>a4-3x8</c>.</param>
/// <param name="Name">What it is: "A4, 3 × 8 labels of 70 × 37 mm".</param>
/// <param name="Paper">The paper.</param>
/// <param name="Across">Labels side by side.</param>
/// <param name="Down">Labels one below the other.</param>
/// <param name="Width">Width of a label.</param>
/// <param name="Height">Height of a label.</param>
/// <param name="Left">From the paper's left edge to the first label.</param>
/// <param name="Top">From the paper's top edge to the first label.</param>
/// <param name="StepAcross">From the left edge of one label to the next.</param>
/// <param name="StepDown">From the top edge of one label to the next.</param>
public sealed record LabelSheet(
    string Id,
    string Name,
    Paper Paper,
    int Across,
    int Down,
    Length Width,
    Length Height,
    Length Left,
    Length Top,
    Length StepAcross,
    Length StepDown
)
{
    /// <summary>Label sheets commonly sold for A4 and Letter (grids from memory; measure yours and move it if it differs).</summary>
    public static IReadOnlyList<LabelSheet> All { get; } =
    [
        Metric("a4-3x8", "A4, 3 × 8 labels of 70 × 37 mm", 3, 8, 7000, 3700, 0, 50, 7000, 3700),
        Metric(
            "a4-2x7",
            "A4, 2 × 7 labels of 99.1 × 38.1 mm",
            2,
            7,
            9910,
            3810,
            470,
            1510,
            10160,
            3810
        ),
        Metric(
            "a4-2x4",
            "A4, 2 × 4 labels of 99.1 × 67.7 mm",
            2,
            4,
            9910,
            6770,
            470,
            1310,
            10160,
            6770
        ),
        Inch("letter-3x10", "Letter, 3 × 10 labels of 2 5/8 × 1 in", 3, 10, 42, 16, 3, 8, 44, 16),
        Inch("letter-2x5", "Letter, 2 × 5 labels of 4 × 2 in", 2, 5, 64, 32, 3, 8, 66, 32),
        Inch("letter-2x3", "Letter, 2 × 3 labels of 4 × 3 1/3 in", 2, 3, 64, 53, 3, 8, 66, 53),
    ];

    /// <summary>Labels on one sheet.</summary>
    public int Count => Across * Down;

    /// <summary>The sheet with this key, or null.</summary>
    public static LabelSheet? Find(string id) => All.FirstOrDefault(s => s.Id == id);

    /// <summary>Why labels would not lie on the paper, moved like this; null when all do.</summary>
    public string? Problem(Length right, Length down)
    {
        var (wide, high) =
            Paper is Paper.A4
                ? (Length.FromMillimetres(210), Length.FromMillimetres(297))
                : (Length.FromInches(8, 1, 2), Length.FromInches(11));
        var (left, top) = (Left + right, Top + down);
        var (farRight, bottom) = (
            left + StepAcross * (Across - 1) + Width,
            top + StepDown * (Down - 1) + Height
        );
        return left < Length.Zero || top < Length.Zero || farRight > wide || bottom > high
            ? $"Moved like this, labels of “{Name}” would run off the paper. Move them less."
            : null;
    }

    private static LabelSheet Metric(
        string id,
        string name,
        int across,
        int down,
        long width,
        long height,
        long left,
        long top,
        long stepAcross,
        long stepDown
    ) =>
        new(
            id,
            name,
            Paper.A4,
            across,
            down,
            Length.FromHundredthsOfMillimetre(width),
            Length.FromHundredthsOfMillimetre(height),
            Length.FromHundredthsOfMillimetre(left),
            Length.FromHundredthsOfMillimetre(top),
            Length.FromHundredthsOfMillimetre(stepAcross),
            Length.FromHundredthsOfMillimetre(stepDown)
        );

    // In sixteenths of an inch.
    private static LabelSheet Inch(
        string id,
        string name,
        int across,
        int down,
        long width,
        long height,
        long left,
        long top,
        long stepAcross,
        long stepDown
    ) =>
        new(
            id,
            name,
            Paper.Letter,
            across,
            down,
            Length.FromInches(0, width, 16),
            Length.FromInches(0, height, 16),
            Length.FromInches(0, left, 16),
            Length.FromInches(0, top, 16),
            Length.FromInches(0, stepAcross, 16),
            Length.FromInches(0, stepDown, 16)
        );
}
