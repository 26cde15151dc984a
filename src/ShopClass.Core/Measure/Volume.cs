namespace ShopClass.Core.Measure;

/// <summary>
/// A volume, exact, in cubic ticks (1/1600 mm cubed). <c>default</c> is zero. Counted in 128 bits: 64 would overflow
/// near 954 board feet.
/// </summary>
public readonly record struct Volume
{
    private Volume(Int128 cubicTicks) => CubicTicks = cubicTicks;

    /// <summary>The volume in cubic ticks.</summary>
    public Int128 CubicTicks { get; }

    /// <summary>A volume of so many cubic ticks.</summary>
    public static Volume FromCubicTicks(Int128 cubicTicks) => new(cubicTicks);

    /// <summary>The volume of a block with these sides.</summary>
    public static Volume Of(Length thickness, Length width, Length length) =>
        new((Int128)thickness.Ticks * width.Ticks * length.Ticks);

    public static Volume operator +(Volume a, Volume b) => new(a.CubicTicks + b.CubicTicks);

    public static Volume operator *(Volume a, long times) => new(a.CubicTicks * times);
}
