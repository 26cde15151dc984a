namespace ShopClass.Core.Measure;

/// <summary>Lengths inside sentences about what somebody typed.</summary>
internal static class Said
{
    /// <summary>Exactly as stored, with its unit.</summary>
    public static string Exactly(Length length, UnitSystem unit) =>
        LengthWriter.WriteExactWithUnit(length, unit);

    /// <summary>A range in round figures of the unit, never wider than the range itself.</summary>
    public static string Between(Length least, Length most, UnitSystem unit) =>
        $"from {AtLeast(least, unit)} to {AtMost(most, unit)}";

    /// <summary>An upper limit in round figures of the unit, never above the limit itself.</summary>
    public static string AtMost(Length most, UnitSystem unit) =>
        Exactly(
            most.RoundDownTo(
                unit is UnitSystem.Inch ? Length.FromInches(0, 1, 16) : Length.FromMillimetres(1)
            ),
            unit
        );

    /// <summary>A lower limit in round figures of the unit, never below the limit itself.</summary>
    public static string AtLeast(Length least, UnitSystem unit) =>
        Exactly(
            least.RoundUpTo(
                unit is UnitSystem.Inch
                    ? Length.FromInches(0, 1, 64)
                    : Length.FromHundredthsOfMillimetre(10)
            ),
            unit
        );
}
