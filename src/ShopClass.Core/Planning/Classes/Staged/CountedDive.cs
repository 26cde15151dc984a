namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>
/// Settles one board after the other, and after each mixes all boards there could be for what is left anew: the pieces left
/// then price boards that nobody would have cut before. A board settled in earlier dives grows less welcome, and after a few
/// dives all of that and their boards are forgotten: a fresh start finds more than many boards in mind.
/// </summary>
internal sealed class CountedDive(
    Cutting cutting,
    Effort effort,
    CountedPricing pricing,
    BoardPool start
)
{
    private const int MostKnown = 3000;
    private const int NodesForBound = 2_000_000;
    private const double Weariness = 0.3;
    private const int NodesForBoard = 256_000;
    private const int Restart = 6;
    private readonly Dictionary<Column, double> weary = new(ReferenceEqualityComparer.Instance);
    private ulong state = 0xD1B54A32D192ED03;
    private BoardPool? pool;
    private int turn;

    /// <summary>A bound that all boards there could be prove together; of use only where no size is rounded.</summary>
    /// <param name="below">Where the bound shows that nothing is cheaper than this, that is enough.</param>
    /// <param name="share">Counts the looks.</param>
    public long Bound(long below, Effort share)
    {
        var mixture = new CountedMixture(
            cutting,
            start.Columns.ToList(),
            new(cutting),
            start,
            share
        );
        _ = mixture.Generate(pricing, below - 1, NodesForBound);
        return pricing.IsExact ? mixture.Bound : 0;
    }

    /// <summary>One packing cheaper than the limit; null where this dive comes to none.</summary>
    public IReadOnlyList<CutBoard>? Dive(long below)
    {
        var dive = new Settled(cutting);
        var isNew = turn++ % Restart == 0;
        if (isNew || pool is null)
            pool = start.Copy();
        var open = pool.Columns.ToList();
        while (dive.Left.Any(n => n > 0))
        {
            var known = pool.Columns.Count;
            var mixture = new CountedMixture(cutting, open, dive, pool, effort);
            var limit = below - 1 - dive.Cost;
            var isFirst = dive.Boards.Count == 0;
            if (!mixture.Generate(pricing, limit, NodesForBoard))
                return null;
            open.AddRange(pool.Columns.Skip(known));
            if (isFirst)
            {
                pool.Keep(MostKnown, mixture.LossOf);
                if (isNew)
                    Vary(mixture);
            }

            var loss = limit - mixture.Cost + 1e-3 * cutting.Planks[0].Cost;
            open = [.. open.Where(c => mixture.LossOf(c) <= loss)];
            if (!Settle(mixture, open, dive))
                return null;
        }

        return dive.Cost < below ? dive.Boards : null;
    }

    /// <summary>
    /// Settles the board most used, less those settled in dives before; where it is used whole, all that are used whole.
    /// </summary>
    private bool Settle(CountedMixture mixture, List<Column> open, Settled dive)
    {
        const double whole = 1 - 1e-4;
        var levels = mixture.Levels;
        if (levels.Count == 0)
            return false;
        var first = levels
            .OrderByDescending(l => l.Times - Weariness * weary.GetValueOrDefault(l.Column))
            .First();
        var any = false;
        foreach (
            var (column, _) in first.Times > whole ? levels.Where(l => l.Times > whole) : [first]
        )
        {
            any |= dive.Take(column);
            open.Remove(column);
            weary[column] = weary.GetValueOrDefault(column) + 1;
        }

        return any;
    }

    /// <summary>Boards of the first mixture begin with a share of weariness, never the same, so that dives differ.</summary>
    private void Vary(CountedMixture mixture)
    {
        weary.Clear();
        foreach (var (column, _) in mixture.Levels)
        {
            // Xorshift (Marsaglia 2003): the same shares every time.
            state ^= state << 13;
            state ^= state >> 7;
            state ^= state << 17;
            weary[column] = (double)(state >> 11) / (1UL << 53);
        }
    }
}
