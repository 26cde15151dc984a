using System.Numerics;
using System.Text.RegularExpressions;

namespace ShopClass.Core.Measure;

/// <summary>A number exactly as typed, as a fraction: <c>9 1/4</c> is 37/4, <c>9.25</c> is 925/100. Never negative.</summary>
/// <param name="Top">Above the line.</param>
/// <param name="Bottom">Below the line; at least 1.</param>
internal readonly partial record struct TypedNumber(BigInteger Top, BigInteger Bottom)
{
    public bool IsWhole => (Top % Bottom).IsZero;

    public BigInteger Floor => Top / Bottom;

    public TypedNumber Times(long factor) => this with { Top = Top * factor };

    public TypedNumber Plus(TypedNumber other) =>
        new(Top * other.Bottom + other.Top * Bottom, Bottom * other.Bottom);

    /// <summary>Taken as ticks, the nearest multiple of the step.</summary>
    public Length Nearest(Length step) =>
        step * (long)((2 * Top + Bottom * step.Ticks) / (2 * Bottom * step.Ticks));

    public static bool operator >(TypedNumber a, long b) => a.Top > b * a.Bottom;

    public static bool operator <(TypedNumber a, long b) => a.Top < b * a.Bottom;

    public static bool operator >=(TypedNumber a, long b) => !(a < b);

    public static bool operator <=(TypedNumber a, long b) => !(a > b);

    /// <summary>Reads digits, a decimal or a fraction, without a unit.</summary>
    public static Reading<TypedNumber> Read(string text, LengthRefusals refusals)
    {
        var fraction = Fraction().Match(text);
        if (fraction.Success)
            return ReadFraction(fraction, refusals);
        if (text.Count(c => c is ',' or '.') > 1 || Thousands().IsMatch(text))
            return Reading<TypedNumber>.Refused(refusals.AmbiguousComma);
        return Decimal().IsMatch(text)
            ? Reading<TypedNumber>.Of(ReadDecimal(text))
            : Reading<TypedNumber>.Refused(refusals.NotALength(text));
    }

    private static Reading<TypedNumber> ReadFraction(Match match, LengthRefusals refusals)
    {
        var whole = match.Groups["whole"] is { Success: true, Value: var digits }
            ? BigInteger.Parse(digits)
            : BigInteger.Zero;
        var top = BigInteger.Parse(match.Groups["top"].Value);
        var bottom = BigInteger.Parse(match.Groups["bottom"].Value);
        if (bottom.IsZero)
            return Reading<TypedNumber>.Refused(refusals.ZeroUnderTheLine);
        // 91/4 is more often a forgotten space than a heap of quarters, and 5/4 is a seller's name for a thickness.
        if (top >= bottom)
            return Reading<TypedNumber>.Refused(refusals.TopHeavy);
        return Reading<TypedNumber>.Of(new(whole * bottom + top, bottom));
    }

    private static TypedNumber ReadDecimal(string text)
    {
        var mark = text.IndexOfAny(['.', ',']);
        var decimals = mark < 0 ? 0 : text.Length - mark - 1;
        var digits = mark < 0 ? text : text.Remove(mark, 1);
        return new(BigInteger.Parse(digits), BigInteger.Pow(10, decimals));
    }

    [GeneratedRegex("^(?:(?<whole>[0-9]+)(?: |- ?))?(?<top>[0-9]+) ?/ ?(?<bottom>[0-9]+)$")]
    private static partial Regex Fraction();

    [GeneratedRegex("^[0-9]*(?:[.,][0-9]+)$|^[0-9]+$")]
    private static partial Regex Decimal();

    [GeneratedRegex("^[1-9][0-9]{0,2},[0-9]{3}$")]
    private static partial Regex Thousands();
}
