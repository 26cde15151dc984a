namespace ShopClass.Web.Features.Projects;

/// <summary>Letters for parts, in order: A to Z, then AA to ZZ.</summary>
public static class PartLetters
{
    private static readonly string[] All =
    [
        .. Letters(),
        .. from first in Letters() from second in Letters() select first + second,
    ];

    /// <summary>The first letter nobody has.</summary>
    public static string Next(IEnumerable<string> taken)
    {
        HashSet<string> used = [.. taken.Select(t => t.Trim().ToUpperInvariant())];
        return All.First(letter => !used.Contains(letter));
    }

    private static IEnumerable<string> Letters() =>
        Enumerable.Range('A', 26).Select(c => ((char)c).ToString());
}
