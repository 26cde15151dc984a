using System.Globalization;
using System.Numerics;

namespace ShopClass.Core.Measure;

/// <summary>Writes lengths for people, to a course's precision.</summary>
public static class LengthWriter
{
    private const long TicksPer64th = Length.TicksPerInch / 64;
    private const long TicksPerHundredth = Length.TicksPerMillimetre / 100;

    // A tick is 1/40640 in and 40640 = 127 x 320: only multiples of 127 ticks are finite decimals of an inch.
    private const long TicksPerDecimalInch = 127;

    /// <summary>
    /// The length rounded to the precision, without its unit: <c>9 1/4</c>, <c>235</c>, <c>23.5</c>. Reading the text
    /// back in the same unit gives the rounded length.
    /// </summary>
    public static string Write(Length length, Precision precision)
    {
        var rounded = length.RoundTo(precision.Step());
        return precision.Unit() is UnitSystem.Inch
            ? Signed(rounded, FractionOfInches)
            : Signed(rounded, Millimetres);
    }

    /// <summary>The same with its unit: <c>9 1/4 in</c>, <c>235 mm</c>.</summary>
    public static string WriteWithUnit(Length length, Precision precision) =>
        $"{Write(length, precision)} {UnitOf(precision)}";

    /// <summary>
    /// The length exactly as stored, for a field being edited: to 1/64 in or 0.01 mm where that is whole, whatever the
    /// course's precision, so that opening and saving a field never changes it.
    /// </summary>
    /// <remarks>Where it is not whole in the field's unit, the other unit is named: <c>235 mm</c> in an inch course.</remarks>
    public static string WriteExact(Length length, UnitSystem unit) =>
        Signed(length, unit is UnitSystem.Inch ? ExactInches : ExactMillimetres);

    /// <summary>Exactly as stored, with its unit once: <c>1/32 in</c>, <c>235 mm</c>. For small sizes, where rounding would mislead.</summary>
    public static string WriteExactWithUnit(Length length, UnitSystem unit)
    {
        var exact = WriteExact(length, unit);
        return char.IsLetter(exact[^1])
            ? exact
            : $"{exact} {(unit is UnitSystem.Inch ? "in" : "mm")}";
    }

    /// <summary>Thickness x width x length with one unit at the end: <c>3/4 x 6 x 14 in</c> (the sign is ×).</summary>
    public static string WriteSize(
        Length thickness,
        Length width,
        Length length,
        Precision precision
    ) =>
        $"{Write(thickness, precision)} × {Write(width, precision)} × {WriteWithUnit(length, precision)}";

    private static string ExactInches(Length length)
    {
        if (length.Ticks % TicksPer64th == 0)
            return FractionOfInches(length);
        return length.Ticks % TicksPerDecimalInch == 0
            ? Plain((decimal)length.Ticks / Length.TicksPerInch)
            : $"{Millimetres(length)} mm";
    }

    private static string ExactMillimetres(Length length) =>
        length.Ticks % TicksPerHundredth != 0 && length.Ticks % TicksPer64th == 0
            ? $"{FractionOfInches(length)} in"
            : Millimetres(length);

    private static string FractionOfInches(Length length)
    {
        var (whole, over) = Math.DivRem(length.Ticks, Length.TicksPerInch);
        if (over == 0)
            return $"{whole}";
        var common = (long)BigInteger.GreatestCommonDivisor(over, Length.TicksPerInch);
        var fraction = $"{over / common}/{Length.TicksPerInch / common}";
        return whole == 0 ? fraction : $"{whole} {fraction}";
    }

    // A tick is 0.000625 mm, so this is always a finite decimal.
    private static string Millimetres(Length length) =>
        Plain((decimal)length.Ticks / Length.TicksPerMillimetre);

    private static string Plain(decimal number) =>
        number.ToString("0.##########", CultureInfo.InvariantCulture);

    private static string Signed(Length length, Func<Length, string> write) =>
        length < Length.Zero ? $"-{write(Opposite(length))}" : write(length);

    // The least long has no opposite; a sentence about such a length must not fail over one tick.
    private static Length Opposite(Length length) =>
        length.Ticks == long.MinValue ? Length.FromTicks(long.MaxValue) : -length;

    private static string UnitOf(Precision precision) =>
        precision.Unit() is UnitSystem.Inch ? "in" : "mm";
}
