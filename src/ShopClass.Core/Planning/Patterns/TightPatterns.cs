namespace ShopClass.Core.Planning.Patterns;

/// <summary>
/// Every pattern that a plan of so many boards can hold. With worths by which no board is worth more than M, the boards of
/// such a plan together fall short of their number times M by a sum known beforehand; so no single one falls short by more.
/// </summary>
/// <param name="lengths">Pieces and board.</param>
/// <param name="worth">What a piece of each size is worth.</param>
/// <param name="atLeast">The least a board of the plan can be worth.</param>
/// <param name="limit">More patterns than these are of no use to the caller.</param>
internal sealed class TightPatterns(Lengths lengths, int[] worth, long atLeast, int limit)
{
    private const int LooksAllowed = 20_000_000;

    private readonly double[] rate = new double[lengths.Sizes.Length + 1];
    private readonly int[] taken = new int[lengths.Sizes.Length];
    private readonly List<Pattern> found = [];
    private long looks;

    private bool IsTooMuch => found.Count > limit || looks > LooksAllowed;

    /// <summary>All of them, or null when there are more than the limit or looking for them takes too long.</summary>
    public List<Pattern>? All(Work work)
    {
        for (var i = worth.Length - 1; i >= 0; i--)
            rate[i] = Math.Max(rate[i + 1], (double)worth[i] / lengths.Sizes[i]);
        Try(0, lengths.Board, 0);
        return work.Take(looks) && !IsTooMuch ? found : null;
    }

    private void Try(int from, int room, long value)
    {
        if (value >= atLeast)
            found.Add(Pattern.Of(taken));
        for (var i = from; i < worth.Length && !IsTooMuch; i++)
        {
            looks++;
            // One more than the product of fractions: rounding must never lose a pattern.
            if (value + (long)(rate[i] * room) + 1 < atLeast)
                return;
            if (taken[i] == lengths.Counts[i] || lengths.Sizes[i] > room)
                continue;
            taken[i]++;
            Try(i, room - lengths.Sizes[i], value + worth[i]);
            taken[i]--;
        }
    }
}
