namespace ShopClass.Core.Lessons.Filling;

/// <summary>How a class is run: whose turn is next, and when a skill is worth showing. Several are tried.</summary>
/// <param name="Turns">Who comes first at a station.</param>
/// <param name="StaysOn">Whether who stands at a place goes on there before others get it.</param>
/// <param name="ShowsEarly">Whether a skill is shown as soon as more time is well used by it, or only once more gets done.</param>
/// <param name="Seed">Mixes the order a little; 0 leaves it.</param>
internal sealed record Habit(FirstServed Turns, bool StaysOn, bool ShowsEarly, int Seed)
{
    /// <summary>The plain ones first, then the mixed ones.</summary>
    public static IEnumerable<Habit> Several(int mixed)
    {
        foreach (var turns in Enum.GetValues<FirstServed>())
        foreach (var stays in (bool[])[true, false])
        foreach (var early in (bool[])[true, false])
            yield return new(turns, stays, early, 0);
        for (var seed = 1; seed <= mixed; seed++)
            yield return new(
                (FirstServed)(seed % 3),
                StaysOn: seed % 2 == 0,
                ShowsEarly: seed / 2 % 2 == 0,
                seed
            );
    }
}

/// <summary>Who comes first where several want the same place.</summary>
internal enum FirstServed
{
    /// <summary>Who has the longest chain of work ahead.</summary>
    LongestAhead,

    /// <summary>Who has the most minutes of work ahead.</summary>
    MostAhead,

    /// <summary>Who has the least time to spare until the end of the course.</summary>
    LeastToSpare,
}
