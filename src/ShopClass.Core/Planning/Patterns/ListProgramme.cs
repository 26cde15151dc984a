namespace ShopClass.Core.Planning.Patterns;

/// <summary>
/// The linear programme over a whole list of patterns, each piece cut exactly once, so that a worth may be below nothing.
/// What it proves it proves in whole numbers: no pattern of the list is worth more than <see cref="Most"/>, so so many
/// boards of it are worth no more than their number times that.
/// </summary>
internal sealed class ListProgramme
{
    private const int Scale = 1 << 24;
    private const double MostWorth = 9;
    private readonly CoverProgramme programme;

    /// <summary>Solves it, or goes as far as the work allows: what it says of worths holds at any time.</summary>
    public ListProgramme(Lengths lengths, IReadOnlyList<Pattern> patterns, Work work)
    {
        programme = new(lengths, 0);
        var pivot = (long)lengths.Sizes.Length * lengths.Sizes.Length / 4;
        while (work.Take(pivot + patterns.Count) && MostSaving(patterns) is { } pattern)
            programme.Enter(pattern);
        Worth = new long[lengths.Sizes.Length];
        for (var i = 0; i < Worth.Length; i++)
        {
            Worth[i] = (long)(Math.Clamp(programme.Worth[i], -MostWorth, MostWorth) * Scale);
            Sum += Worth[i] * lengths.Counts[i];
        }

        foreach (var pattern in patterns)
            Most = Math.Max(Most, Of(pattern));
    }

    /// <summary>What a piece of each size is worth.</summary>
    public long[] Worth { get; }

    /// <summary>What all pieces wanted are worth.</summary>
    public long Sum { get; }

    /// <summary>No pattern of the list is worth more.</summary>
    public long Most { get; }

    /// <summary>The patterns in use and how often, in fractions.</summary>
    public IEnumerable<(Pattern Pattern, double Level)> Used => programme.Used();

    /// <summary>What a pattern's pieces are worth.</summary>
    public long Of(Pattern pattern)
    {
        long sum = 0;
        for (var k = 0; k < pattern.Kinds.Length; k++)
            sum += Worth[pattern.Kinds[k]] * pattern.Counts[k];
        return sum;
    }

    private Pattern? MostSaving(IReadOnlyList<Pattern> patterns)
    {
        Pattern? best = null;
        var least = -1e-6;
        foreach (var pattern in patterns)
        {
            var saving = programme.Saving(pattern);
            if (saving < least)
                (least, best) = (saving, pattern);
        }

        return best;
    }
}
