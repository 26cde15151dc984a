namespace ShopClass.Core.Measure;

/// <summary>Writes lengths for people, to a course's precision.</summary>
public static class LengthWriter
{
    /// <summary>
    /// The length rounded to the precision, without its unit: <c>9 1/4</c>, <c>235</c>, <c>23.5</c>. Reading the text
    /// back in the same unit gives the rounded length.
    /// </summary>
    public static string Write(Length length, Precision precision) =>
        throw new NotImplementedException();

    /// <summary>The same with its unit: <c>9 1/4 in</c>, <c>235 mm</c>.</summary>
    public static string WriteWithUnit(Length length, Precision precision) =>
        throw new NotImplementedException();

    /// <summary>
    /// The length exactly as stored, for a field being edited: to 1/64 in or 0.01 mm where that is whole, whatever the
    /// course's precision, so that opening and saving a field never changes it.
    /// </summary>
    public static string WriteExact(Length length, UnitSystem unit) =>
        throw new NotImplementedException();

    /// <summary>Thickness x width x length with one unit at the end: <c>3/4 x 6 x 14 in</c> (the sign is ×).</summary>
    public static string WriteSize(
        Length thickness,
        Length width,
        Length length,
        Precision precision
    ) => throw new NotImplementedException();
}
