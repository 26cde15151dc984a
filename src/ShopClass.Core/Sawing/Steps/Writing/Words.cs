namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>Small joins of words.</summary>
internal static class Words
{
    /// <summary>"A1, A2 and B1".</summary>
    public static string List(IReadOnlyList<string> names) =>
        names.Count switch
        {
            0 => "",
            1 => names[0],
            _ => $"{string.Join(", ", names.Take(names.Count - 1))} and {names[^1]}",
        };

    /// <summary>"A1 to A7" where there are many, else the list.</summary>
    public static string Short(IReadOnlyList<string> names) =>
        names.Count > 4 ? $"{names[0]} to {names[^1]}" : List(names);

    public static string Them(int count, string one, string many) => count == 1 ? one : many;
}
