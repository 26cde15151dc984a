using System.Numerics;

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
    private const int NarrowestDive = 32;
    private const int RoundsOfDives = 32;
    private const int DivesInRound = 8;
    private const int CountedTimes = 3;

    // With few pieces dives take hardly any steps, and soon none is new.
    private const int MostCounted = 300;
    private IReadOnlyList<CutBoard> best = [];
    private long cost = long.MaxValue;
    private long bound;
    private double[]? prices;
    private BoardPool? pool;
    private PoolDive? dive;
    private CountedDive? countedDive;
    private int counted;

    /// <summary>The cheapest packing found, and the bound.</summary>
    public (IReadOnlyList<CutBoard> Boards, long Cost, long Bound, bool IsComplete) Run()
    {
        if (!cutting.EachHasABoard)
            return ([], 0, 0, cutting.Pieces.All(p => p.Count == 0));
        bound = SimpleBounds.Cost(limits);
        // Whatever the limit, there is a packing.
        var unlimited = new Effort(int.MaxValue, CancellationToken.None);
        var isScarce = cutting.Planks.Any(p => !p.IsEndless);
        foreach (var way in isScarce ? [cutting, cutting.SparingTheScarce()] : new[] { cutting })
        {
            if (new BeamSearch(way, unlimited).Run(1, BeamGuide.Usual[0], cost) is { } first)
                Take(first);
        }

        Beams(1);
        if (IsOpen)
            Mix();
        if (HasMany)
            Repack();
        else
            Widen();
        return (best, best.Count == 0 ? 0 : cost, bound, cost < long.MaxValue);
    }

    /// <summary>Few pieces: beams over everything, wider and wider; where boards are more than a few, dives instead of wide beams.</summary>
    private void Widen()
    {
        for (var width = 4; width <= Widest && IsOpen; width *= 2)
        {
            var isFew = best.Count <= FewBoards;
            if (!isFew && dive is not null && width == NarrowestDive)
            {
                Dives(dive);
                return;
            }

            Beams(width);
            if (!isFew && dive is null && IsOpen)
                best = new Repacking(cutting, effort, prices).Improve(
                    best,
                    bound,
                    width,
                    100,
                    Take
                );
        }
    }

    /// <summary>
    /// First dives that cut new boards for every rest; then in turn with them beams that cut up new boards and dives through
    /// all that are known. These are most often narrow, half as often twice as wide, and so on: some cases want many tries, some
    /// want wide ones, and so neither costs much more than it must (Luby, Sinclair and Zuckerman 1993).
    /// </summary>
    private void Dives(PoolDive dive)
    {
        CountedDives(effort.Taken + effort.Left / 2);
        for (var round = 1; round < RoundsOfDives && IsOpen; round++)
        {
            var before = effort.Taken;
            var width = NarrowestDive << BitOperations.TrailingZeroCount(round);
            foreach (var guide in BeamGuide.ForPool)
                Beam(width, guide, dive.NextWorths());
            for (var d = 0; d < DivesInRound && IsOpen; d++)
            {
                if (dive.Dive(width / 2, cost) is { } found)
                    Take(found);
            }

            CountedDives(effort.Taken + CountedTimes * (effort.Taken - before));
        }
    }

    /// <summary>Dives that cut new boards for every rest, until so many steps are taken.</summary>
    private void CountedDives(int until)
    {
        while (countedDive is not null && IsOpen && effort.Taken < until && counted++ < MostCounted)
        {
            if (countedDive.Dive(cost) is { } found)
                Take(found);
        }
    }

    /// <summary>Many pieces: a few boards at a time, until that has not helped for a while.</summary>
    private void Repack()
    {
        var repacking = new Repacking(cutting, effort, prices);
        for (var width = 4; width <= MostRepacked && IsOpen; width *= 2)
            best = repacking.Improve(best, bound, width, 60, Take);
    }

    private bool HasMany => cutting.Pieces.Sum(p => p.Count) > Many;

    private bool IsOpen => cost > bound && !effort.IsUp;

    private void Beams(int width)
    {
        foreach (var guide in best.Count > FewBoards ? BeamGuide.Usual : BeamGuide.FewBoards)
            Beam(width, guide);
    }

    private void Beam(int width, BeamGuide guide, double[]? worths = null)
    {
        if (!IsOpen)
            return;
        var beam = new BeamSearch(cutting, effort, prices);
        if (beam.Run(width, guide, cost, pool, worths) is { } found)
            Take(found);
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
            dive = new(cutting, effort, prices, pool);
            Count(columns, prices);
        }

        if (!IsOpen)
            return;

        var mixture = columns.Master.Mixture().ToList();
        for (var width = 4; width <= 16 && IsOpen; width *= 4)
        {
            if (new Rounding(cutting, effort, prices).Round(mixture, width, cost) is { } found)
                Take(found);
        }

        if (IsOpen && HasMany)
            new Diving(cutting, effort, prices).Dive(columns.Master, () => cost, Take);
    }

    /// <summary>The same mixture of boards that give no piece more often than it is asked for, for a higher bound.</summary>
    private void Count(Columns columns, double[] known)
    {
        if (CountedPricing.For(cutting) is not { } pricing)
            return;
        var boards = new BoardPool(cutting, known) { Below = cost };
        boards.Add(best);
        boards.Add(columns.Master.Columns.Select(c => c.Board));
        countedDive = new(cutting, effort, pricing, boards);
        var proven = countedDive.Bound(cost, effort.Share(best.Count > FewBoards ? 4 : 20));
        if (ReferenceEquals(cutting, limits))
            bound = Math.Max(bound, proven);
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
