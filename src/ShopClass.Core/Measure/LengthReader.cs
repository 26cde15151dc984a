using System.Numerics;
using System.Text.RegularExpressions;

namespace ShopClass.Core.Measure;

/// <summary>Reads a length as a woodworker writes it: <c>9 1/4</c>, <c>9-1/4"</c>, <c>3' 4 1/2"</c>, <c>½</c>, <c>23.5 cm</c>.</summary>
/// <remarks>
/// Exact or refused: what is not a whole number of ticks is never rounded. Takes any text and never throws; text longer
/// than <see cref="LongestText"/> is refused unread. Zero is a length; less than zero is not.
/// </remarks>
public static partial class LengthReader
{
    /// <summary>Most characters looked at.</summary>
    public const int LongestText = 40;

    /// <summary>The longest length read: 100 ft. Beyond that the unit was surely mistaken.</summary>
    public static Length Longest { get; } = Length.FromInches(1200);

    /// <summary>Reads <paramref name="text"/>; a bare number is in <paramref name="unit"/>.</summary>
    public static Reading<Length> Read(string? text, UnitSystem unit)
    {
        if (string.IsNullOrWhiteSpace(text))
            return Reading<Length>.Refused(LengthRefusals.Empty(unit));
        if (text.Trim().Length > LongestText)
            return Reading<Length>.Refused(LengthRefusals.TooMuchText(unit));

        var refusals = new LengthRefusals(LengthText.Shown(text), unit);
        var plain = LengthText.InOneSpelling(text);
        if (plain.StartsWith('-'))
            return Reading<Length>.Refused(refusals.Negative);

        var feetAndInches = FeetAndInches().Match(plain);
        return feetAndInches.Success
            ? ReadFeetAndInches(feetAndInches, refusals)
            : ReadNumberWithUnit(plain, unit, refusals);
    }

    private static Reading<Length> ReadFeetAndInches(Match match, LengthRefusals refusals)
    {
        var inches = TypedNumber.Read(match.Groups["inches"].Value, refusals);
        if (inches.Problem is { } problem)
            return Reading<Length>.Refused(problem);
        if (inches.Value >= 12)
            return Reading<Length>.Refused(refusals.TooManyInches);
        var feet = new TypedNumber(BigInteger.Parse(match.Groups["feet"].Value), 1);
        return InTicks(feet.Times(12).Plus(inches.Value), LengthUnit.Inch, refusals);
    }

    private static Reading<Length> ReadNumberWithUnit(
        string plain,
        UnitSystem unit,
        LengthRefusals refusals
    )
    {
        var match = NumberWithUnit().Match(plain);
        if (!match.Success)
            return Reading<Length>.Refused(refusals.NotALength(plain));

        var word = match.Groups["unit"].Value;
        if (LengthUnit.Named(word, unit) is not { } lengthUnit)
            return Reading<Length>.Refused(refusals.UnknownUnit(word));

        var number = TypedNumber.Read(match.Groups["number"].Value, refusals);
        if (number.Problem is { } problem)
            return Reading<Length>.Refused(problem);
        if (word.Length == 0 && unit is UnitSystem.Metric && plain.Contains('/'))
            return Reading<Length>.Refused(refusals.FractionWithoutUnit);
        return InTicks(number.Value, lengthUnit, refusals);
    }

    private static Reading<Length> InTicks(
        TypedNumber number,
        LengthUnit unit,
        LengthRefusals refusals
    )
    {
        var ticks = number.Times(unit.Ticks);
        if (ticks > Longest.Ticks)
            return Reading<Length>.Refused(refusals.Absurd);
        return ticks.IsWhole
            ? Reading<Length>.Of(Length.FromTicks((long)ticks.Floor))
            : Reading<Length>.Refused(refusals.OffTheGrid(ticks.Nearest(unit.Grid), unit));
    }

    [GeneratedRegex(
        """^(?<feet>[0-9]+) ?(?:'|ft\.?|feet|foot)[ -]*(?<inches>[0-9][0-9 /.,-]*?) ?(?:"|in\.?|inch|inches)?$"""
    )]
    private static partial Regex FeetAndInches();

    [GeneratedRegex("""^(?<number>[0-9.,][0-9 /.,-]*?) ?(?<unit>'|"|\p{L}+\.?)?$""")]
    private static partial Regex NumberWithUnit();
}
