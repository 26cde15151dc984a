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
    private const int NodesForBoard = 256_000;
    private const int Restart = 6;
    private readonly Weariness weary = new(0.3);
    private readonly Draws shares = new(0xD1B54A32D192ED03);
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
                // Boards of the first mixture begin with shares of weariness, so that dives differ.
                if (isNew)
                    weary.BeginWith(mixture.Levels.Select(l => l.Column), shares);
            }

            var loss = limit - mixture.Cost + 1e-3 * cutting.Planks[0].Cost;
            open = [.. open.Where(c => mixture.LossOf(c) <= loss)];
            if (!weary.Settle(mixture.Levels, open, dive))
                return null;
        }

        return dive.Cost < below ? dive.Boards : null;
    }
}
