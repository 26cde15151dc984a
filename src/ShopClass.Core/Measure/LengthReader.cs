namespace ShopClass.Core.Measure;

/// <summary>Reads a length as a woodworker writes it: <c>9 1/4</c>, <c>9-1/4"</c>, <c>3' 4 1/2"</c>, <c>½</c>, <c>23.5 cm</c>.</summary>
public static class LengthReader
{
    /// <summary>Reads <paramref name="text"/>; a bare number is in <paramref name="unit"/>.</summary>
    public static Reading<Length> Read(string? text, UnitSystem unit) =>
        throw new NotImplementedException();
}
