namespace ShopClass.Core.Measure;

/// <summary>An area, exact, in square ticks (1/1600 mm squared). <c>default</c> is zero; arithmetic is checked.</summary>
public readonly record struct Area : IComparable<Area>
{
    private Area(Int128 squareTicks) => SquareTicks = squareTicks;

    /// <summary>The area in square ticks.</summary>
    public Int128 SquareTicks { get; }

    /// <summary>No area; the same as <c>default</c>.</summary>
    public static Area Zero => default;

    /// <summary>An area of so many square ticks.</summary>
    public static Area FromSquareTicks(Int128 squareTicks) => new(squareTicks);

    /// <inheritdoc/>
    public int CompareTo(Area other) => SquareTicks.CompareTo(other.SquareTicks);

    public static Area operator +(Area a, Area b) => new(a.SquareTicks + b.SquareTicks);

    public static Area operator -(Area a, Area b) => new(a.SquareTicks - b.SquareTicks);

    public static bool operator <(Area a, Area b) => a.SquareTicks < b.SquareTicks;

    public static bool operator >(Area a, Area b) => a.SquareTicks > b.SquareTicks;

    public static bool operator <=(Area a, Area b) => a.SquareTicks <= b.SquareTicks;

    public static bool operator >=(Area a, Area b) => a.SquareTicks >= b.SquareTicks;
}
