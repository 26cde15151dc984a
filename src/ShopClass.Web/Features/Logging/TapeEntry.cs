using System.Globalization;
using ShopClass.Core.Measure;

namespace ShopClass.Web.Features.Logging;

/// <summary>
/// A length read off a tape: whole inches typed and the fraction tapped, or all of it typed. And the question to ask when
/// it was most likely read in the other unit.
/// </summary>
public static class TapeEntry
{
    /// <summary>The sixteenths of an inch as they are tapped, in the rows of four of a tape.</summary>
    public static IReadOnlyList<string> Fractions { get; } =
    [.. Enumerable.Range(1, 15).Select(Fraction)];

    /// <summary>What was typed and tapped, as one length.</summary>
    public static Reading<Length> Read(string? text, string? fraction, UnitSystem unit)
    {
        var typed = (text ?? "").Trim();
        var tapped = (fraction ?? "").Trim();
        if (tapped.Length == 0 || unit is not UnitSystem.Inch)
            return LengthReader.Read(typed, unit);
        if (!Fractions.Contains(tapped))
            return Reading<Length>.Refused("Tap one of the fractions.");
        return typed.All(c => char.IsAsciiDigit(c) || c == ' ')
            ? LengthReader.Read($"{typed} {tapped}".Trim(), unit)
            : Reading<Length>.Refused(
                "A fraction is tapped, so only whole inches can stand in the field. Or tap “none” and type all of it."
            );
    }

    /// <summary>How a length is shown again: what stands in the field, and which fraction is tapped.</summary>
    public static (string Text, string Fraction) Show(Length? length, UnitSystem unit)
    {
        if (length is not { } value)
            return ("", "");
        var sixteenth = Length.TicksPerInch / 16;
        if (unit is UnitSystem.Inch && value.Ticks % sixteenth == 0)
        {
            var (whole, over) = Math.DivRem(value.Ticks / sixteenth, 16);
            return (
                whole == 0 && over > 0 ? "" : whole.ToString(CultureInfo.InvariantCulture),
                over == 0 ? "" : Fraction((int)over)
            );
        }

        return (LengthWriter.WriteExact(value, unit), "");
    }

    /// <summary>
    /// A question when a size typed without a unit is hardly one of a board's, and in the other unit would be; null when it
    /// may be right, and always when the unit was typed with it.
    /// </summary>
    /// <param name="screen">Which size.</param>
    /// <param name="typed">As it was typed.</param>
    /// <param name="read">What was read.</param>
    /// <param name="unit">The course's unit.</param>
    public static string? WrongUnit(EntryScreen screen, string? typed, Length read, UnitSystem unit)
    {
        if (typed is null || typed.Any(c => char.IsLetter(c) || c is '"' or '\'' or '″' or '′'))
            return null;
        // What boards are like (common practice): wide enough to be called one, no longer than a lumber rack.
        var (least, most) = screen switch
        {
            EntryScreen.Length => (Length.FromInches(6), Length.FromInches(20 * 12)),
            EntryScreen.Thickness => (Length.FromInches(0, 1, 8), Length.FromInches(4)),
            _ => (Length.FromInches(0, 3, 4), Length.FromInches(30)),
        };
        if (read >= least && read <= most)
            return null;
        var other =
            unit is UnitSystem.Inch
                ? Length.FromTicks(read.Ticks * 10 / 254)
                : Length.FromTicks(read.Ticks * 254 / 10);
        if (other < least || other > most)
            return null;
        var (here, there) = unit is UnitSystem.Inch ? ("in", "mm") : ("mm", "in");
        return $"{Said(read, unit)} is hardly the {Word(screen)} of a board. If you read {there}, write the unit with it: {typed.Trim()} {there}. If it is right, write {typed.Trim()} {here}.";
    }

    private static string Said(Length length, UnitSystem unit) =>
        LengthWriter.WriteExactWithUnit(length, unit);

    private static string Word(EntryScreen screen) =>
        screen switch
        {
            EntryScreen.Length => "length",
            EntryScreen.Thickness => "thickness",
            _ => "width",
        };

    private static string Fraction(int sixteenths)
    {
        var (over, under) = (sixteenths, 16);
        while (over % 2 == 0)
            (over, under) = (over / 2, under / 2);
        return string.Create(CultureInfo.InvariantCulture, $"{over}/{under}");
    }
}
