namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>Runs the searches one after the other, wider every time, until the bound is met or the steps are used up.</summary>
internal sealed class Packer(
    Cutting cutting,
    Cutting limits,
    Effort effort,
    IProgress<StagedProgress>? progress
)
{
    private const int Widest = 4096;
    private const int MostRepacked = 256;
    private const int Many = 150;

    // A few boards of so few are nearly all of them.
    private const int FewBoards = 4;
    private const int Rounds = 3;
    private const int ShareOfPool = 6;
    private IReadOnlyList<CutBoard> best = [];
    private long cost = long.MaxValue;
    private long bound;
    private double[]? prices;
    private BoardPool? pool;

    /// <summary>The cheapest packing found, and the bound.</summary>
    public (IReadOnlyList<CutBoard> Boards, long Cost, long Bound, bool IsComplete) Run()
    {
        if (!cutting.EachHasABoard)
            return ([], 0, 0, cutting.Pieces.All(p => p.Count == 0));
        bound = SimpleBounds.Cost(limits);
        // Whatever the limit, there is a packing.
        var unlimited = new Effort(int.MaxValue, CancellationToken.None);
        if (new BeamSearch(cutting, unlimited).Run(1, BeamGuide.Usual[0], cost) is { } first)
            Take(first);
        Beams(1);
        if (IsOpen)
            Mix();
        if (HasMany)
            Repack();
        else
            Widen();
        return (best, best.Count == 0 ? 0 : cost, bound, cost < long.MaxValue);
    }

    /// <summary>Few pieces: wider and wider beams over everything.</summary>
    private void Widen()
    {
        for (var width = 4; width <= Widest && IsOpen; width *= 2)
        {
            Beams(width);
            if (best.Count <= FewBoards)
                continue;
            Combine(width);
            if (IsOpen)
                best = new Repacking(cutting, effort, prices, pool).Improve(
                    best,
                    bound,
                    width,
                    100,
                    Take
                );
            Combine(width);
        }
    }

    /// <summary>Many pieces: a few boards at a time, until that has not helped for a while.</summary>
    private void Repack()
    {
        var repacking = new Repacking(cutting, effort, prices, pool: null);
        for (var width = 4; width <= MostRepacked && IsOpen; width *= 2)
            best = repacking.Improve(best, bound, width, 60, Take);
    }

    /// <summary>
    /// What the searches so far have cut up, put together anew; and where that does not do, more boards by what the pieces are
    /// worth among those known.
    /// </summary>
    private void Combine(int width)
    {
        for (var round = 0; round < Rounds && IsOpen && pool is not null; round++)
        {
            var cover = new PoolCover(cutting, cost, effort.Share(ShareOfPool));
            if (cover.Find(pool.Columns))
                Take(cover.Packing());
            else if (cover.Mixture.Cost <= cost - 1 || cover.Mixture.Worths.Length == 0)
                return;
            else
                Seek(width, cover.Mixture.Worths);
        }
    }

    private void Seek(int width, double[] worths)
    {
        var beam = new BeamSearch(cutting, effort, prices);
        foreach (var guide in BeamGuide.Usual)
        {
            if (cost > bound && beam.Run(width, guide, cost, pool, worths) is { } found)
                Take(found);
        }
    }

    private bool HasMany => cutting.Pieces.Sum(p => p.Count) > Many;

    private bool IsOpen => cost > bound && !effort.IsUp;

    private void Beams(int width)
    {
        var beam = new BeamSearch(cutting, effort, prices);
        foreach (var guide in BeamGuide.Usual)
        {
            if (cost > bound && beam.Run(width, guide, cost, pool) is { } found)
                Take(found);
        }
    }

    private void Mix()
    {
        var columns = new Columns(cutting, limits, effort);
        columns.Generate(best, cost);
        bound = Math.Max(bound, columns.Bound);
        prices = columns.Prices;
        if (!IsOpen)
            return;
        if (prices is not null && !HasMany)
        {
            pool = new(cutting, prices) { Below = cost };
            pool.Add(best);
            pool.Add(columns.Master.Columns.Select(c => c.Board));
        }

        var mixture = columns.Master.Mixture().ToList();
        for (var width = 4; width <= 16 && IsOpen; width *= 4)
        {
            if (new Rounding(cutting, effort, prices).Round(mixture, width, cost) is { } found)
                Take(found);
        }

        if (IsOpen && HasMany)
            new Diving(cutting, effort, prices).Dive(columns.Master, () => cost, Take);
    }

    private void Take(IReadOnlyList<CutBoard> found)
    {
        best = [.. found];
        cost = cutting.CostOf(found);
        progress?.Report(new(effort.Taken, cost, bound));
        if (pool is null)
            return;
        pool.Below = cost;
        pool.Add(best);
        pool.Sift();
    }
}
