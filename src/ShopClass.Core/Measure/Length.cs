using System.Globalization;

namespace ShopClass.Core.Measure;

/// <summary>
/// A distance, exact. One whole number of ticks; a tick is 1/1600 mm, which is also 1/40,640 in, because an inch
/// is 25.4 mm by definition (international yard and pound agreement, 1959). So every 1/64 in (635 ticks) and every
/// 0.01 mm (16 ticks) is a whole number and nothing is ever rounded on the way.
/// </summary>
/// <remarks>
/// Range: about ±5.7 billion km, so only a slip can leave it; arithmetic is checked and throws
/// <see cref="OverflowException"/>. <c>default</c> is zero. Equality and order are those of the tick count.
/// </remarks>
public readonly record struct Length : IComparable<Length>
{
    /// <summary>Ticks in a millimetre.</summary>
    public const long TicksPerMillimetre = 1600;

    /// <summary>Ticks in an inch.</summary>
    public const long TicksPerInch = 40_640;

    private Length(long ticks) => Ticks = ticks;

    /// <summary>The distance in ticks of 1/1600 mm.</summary>
    public long Ticks { get; }

    /// <summary>No distance at all; the same as <c>default</c>.</summary>
    public static Length Zero => default;

    /// <summary>A distance of so many ticks of 1/1600 mm.</summary>
    public static Length FromTicks(long ticks) => new(ticks);

    /// <summary>A distance of whole millimetres.</summary>
    public static Length FromMillimetres(long millimetres) => new(millimetres * TicksPerMillimetre);

    /// <summary>A distance of whole hundredths of a millimetre.</summary>
    public static Length FromHundredthsOfMillimetre(long hundredths) =>
        new(hundredths * (TicksPerMillimetre / 100));

    /// <summary>
    /// A distance of <paramref name="whole"/> inches and <paramref name="numerator"/>/<paramref name="denominator"/>.
    /// </summary>
    /// <exception cref="ArgumentException">The fraction is not a whole number of ticks (1/3 in is not).</exception>
    public static Length FromInches(long whole, long numerator = 0, long denominator = 1)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(denominator, 1);
        var scaled = numerator * TicksPerInch;
        if (scaled % denominator != 0)
        {
            throw new ArgumentException(
                $"{numerator}/{denominator} in is not a whole number of ticks of 1/40640 in.",
                nameof(denominator)
            );
        }

        return new(whole * TicksPerInch + scaled / denominator);
    }

    /// <summary>The smaller of two.</summary>
    public static Length Min(Length a, Length b) => a.Ticks <= b.Ticks ? a : b;

    /// <summary>The larger of two.</summary>
    public static Length Max(Length a, Length b) => a.Ticks >= b.Ticks ? a : b;

    /// <summary>The nearest multiple of <paramref name="step"/> that is not more than this.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The step is zero or less.</exception>
    public Length RoundDownTo(Length step)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(step.Ticks, 1);
        var over = Ticks % step.Ticks;
        return new(Ticks - (over < 0 ? over + step.Ticks : over));
    }

    /// <summary>The nearest multiple of <paramref name="step"/> that is not less than this.</summary>
    public Length RoundUpTo(Length step) => -(-this).RoundDownTo(step);

    /// <summary>The nearest multiple of <paramref name="step"/>; halfway goes up.</summary>
    public Length RoundTo(Length step) => (this + new Length(step.Ticks / 2)).RoundDownTo(step);

    /// <summary>
    /// Shares this out in <paramref name="parts"/> that add up to the whole; where it does not divide, the first
    /// ones are a tick longer.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than one part, or a negative length.</exception>
    public IReadOnlyList<Length> Split(int parts)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(parts, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(Ticks, 0);
        var (share, longer) = Math.DivRem(Ticks, parts);
        return
        [
            .. Enumerable.Range(0, parts).Select(i => new Length(i < longer ? share + 1 : share)),
        ];
    }

    /// <inheritdoc/>
    public int CompareTo(Length other) => Ticks.CompareTo(other.Ticks);

    /// <summary>Ticks and millimetres, for a debugger; for people use <see cref="LengthWriter"/>.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{(decimal)Ticks / TicksPerMillimetre} mm");

    public static Length operator +(Length a, Length b) => new(a.Ticks + b.Ticks);

    public static Length operator -(Length a, Length b) => new(a.Ticks - b.Ticks);

    public static Length operator -(Length a) => new(-a.Ticks);

    public static Length operator *(Length a, long times) => new(a.Ticks * times);

    public static Length operator *(long times, Length a) => a * times;

    /// <summary>The area of a rectangle with these sides.</summary>
    public static Area operator *(Length a, Length b) =>
        Area.FromSquareTicks((Int128)a.Ticks * b.Ticks);

    public static bool operator <(Length a, Length b) => a.Ticks < b.Ticks;

    public static bool operator >(Length a, Length b) => a.Ticks > b.Ticks;

    public static bool operator <=(Length a, Length b) => a.Ticks <= b.Ticks;

    public static bool operator >=(Length a, Length b) => a.Ticks >= b.Ticks;
}
