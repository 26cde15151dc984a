namespace ShopClass.Core.Measure;

/// <summary>The unit a course works in. Any field still takes either.</summary>
public enum UnitSystem
{
    /// <summary>Inches and binary fractions.</summary>
    Inch,

    /// <summary>Millimetres.</summary>
    Metric,
}

/// <summary>How fine a course writes its lengths: the smallest division it reads off a rule.</summary>
public enum Precision
{
    /// <summary>1/16 in.</summary>
    Sixteenth,

    /// <summary>1/32 in.</summary>
    ThirtySecond,

    /// <summary>1/64 in.</summary>
    SixtyFourth,

    /// <summary>1 mm.</summary>
    Millimetre,

    /// <summary>0.5 mm.</summary>
    HalfMillimetre,
}

/// <summary>Facts about <see cref="Precision"/>.</summary>
public static class Precisions
{
    /// <summary>The length of one division.</summary>
    public static Length Step(this Precision precision) =>
        precision switch
        {
            Precision.Sixteenth => Length.FromInches(0, 1, 16),
            Precision.ThirtySecond => Length.FromInches(0, 1, 32),
            Precision.SixtyFourth => Length.FromInches(0, 1, 64),
            Precision.Millimetre => Length.FromMillimetres(1),
            Precision.HalfMillimetre => Length.FromHundredthsOfMillimetre(50),
            _ => throw new ArgumentOutOfRangeException(
                nameof(precision),
                precision,
                "Not a precision."
            ),
        };

    /// <summary>The unit this precision belongs to.</summary>
    public static UnitSystem Unit(this Precision precision) =>
        precision is Precision.Millimetre or Precision.HalfMillimetre
            ? UnitSystem.Metric
            : UnitSystem.Inch;

    /// <summary>The precisions a course in this unit can choose from, coarsest first.</summary>
    public static IReadOnlyList<Precision> For(UnitSystem unit) =>
        unit is UnitSystem.Inch
            ? [Precision.Sixteenth, Precision.ThirtySecond, Precision.SixtyFourth]
            : [Precision.Millimetre, Precision.HalfMillimetre];
}
