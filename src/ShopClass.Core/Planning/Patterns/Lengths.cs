namespace ShopClass.Core.Planning.Patterns;

/// <summary>
/// The same problem without kerf and in the coarsest whole unit: a kerf is added to each piece and once to the board, and
/// everything is divided by its greatest common divisor. Equal lengths are one size; sizes run from the longest.
/// </summary>
internal sealed record Lengths(int Board, int[] Sizes, int[] Counts)
{
    /// <summary>How many pieces there are.</summary>
    public int Pieces => Counts.Sum();

    /// <summary>The sizes of which some are left.</summary>
    public Lengths With(int[] counts)
    {
        var kept = Enumerable.Range(0, Sizes.Length).Where(i => counts[i] > 0).ToArray();
        return new(Board, [.. kept.Select(i => Sizes[i])], [.. kept.Select(i => counts[i])]);
    }

    /// <summary>Sum of all lengths.</summary>
    public long Sum()
    {
        long sum = 0;
        for (var i = 0; i < Sizes.Length; i++)
            sum += (long)Sizes[i] * Counts[i];
        return sum;
    }
}
