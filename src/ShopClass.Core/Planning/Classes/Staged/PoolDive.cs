namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>
/// Builds packings from boards already known: the linear programme over them says which board to settle next, and after each
/// what is left is also packed by itself, from pieces as they are worth beside the boards settled. The boards cut up on the
/// way are known from then on, so every dive has better ones to choose from.
/// </summary>
internal sealed class PoolDive(Cutting cutting, Effort effort, double[] prices, BoardPool pool)
{
    private const int MostKnown = 3000;

    // Before a quarter of the kinds is gone, the rest is hardly easier than the whole.
    private const double RestOfNote = 0.75;
    private const int WidestRest = 2048;
    private readonly int kinds = cutting.Pieces.Count(p => p.Count > 0);
    private readonly double[] areas = new BeamWorth(cutting).PieceArea;
    private readonly double slack = 0.2 * cutting.Planks.Min(p => p.Cost);
    private readonly Weariness weary = new(0.15);
    private readonly Draws shares = new(0x9E3779B97F4A7C15);
    private double[]? worths;
    private int turn;

    /// <summary>
    /// What the pieces are taken to be worth in the next search: by their area, and a share, never the same, by what they
    /// are worth in the mixture of the boards known.
    /// </summary>
    public double[] NextWorths() => Mixed(worths ?? prices);

    /// <summary>One packing cheaper than the limit; null where this dive comes to none.</summary>
    /// <param name="width">How wide a beam packs everything; what is left gets wider ones, as long as it takes as many steps.</param>
    /// <param name="below">The limit.</param>
    public IReadOnlyList<CutBoard>? Dive(int width, long below)
    {
        var dive = new Settled(cutting);
        var open = pool.Columns.ToList();
        while (!effort.IsUp)
        {
            int[] rows = [.. Enumerable.Range(0, dive.Left.Length).Where(k => dive.Left[k] > 0)];
            if (rows.Length == 0)
                return dive.Cost < below ? dive.Boards : null;
            var mixture = new PoolMixture(cutting, open, rows, dive, effort);
            var known = pool.Columns.Count;
            if (dive.Boards.Count == 0)
            {
                worths = mixture.Worths;
                pool.Keep(MostKnown, mixture.LossOf);
                known = pool.Columns.Count;
            }
            else if (
                rows.Length < RestOfNote * kinds
                && Rest(rows.Length, width, dive, below, mixture.Worths) is { } rest
            )
            {
                return [.. dive.Boards, .. rest];
            }

            var spare = below - 1 - dive.Cost - mixture.Cost + slack;
            if (spare < 0 || mixture.Levels.Count == 0)
                return null;
            open = [.. open.Where(c => mixture.LossOf(c) <= spare)];
            if (!weary.Settle(mixture.Levels, open, dive))
                return null;
            // What was cut up of the rest just now is of the most use to it.
            open.AddRange(pool.Columns.Skip(known));
        }

        return null;
    }

    private IReadOnlyList<CutBoard>? Rest(
        int rows,
        int width,
        Settled dive,
        long below,
        double[] theirs
    )
    {
        var wide = Math.Clamp((long)width * kinds * kinds / ((long)rows * rows), 1, WidestRest);
        var guide = BeamGuide.ForPool[turn++ % BeamGuide.ForPool.Count];
        return new BeamSearch(cutting.With(dive.Left, dive.Copies), effort, prices).Run(
            (int)wide,
            guide,
            below - dive.Cost,
            pool,
            Mixed(theirs)
        );
    }

    private double[] Mixed(double[] theirs)
    {
        var share = 0.6 * shares.Share();
        return [.. areas.Select((a, k) => (1 - share) * a + share * theirs[k])];
    }
}
