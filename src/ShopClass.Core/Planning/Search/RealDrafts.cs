namespace ShopClass.Core.Planning.Search;

/// <summary>Layouts on the boards as they are, from what they would yield if they were clear.</summary>
internal static class RealDrafts
{
    /// <summary>Layouts worth trying, the likeliest first; worked out one by one as they are asked for; null where one does not go.</summary>
    public static IEnumerable<Draft?> Of(
        Bench bench,
        ClearSearch search,
        IReadOnlyList<Stock> chosen,
        ClearPlan? clear,
        Steps steps,
        Func<bool> hasPlan
    )
    {
        if (clear is null)
            yield break;
        if (chosen.All(s => s.IsClear))
        {
            yield return clear.ToDraft(bench);
            yield break;
        }

        yield return clear.Shuffled(bench, steps);
        if (!hasPlan())
            yield return search.Soon(chosen);
        if (search.AsTheyAre(chosen) is { } real)
            yield return real;
    }
}
