using ShopClass.Core.Measure;

namespace ShopClass.Web.Features.Shared;

/// <summary>
/// What stands in a length field: the text as typed, and what was read from it. The text is only ever replaced by
/// <see cref="Show"/>, so what somebody typed stays until they change it.
/// </summary>
public sealed class LengthEntry
{
    public string Text { get; private set; } = "";

    /// <summary>What was read; null when the field is empty or could not be read.</summary>
    public Length? Value { get; private set; }

    /// <summary>The reader's sentence when the text could not be read.</summary>
    public string? Problem { get; private set; }

    /// <summary>What was read, in the field's unit, where the text itself does not already say it.</summary>
    public string? Echo { get; private set; }

    /// <summary>Puts a value in the field, as it is stored.</summary>
    public void Show(Length? value, UnitSystem unit)
    {
        Value = value;
        Problem = null;
        Text = value is { } length ? LengthWriter.WriteExact(length, unit) : "";
        Echo = EchoOf(Text, value, unit);
    }

    /// <summary>Takes what was typed. An empty field is a problem only where a length is required.</summary>
    public void Type(string? text, UnitSystem unit, bool required)
    {
        Text = text ?? "";
        if (string.IsNullOrWhiteSpace(Text) && !required)
        {
            (Value, Problem, Echo) = (null, null, null);
            return;
        }

        var reading = LengthReader.Read(Text, unit);
        Value = reading.IsRead ? reading.Value : null;
        Problem = reading.Problem;
        Echo = EchoOf(Text, Value, unit);
    }

    private static string? EchoOf(string text, Length? value, UnitSystem unit)
    {
        if (value is not { } length)
            return null;

        if (length != length.RoundTo(FinestSaid(unit)))
            return $"about {LengthWriter.WriteWithUnit(length, Precisions.For(unit)[^1])}";

        var exact = LengthWriter.WriteExact(length, unit);
        var withUnit = LengthWriter.WriteExactWithUnit(length, unit);
        var typed = text.Trim().TrimEnd('"', '″', '”').TrimEnd();
        return typed == exact || typed == withUnit ? null : $"= {withUnit}";
    }

    // An inch rule ends at 64ths; a millimetre field can say every hundredth.
    private static Length FinestSaid(UnitSystem unit) =>
        unit is UnitSystem.Inch
            ? Precision.SixtyFourth.Step()
            : Length.FromHundredthsOfMillimetre(1);
}
