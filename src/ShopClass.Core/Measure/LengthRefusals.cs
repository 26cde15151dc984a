namespace ShopClass.Core.Measure;

/// <summary>Why typed text is no length: what was read, and what is expected in this unit.</summary>
/// <param name="Typed">What was typed, fit to be shown.</param>
/// <param name="Unit">The unit of the field.</param>
internal sealed record LengthRefusals(string Typed, UnitSystem Unit)
{
    private string Expected => $"Write a length such as {Examples(Unit)}.";

    public static string Empty(UnitSystem unit) =>
        $"Nothing was typed. Write a length such as {Examples(unit)}.";

    public static string TooMuchText(UnitSystem unit) =>
        $"That is more than {LengthReader.LongestText} characters, too many for a length. Write a length such as {Examples(unit)}.";

    public string Negative => $"“{Typed}” is less than zero. A length is zero or more. {Expected}";

    public string TooManyInches =>
        $"“{Typed}” has 12 or more inches after the feet. Write the inches below 12, or the whole length in inches.";

    public string ZeroUnderTheLine =>
        $"“{Typed}” has a zero under the fraction line. The number there is 1 or more. {Expected}";

    public string TopHeavy =>
        $"“{Typed}” has a fraction that is one or more. Write the whole number first, with a space: 1 1/4 and not 5/4.";

    public string AmbiguousComma =>
        $"“{Typed}” can be read in two ways because of its comma or point. Write thousands without a mark and decimals with one point.";

    public string FractionWithoutUnit =>
        $"“{Typed}” is a fraction without a unit, and this field is in millimetres. Add “in” if it is inches, or write a decimal such as 9.5.";

    public string Absurd =>
        $"“{Typed}” is longer than 100 ft (30 m), the most read here. Check the number and its unit.";

    public string UnknownUnit(string word) =>
        $"“{Typed}” ends in “{word}”, which is no unit known here. Units are in, ft, mm, cm and m.";

    public string NotALength(string plain) =>
        plain.Any(char.IsLetter)
            ? $"“{Typed}” has letters that cannot be read as a length. {Expected}"
            : $"“{Typed}” cannot be read as one length. {Expected}";

    public string OffTheGrid(Length nearest, LengthUnit unit) =>
        $"“{Typed}” falls between the marks a length is kept to. The nearest is {LengthWriter.WriteExactWithUnit(nearest, unit.System)}.";

    private static string Examples(UnitSystem unit) =>
        unit is UnitSystem.Inch ? "9 1/4, 9.25 or 3' 4 1/2\"" : "235, 23.5 cm or 1.2 m";
}
