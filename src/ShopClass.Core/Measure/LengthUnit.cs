namespace ShopClass.Core.Measure;

/// <summary>A unit that can be typed after a number.</summary>
/// <param name="Ticks">Ticks in one.</param>
/// <param name="System">Where it belongs.</param>
internal readonly record struct LengthUnit(long Ticks, UnitSystem System)
{
    public static LengthUnit Inch { get; } = new(Length.TicksPerInch, UnitSystem.Inch);

    private static LengthUnit Millimetres(int count) =>
        new(count * Length.TicksPerMillimetre, UnitSystem.Metric);

    /// <summary>The grid that refused lengths are brought to: 1/64 in or 0.01 mm.</summary>
    public Length Grid =>
        System is UnitSystem.Inch
            ? Length.FromInches(0, 1, 64)
            : Length.FromHundredthsOfMillimetre(1);

    /// <summary>The unit of this word or mark; no word at all means the course's own.</summary>
    public static LengthUnit? Named(string word, UnitSystem unit) =>
        word.TrimEnd('.') switch
        {
            "" => unit is UnitSystem.Inch ? Inch : Millimetres(1),
            "\"" or "in" or "inch" or "inches" => Inch,
            "'" or "ft" or "foot" or "feet" => new(12 * Inch.Ticks, UnitSystem.Inch),
            "mm" or "millimetre" or "millimetres" or "millimeter" or "millimeters" => Millimetres(
                1
            ),
            "cm" or "centimetre" or "centimetres" or "centimeter" or "centimeters" => Millimetres(
                10
            ),
            "m" or "metre" or "metres" or "meter" or "meters" => Millimetres(1000),
            _ => null,
        };
}
