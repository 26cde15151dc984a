using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Sawing.Rehearsing;

/// <summary>Says lengths and places at the course's precision.</summary>
internal readonly record struct Telling(Precision Precision)
{
    /// <summary>A length with its unit; what is too small to write is "less than" the smallest division.</summary>
    public string Long(Length length)
    {
        var step = Precision.Step();
        return length > Length.Zero && length < step
            ? $"less than {LengthWriter.WriteWithUnit(step, Precision)}"
            : LengthWriter.WriteWithUnit(length, Precision);
    }

    /// <summary>Where something lies: "from 12 to 13 1/2 in along the board and 0 to 3 in across it".</summary>
    public string Place(BoardRect rect) =>
        $"from {Bare(rect.From)} to {Long(rect.To)} along the board and {Bare(rect.Near)} to {Long(rect.Far)} across it";

    /// <summary>Length x width.</summary>
    public string Size(BoardRect rect) =>
        $"{Long(rect.Along)} along and {Long(rect.Across)} across";

    private string Bare(Length length) => LengthWriter.Write(length, Precision);
}
