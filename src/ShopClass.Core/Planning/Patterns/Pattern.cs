namespace ShopClass.Core.Planning.Patterns;

/// <summary>What one board yields: sizes by number, and how many of each (one or more).</summary>
internal sealed record Pattern(int[] Kinds, int[] Counts)
{
    public static Pattern Of(int[] counts)
    {
        var kinds = Enumerable.Range(0, counts.Length).Where(i => counts[i] > 0).ToArray();
        return new(kinds, [.. kinds.Select(i => counts[i])]);
    }
}
