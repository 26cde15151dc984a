namespace ShopClass.Data.Access;

/// <summary>The order of lists of names: capitals make no difference.</summary>
internal static class Ordering
{
    public static StringComparer OfNames => StringComparer.OrdinalIgnoreCase;
}
