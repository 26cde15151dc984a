namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>How often boards were settled in dives before: these grow less welcome, so that no dive repeats the last.</summary>
/// <param name="each">What a time before counts for, as a part of a board.</param>
internal sealed class Weariness(double each)
{
    private const double Whole = 1 - 1e-4;
    private readonly Dictionary<Column, double> times = new(ReferenceEqualityComparer.Instance);

    /// <summary>Forgets all, and lets these boards begin with a share of a time each.</summary>
    public void BeginWith(IEnumerable<Column> columns, Draws shares)
    {
        times.Clear();
        foreach (var column in columns)
            times[column] = shares.Share();
    }

    /// <summary>
    /// Settles the board most used, less those settled before; where it is used whole, all that are used whole. False where
    /// nothing could be settled.
    /// </summary>
    /// <param name="levels">How often each board is used in the mixture.</param>
    /// <param name="open">The boards to choose from; those settled are taken out.</param>
    /// <param name="dive">What is settled.</param>
    public bool Settle(
        IReadOnlyList<(Column Column, double Times)> levels,
        List<Column> open,
        Settled dive
    )
    {
        if (levels.Count == 0)
            return false;
        var first = levels
            .OrderByDescending(l => l.Times - each * times.GetValueOrDefault(l.Column))
            .First();
        var any = false;
        foreach (
            var (column, _) in first.Times > Whole ? levels.Where(l => l.Times > Whole) : [first]
        )
        {
            any |= dive.Take(column);
            open.Remove(column);
            times[column] = times.GetValueOrDefault(column) + 1;
        }

        return any;
    }
}
